import { fraction } from '../src/engine/linear/index.ts';
import { drawStacks } from '../src/shop/length/index.ts';

/** A stack-up of twelve parts, a million times by chance. */
export function stacks(): void {
  const terms = Array.from({ length: 12 }, (_, part) => ({
    adds: part === 0 ? (1 as const) : (-1 as const),
    um: fraction(part === 0 ? 90_000 : 8_000),
    tolUm: fraction(20 + 5 * part),
  }));
  const draws = 1_000_000;
  const times = [1, 2, 3, 4, 5].map((seed) => {
    const start = performance.now();
    drawStacks(terms, { draws, seed });
    return performance.now() - start;
  });
  const ms = times.toSorted((a, b) => a - b)[2] as number;
  const verdict = ms <= 500 ? 'reached' : 'MISSED';
  console.log(`\nA stack-up of ${terms.length} parts, ${draws} times by chance`);
  console.log(
    `  ${'drawn and counted'.padEnd(44)}${`${ms.toFixed(0)} ms`.padStart(16)}  (500 wanted: ${verdict})`,
  );
}
