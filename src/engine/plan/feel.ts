import { turns } from '../hand/index.ts';
import { FloatTable, type LinearForm, type Row, Unsure } from '../linear/index.ts';
import { type Motion, motionOf } from '../motion/index.ts';
import type { MemberName, Train, Way } from '../train/index.ts';
import type { Felt } from './answer.ts';

/**
 * What hands feel on one half-built train with nothing applied. There are many questions: they
 * are asked in float64, and where rounding leaves one open, exactly; an answer is remembered
 * for every train that has the same company of members. `proved` is for what is to be told.
 */
export class Feel {
  private readonly motion: Motion;
  private readonly companies: readonly Company[];
  private readonly companyAt: ReadonlyMap<number, Company>;
  private readonly known: Map<string, Felt>;

  /** `known` is shared by the trains of one plan. */
  constructor(train: Train, known: Map<string, Felt>) {
    this.motion = motionOf(train);
    this.companies = companiesOf(this.motion);
    this.known = known;
    const at = this.companies.flatMap((company) => {
      return company.columns.map((column) => [column, company] as const);
    });
    this.companyAt = new Map(at);
  }

  /** How `turn` moves either way with `hold` held; a loose piece on the bench moves both ways. */
  felt(hold: MemberName | undefined, turn: MemberName): Felt {
    const { bodyOf } = this.motion.assembly;
    const body = bodyOf(turn);
    if (body === undefined) return 'both ways';
    const held = hold === undefined ? undefined : bodyOf(hold);
    const company = this.companyAt.get(body - 1);
    // A hand on what has no company with the turned member changes nothing.
    const together = held === body || (held !== undefined && company?.columns.includes(held - 1));
    const place = (its: number) => company?.columns.indexOf(its - 1) ?? -1;
    const holder = together ? place(held as number) : '';
    const key = `${company?.rows ?? ''}/${place(body)}/${holder}`;
    let felt = this.known.get(key);
    if (!felt) {
      felt = this.judged(together ? [hold as MemberName] : [], turn);
      this.known.set(key, felt);
    }
    return felt;
  }

  /** Equal where hands feel the same, whatever they do. */
  get signature(): string {
    const { members, bodyOf } = this.motion.assembly;
    const rows = this.companies.map((company) => `${company.columns}:${company.rows}`);
    return [...members.map((name) => `${name}=${bodyOf(name)}`), ...rows].join('|');
  }

  bodyOf(member: MemberName): number | undefined {
    return this.motion.assembly.bodyOf(member);
  }

  /** What is felt, by an exact answer with its proof each way; throws if it was not so felt. */
  proved(hold: MemberName | undefined, turn: MemberName): Felt {
    const felt = this.felt(hold, turn);
    if (this.bodyOf(turn) === undefined) return felt;
    const there = hold !== undefined && this.bodyOf(hold) !== undefined;
    const exact = feltOf((way) => {
      return turns(this.motion, { hold: there ? [hold] : [], turn, way, on: [] });
    });
    if (exact !== felt) throw new Error(`hands feel that ${turn} turns ${exact}, not ${felt}`);
    return felt;
  }

  private judged(hold: readonly MemberName[], turn: MemberName): Felt {
    return feltOf((way) => {
      try {
        return this.moves(hold, turn, way);
      } catch (error) {
        if (!(error instanceof Unsure)) throw error;
        return turns(this.motion, { hold, turn, way, on: [] });
      }
    });
  }

  // The float twin of `turns`: given speeds and locked devices are settled first.
  private moves(hold: readonly MemberName[], turn: MemberName, way: Way): boolean {
    const { base, devices, speedOf } = this.motion;
    const holding = devices.flatMap(({ whenOff }) => whenOff ?? []);
    const equal: LinearForm[] = [turn, ...hold].map(speedOf);
    equal.push(...holding.filter(({ sense }) => sense === '='));
    const letting = holding.filter(({ sense }) => sense === '>=');
    const table = new FloatTable(equal.length + letting.length, base.free.length);
    table.reset(base.free.length);
    for (const form of equal) table.addForm(form, base, -1);
    letting.forEach((form, k) => table.addForm(form, base, k));
    table.shift(0, way === 'clockwise' ? -1 : 1);
    const settled = equal.every((_, row) => table.settleEquality(row) || table.sign(row, 0) === 0);
    if (!settled) return false;
    table.settleVariables();
    return table.crissCross(-1, 1) !== 'stuck';
  }
}

function feltOf(turnsWhen: (way: Way) => boolean): Felt {
  const clockwise = turnsWhen('clockwise');
  const anticlockwise = turnsWhen('anticlockwise');
  if (clockwise) return anticlockwise ? 'both ways' : 'clockwise only';
  return anticlockwise ? 'anticlockwise only' : 'neither way';
}

/** Bodies that rows tie together, as columns, and their rows in terms of their places here. */
interface Company {
  readonly columns: readonly number[];
  readonly rows: string;
}

// What is tied to nothing but itself, or to the case, is a company too.
function companiesOf({ base, devices, columns }: Motion): Company[] {
  const rows = [...base.rows, ...devices.flatMap(({ whenOff }) => (whenOff ? [whenOff] : []))];
  const leader = Array.from({ length: columns }, (_, column) => column);
  const lead = (column: number): number => {
    const next = leader[column] as number;
    return next === column ? column : lead(next);
  };
  for (const { at } of rows) for (const c of at) leader[lead(c)] = lead(at[0] as number);
  const companies = new Map<number, { columns: number[]; rows: Row[] }>();
  for (let column = 0; column < columns; column++) {
    const company = companies.get(lead(column)) ?? { columns: [], rows: [] };
    company.columns.push(column);
    companies.set(lead(column), company);
  }
  for (const row of rows) {
    if (row.at.length > 0) companies.get(lead(row.at[0] as number))?.rows.push(row);
  }
  return [...companies.values()].map(({ columns: own, rows: its }) => {
    const texts = its.map(({ at, coef, sense }) => {
      return `${at.map((column, k) => `${coef[k]}w${own.indexOf(column)}`)}${sense}`;
    });
    return { columns: own, rows: `${own.length};${texts.join(';')}` };
  });
}
