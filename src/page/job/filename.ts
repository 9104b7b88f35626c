import type { Held } from './held.ts';

/** "unit-7-green-tag.job.yaml"; of a second of that name "unit-7-green-tag-2.job.yaml". */
export function fileNameFor(unit: string, others: readonly Held[]): string {
  const plain = unit.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
  const stem = plain.replaceAll(/[^a-z0-9]+/gu, '-').replaceAll(/^-|-$/gu, '');
  const names = new Set(others.map(({ job }) => job.name));
  for (let n = 1; ; n++) {
    const name = `${stem.slice(0, 60) || 'job'}${n === 1 ? '' : `-${n}`}.job.yaml`;
    if (!names.has(name)) return name;
  }
}
