import { describe, expect, it } from 'vitest';
import { ask } from './asked.ts';

const K = 'trains/kestrel-three-speed.train.yaml';

interface Margin {
  readonly gears: readonly {
    readonly range: string;
    readonly gear: string;
    readonly drive: Side;
    readonly coast: Side;
  }[];
  readonly first: { readonly mostNm: Value; readonly askedNm: Value };
  readonly sources: Readonly<Record<string, { source: string | null; by: string | null }>>;
}

interface Value {
  readonly value: number;
}

interface Side {
  readonly state: string;
  readonly askedNm?: Value;
  readonly mostNm?: { readonly value: number };
  readonly letsGo?: readonly string[];
  readonly leastKpa?: { readonly value: number };
  readonly devices?: Readonly<Record<string, Record<string, Record<string, number>>>>;
}

async function margin(typed: string): Promise<Margin> {
  const { out, exit } = await ask(`capacity ${typed} --json`);
  expect(exit).toBe(0);
  return JSON.parse(out) as Margin;
}

describe('capacity', () => {
  it('asks one-way clutches one way, and bands by the way in which the drum drags them', async () => {
    const { gears } = await margin(`${K} --pressure 900 --torque 231 --stall-ratio 2`);
    const side = (range: string, gear: string, end: 'drive' | 'coast') => {
      return gears.find((one) => one.range === range && one.gear === gear)?.[end] as Side;
    };
    // Statics by hand: first gear's reaction is 10/7 of the input torque, second's 3/7.
    expect(side('D', '1', 'drive').devices?.['low sprag']?.['mustNm']?.['value']).toBe(660);
    expect(side('D', '1', 'coast').state).toBe('neutral');
    const band = (end: 'drive' | 'coast') => side('L', '2', end).devices?.['intermediate band'];
    expect(band('drive')?.['mustNm']).toMatchObject({ from: 0, to: 198 });
    expect(band('coast')?.['mustNm']?.['value']).toBe(-99);
    // e^(μθ) = 1.996 is how much better it holds with the drum than against it.
    const better =
      Number(band('drive')?.['canNm']?.['value']) / Number(band('coast')?.['canNm']?.['value']);
    expect(better).toBeCloseTo(Math.exp((0.12 * 330 * Math.PI) / 180), 3);
  });

  it('names what slips first, and the pressure from which it does not', async () => {
    const slips = await margin(`${K} --gear R --pressure 900`);
    const drive = slips.gears[0]?.drive;
    expect(drive?.letsGo).toEqual(['low brake']);
    expect(drive?.mostNm?.value).toBeLessThan(440);
    const kpa = Math.ceil(drive?.leastKpa?.value ?? 0);
    const holds = await margin(`${K} --gear R --pressure ${kpa}`);
    expect(holds.gears[0]?.drive.mostNm?.value).toBeGreaterThanOrEqual(440);
  });

  it('takes the same pressure and torque in other units', async () => {
    const [kpa, bar] = await Promise.all(
      ['900', '"9 bar"'].map((pressure) => margin(`${K} --range D --pressure ${pressure}`)),
    );
    expect(bar?.gears).toEqual(kpa?.gears);
    const pounds = await margin(
      `${K} --range D --pressure "130.5339 psi" --torque "162.2637 lbft"`,
    );
    const [ours, theirs] = [kpa, pounds].map((told) => told?.gears[0]?.drive.mostNm?.value ?? 0);
    expect(theirs).toBeCloseTo(ours ?? 0, 2);
  });

  // A psi is 6.894757 kPa (NIST Special Publication 811, appendix B.8; told from memory).
  it('tells pressures in the unit in which they were typed', async () => {
    const { out } = await ask(`capacity ${K} --pressure "130 psi"`);
    expect(out).toContain('what holds at 130 psi,');
    expect(out).toContain('holds from, psi');
    expect(out).not.toContain('kPa');
    // 757.5 kPa, rounded up: in psi, and in bar to a tenth.
    expect(out).toMatch(/D 1 .* forward clutch +110\n/u);
    const bar = await ask(`capacity ${K} --pressure "9 bar" --lang es`);
    expect(bar.out).toContain('qué aguanta a 9 bar');
    expect(bar.out).toMatch(/D 1 .* 7,6\n/u);
  });

  it.each(['1e12', '99999999', '200 MPa', '0'])(
    'says of a pressure that no pump gives what is to be typed: %s',
    async (typed) => {
      const { err, exit } = await ask(`capacity ${K} --pressure "${typed}"`);
      expect(err).toContain(`no pressure to reckon with: ${typed};`);
      expect(err).toContain('digits above 0 with their unit, up to 100 MPa');
      expect(exit).toBe(2);
    },
  );

  it('tells whose figures they are, and which have no source', async () => {
    const { sources } = await margin(K);
    expect(sources['low sprag']).toEqual({ source: null, by: null });
    expect(sources['low brake']?.by).toBe('TW');
    const { out } = await ask(`capacity ${K}`);
    expect(out).toContain('UNSOURCED: low sprag');
    expect(out).toContain('own data wins');
    expect(out).toContain('no stall test on low pressure');
  });

  it('tells of a faulty train what it tells of a sound one', async () => {
    const { gears } = await margin(`${K} --range D --fault "low sprag: seized"`);
    // A seized low sprag brakes in first and ties up the others.
    expect(gears.map(({ drive, coast }) => [drive.state, coast.state])).toEqual([
      ['driving', 'driving'],
      ['tied up', 'tied up'],
      ['tied up', 'tied up'],
    ]);
  });

  it('names the first to slip of all: the least of what is passed over what is asked', async () => {
    const { gears, first } = await margin(`${K} --torque 200 --pressure 700`);
    const spares = gears.flatMap(({ drive, coast }) => {
      return [drive, coast].flatMap(({ mostNm, askedNm }) => {
        return mostNm && askedNm ? [mostNm.value / askedNm.value] : [];
      });
    });
    expect(first.mostNm.value / first.askedNm.value).toBe(Math.min(...spares));
  });
});
