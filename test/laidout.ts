import type { Edited } from '../src/engine/yaml/index.ts';

export const LAID_OUT = `# A file that a person has laid out.
holdturn: 1
input:   turbine shaft   # from the converter
output: front.carrier

sets:
  # the one in front
  front: { sun: 30, ring: 66 }   # plain
  "odd":
    wheels: {fixed: 100, idler: 20,  # a comment inside
             high: 101}
    carried: [idler]
    meshes: [[fixed, idler], [idler, high]]

joined:
  drum: [front.sun, odd.high]

devices:
  low brake: { brake: drum }     # grips the drum
  'high clutch': { clutch: [turbine shaft, drum] }

ranges:
  D: { "1": [low brake, high clutch], "2": ['high clutch'] }
  N:
# The end.
`;

/** The lines that an edit took away and put in, as a person would see them. */
export function change(before: string, edited: Edited): string[] {
  if ('refused' in edited) return [`refused: ${edited.refused}`];
  const [old, now] = [before.split('\n'), edited.text.split('\n')];
  let head = 0;
  while (head < old.length && head < now.length && old[head] === now[head]) head++;
  let tail = 0;
  while (tail < Math.min(old.length, now.length) - head && old.at(-1 - tail) === now.at(-1 - tail))
    tail++;
  return [
    ...old.slice(head, old.length - tail).map((line) => `- ${line}`),
    ...now.slice(head, now.length - tail).map((line) => `+ ${line}`),
  ];
}
