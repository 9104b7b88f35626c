import { DISK, LEDGER } from '../../command/machine/index.ts';
import { press } from './press.ts';
import { run } from './run.ts';

/** What came back from one call of the command in a test. */
export interface Ran {
  readonly out: string;
  readonly err: string;
  readonly exit: number;
}

/** Types a command line: words with blanks in them stand between double quotes. */
export async function ask(
  typed: string,
  {
    env = {},
    terminal = false,
    stdin = '',
  }: { env?: Record<string, string>; terminal?: boolean; stdin?: string } = {},
): Promise<Ran> {
  let [out, err] = ['', ''];
  const exit = await run({
    args: words(typed),
    env,
    terminal,
    ...DISK,
    read: (file) => FILES[file] ?? (file === '-' ? stdin : DISK.read(file)),
    lines: () => typedLines(stdin),
    ledger: { ...LEDGER, now: () => new Date('2026-11-25T12:40:07.120Z') },
    press: async (source) => press(source),
    out: (text) => (out += text),
    err: (text) => (err += text),
  });
  return { out, err, exit };
}

async function* typedLines(stdin: string): AsyncGenerator<string> {
  if (stdin !== '') yield* stdin.split('\n');
}

/** The words of a command line, as a shell makes them. */
export function words(typed: string): string[] {
  return [...typed.matchAll(/[^\s"]*"[^"]*"|\S+/g)].map(([word]) => word.replaceAll('"', ''));
}

const FILES: Readonly<Record<string, string>> = {
  broken: `holdturn: 1
name: A file with mistakes
input: crank
output: set.carrier
sets:
  set: { sun: 30, ring: thirty }
joined:
  crank: [set.sun, set.rig]
devices:
  ring band: { band: set.ring, colour: red }
ranges:
  D: { "1": [rnig band] }
`,
  seen: `D 1: drives
D 2: 2.429                    # as in first
L 2 coast: brakes
R: drives, not sure
fluid: burnt
`,
  doubtful: `D 1: slips
D 2: drives
D 3: ties up
L 1: slips, not sure
R: slips
`,
  sick: `driver says: no reverse, slips in second when hot, it smells of fish
pressure: low
fluid: burnt
D 2: slips
`,
  noisy: `noise D 1: growls
noise R: growls
noise D 2: quiet
noise D 3: quiet
fluid: clean
`,
  clocked: `- D 3: drives
- D 3: 1500 rpm at 60.0 km/h, locked
- D 2: 3640 rpm at 60.0 km/h, locked
`,
  unseen: `D 1: drives
D 22: slips
D 3: purrs
`,
  empty: '# nothing yet\n',
  readings: `forward clutch:
  feeler: [1.42 mm, 1.44 mm, 1.43 mm, 1.40 mm]
  on air: { pressure: 300 kPa, strokes: [1.55 mm, 1.54 mm] }
  step gauge: { fits: 1.40 mm, does not fit: 1.45 mm }
  friction: [2.06 mm, 2.07 mm, 2.05 mm, 2.06 mm]
  steel: [1.79 mm, 1.69 mm, 1.78 mm, 1.79 mm]
  cone: [0.05 mm, 0.20 mm]
second brake:
  feeler: [0.040 in, 0.041 in]
  cone: [0.30 mm]
`,
  closed: `forward clutch:
  feeler: [1.42 mm, 1.44 mm, 1.43 mm, 1.40 mm]
  again: { fitted: 5.40 mm, read: [1.03 mm, 1.02 mm, 1.04 mm] }
`,
  plays: `turbine shaft: [0.82 mm, 0.84 mm, 0.83 mm]
main shaft: [0.012 in]
`,
  bands: `intermediate band: { turns: 2.5 }
`,
  preloads: `differential bearings: { gap: [0.08 mm, 0.08 mm], pull: { force: [24 N], radius: 50 mm } }
`,
  wrenched: `differential bearings: { gap: [0.00 mm], turning: [12 Nm] }
`,
  teeth: `final drive: [0.14 mm, 0.15 mm, 0.14 mm]
`,
  rods: `second band: { travel: [4.12 mm, 4.16 mm, 4.14 mm] }
`,
  worn: `stator bushing: { bore: [38.12 mm, 38.10 mm], shaft: [38.02 mm, 38.03 mm] }
front planets: { read: [0.42 mm, 0.92 mm, 0.38 mm] }
pump gear to case: { read: [0.12 mm, 0.14 mm, 0.13 mm] }
pump gear side: { read: [0.001 in, 0.0015 in] }
forward springs: { read: [31.8 mm, 30.9 mm, 31.7 mm] }
`,
  tight: `turbine shaft: [0.15 mm]
main shaft: [0.30 mm]
`,
  miscounted: `forward clutch:
  depth gauge: { depth: 23.10 mm, stack: 20.00 mm }
second brake:
  feeler: [0.99 in, 0.99 in, 0.99 in]
`,
  unread: `forward clutch:
  feeler: [1.42, 1.44 mm]
  feler: [1.40 mm]
low brake: { feeler: [1.00 mm] }
`,
  wide: `holdturn: 1
name: 名前の長い遊星歯車装置、そして端末の幅より長くても切り捨てられない列車の名前の例である
input: Antriebswelle mit einem langen Namen
output: árbol de salida
sets:
  première: { sun: 30, ring: 66, planets: 3 }
joined:
  Antriebswelle mit einem langen Namen: [première.sun]
  árbol de salida: [première.carrier]
devices:
  多片式离合器一号: { brake: première.ring }
  frein-sans-aucun-espace-mais-beaucoup-trop-long-pour-une-colonne: { band: première.ring }
`,
  parts: `holdturn: 1
input: crank
output: set.carrier
sets: { set: { sun: 30, ring: 66 } }
teardown:
${Array.from({ length: 61 }, (_, i) => `  washer ${i}:`).join('\n')}
`,
};
