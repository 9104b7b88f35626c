import { text } from 'virtual:first-train';

const files = import.meta.glob<string>('../../../trains/*.train.yaml', {
  query: '?raw',
  import: 'default',
});

const byName = new Map(
  Object.entries(files).map(([path, read]) => [path.replace(/^.*\/|\.train\.yaml$/gu, ''), read]),
);

/** Our own trains, by the names of their files. */
export const ourTrains: readonly string[] = [...byName.keys()];

/** The train that a new page shows. */
export const FIRST = 'kestrel-three-speed';

/** The text of a train of ours; each but the first is loaded when it is asked for. */
export async function readOurs(name: string): Promise<string> {
  if (name === FIRST) return text;
  const read = byName.get(name);
  if (!read) throw new RangeError(`no train of ours is called ${name}`);
  return read();
}

const experience = import.meta.glob<string>('../../../experience.yaml', {
  query: '?raw',
  import: 'default',
});

/** The text of common practice's figures, by which what was seen is read. */
export async function readExperience(): Promise<string> {
  const [read] = Object.values(experience);
  return read ? read() : '';
}
