import type { MemberName, Train } from '../src/engine/train/index.ts';
import { coneOf, type Terms } from './cone.ts';
import type { FloatForm, FloatProgramme, FloatRow } from './peers.ts';

/** The rows of `coneOf` in floats: a column a name. */
export class FloatCone {
  private readonly names: readonly MemberName[];
  private readonly rows: readonly FloatRow[];

  constructor(train: Train, on: readonly string[]) {
    const { names, level, letting } = coneOf(train, on);
    this.names = names;
    const row =
      (sense: '=' | '>=') =>
      (terms: Terms): FloatRow => ({ form: this.form(terms), sense, right: 0 });
    // On a straight road all outputs turn as the first.
    const ties = (train.others ?? []).map(
      (other) =>
        new Map([
          [other, 1],
          [train.output, -1],
        ]),
    );
    this.rows = [...level.map(row('=')), ...ties.map(row('=')), ...letting.map(row('>='))];
  }

  knows(name: MemberName): boolean {
    return this.names.includes(name);
  }

  /** `turned` turns once that way; the speed of `other`, either way, is to be least. */
  reluctant(turned: MemberName, other: MemberName, way: 1 | -1 = 1): FloatProgramme {
    const columns = this.names.length + 1;
    const size = columns - 1;
    const speed = this.column(other);
    const either = [1, -1].map((sign): FloatRow => {
      const form: FloatForm =
        speed < 0
          ? [[size, 1]]
          : [
              [size, 1],
              [speed, sign],
            ];
      return { form, sense: '>=', right: 0 };
    });
    return {
      columns,
      rows: [...this.rows, this.given(turned, way), ...either],
      minimise: [[size, 1]],
    };
  }

  /** The least of `sign` times a member's speed, where others' are given. */
  least(name: MemberName, sign: 1 | -1, given: readonly [MemberName, number][]): FloatProgramme {
    const rows = [...this.rows, ...given.map(([member, speed]) => this.given(member, speed))];
    return { columns: this.names.length, rows, minimise: [[this.column(name), sign]] };
  }

  private given(member: MemberName, right: number): FloatRow {
    const column = this.column(member);
    return { form: column < 0 ? [] : [[column, 1]], sense: '=', right };
  }

  // Coefficients of the size of 1, whatever the teeth: solvers in floats want that.
  private form(terms: Terms): FloatForm {
    const scale = Math.max(...[...terms.values()].map(Math.abs));
    return [...terms].map(([name, times]) => [this.column(name), times / scale]);
  }

  // -1 for the case, which is no column.
  private column(name: MemberName): number {
    return this.names.indexOf(name);
  }
}
