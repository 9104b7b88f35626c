import {
  ownName,
  type Part,
  type PartKind,
  piecesOf,
  setGearing,
  type Train,
} from '../../engine/train/index.ts';
import { partKindSaid } from '../../engine/words/index.ts';

/**
 * What a part is: as its file says, else as its name does in English or Spanish, else by what it
 * carries. Undefined where nothing tells.
 */
export function kindOfPart(train: Train, part: Part): PartKind | undefined {
  if (part.kind) return part.kind;
  const carried = carriedKind(train, part);
  // A cage is a carrier to some, and a sprag to others; what it carries is no word.
  if (carried === 'one-way clutch') return carried;
  return partKindSaid(part.name) ?? carried ?? notedKind(part);
}

// What only some parts carry tells most.
function carriedKind(train: Train, { carries }: Part): PartKind | undefined {
  const own = ownName(train);
  const devices = train.devices.filter(({ name }) => carries.includes(name));
  const members = carries.filter((name) => {
    return !train.devices.some((device) => piecesOf(device).includes(name));
  });
  const is = (kind: string) => devices.some((device) => device.kind === kind);
  if (members.length === 0) {
    if (is('band')) return 'band';
    if (is('pawl')) return 'pawl';
    if (is('one-way') && devices.length === carries.length) return 'one-way clutch';
    if (is('clutch') || is('brake')) return 'pack';
    return carries.length > 0 ? 'race' : undefined;
  }
  if (is('clutch') || is('brake')) return 'drum';
  const ends = new Set([train.input, train.output, ...(train.others ?? [])].map(own));
  if (members.some((name) => ends.has(own(name)))) return 'shaft';
  const kinds = new Set(members.map((name) => memberKind(train, own(name))));
  const known = (['carrier', 'ring', 'sun', 'gear'] as const).find((kind) => kinds.has(kind));
  return known ?? 'shell';
}

function memberKind(train: Train, name: string): PartKind | undefined {
  const own = ownName(train);
  for (const set of train.sets) {
    const { meshes, planets } = setGearing(train, set);
    if (planets.some(({ carrier }) => own(carrier) === name)) return 'carrier';
    for (const { a, b, kind } of meshes) {
      const wheel = [a, b].find(({ member }) => own(member) === name);
      if (wheel && kind === 'internal') return wheel.teeth === larger(a, b) ? 'ring' : 'sun';
      if (wheel) return kind === 'external' ? 'sun' : 'gear';
    }
  }
  const wheels = train.pairs.flatMap(({ driver, driven }) => [driver, driven]);
  return wheels.some(({ member }) => own(member) === name) ? 'gear' : undefined;
}

function larger(a: { readonly teeth: number }, b: { readonly teeth: number }): number {
  return Math.max(a.teeth, b.teeth);
}

function notedKind({
  frictions,
  steels,
  bolts,
  sets,
  selective,
  feeds,
}: Part): PartKind | undefined {
  if (frictions !== undefined || steels !== undefined) return 'pack';
  if (bolts) return 'cover';
  if (sets !== undefined || selective) return 'washer';
  return feeds ? 'support' : undefined;
}
