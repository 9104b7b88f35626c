import loadHighs, { type Highs, type ModelData } from 'highs';
import { solve as solveYalps } from 'yalps';
import type { LinearForm, Programme } from '../src/engine/linear/index.ts';

/** A linear programme in floats, over free columns: what general-purpose solvers are given. */
export interface FloatProgramme {
  readonly columns: number;
  readonly rows: readonly FloatRow[];
  readonly minimise: FloatForm;
}

export type FloatForm = readonly (readonly [column: number, coef: number])[];

export interface FloatRow {
  readonly form: FloatForm;
  readonly sense: '=' | '>=';
  readonly right: number;
}

export type FloatAnswer =
  | { readonly state: 'optimal'; readonly value: number }
  | { readonly state: 'infeasible' | 'unbounded' }
  /** It came to no answer: it went round in a circle, or ran out of pivots. */
  | { readonly state: 'lost' };

/** A solver that shares nothing with ours. */
export interface Peer {
  readonly name: string;
  /** The step to which it rounds its answers. */
  readonly rounding: number;
  solve(programme: FloatProgramme): FloatAnswer;
}

export async function loadPeers(): Promise<readonly Peer[]> {
  return [highsPeer(await startHighs()), yalpsPeer];
}

/** HiGHS itself, ready to be given models. */
export function startHighs(): Promise<Highs> {
  // Its types say that the package is CommonJS; what Node imports is a module whose default
  // is the loader.
  return (loadHighs as unknown as typeof loadHighs.default)();
}

/** HiGHS (an interface to its native solver): free columns, one model that is passed anew. */
function highsPeer(highs: Highs): Peer {
  const model = highs.createModel();
  // Its tolerances are absolute, 1e-7 unless told; and without presolve its dual simplex
  // tells infeasible from unbounded.
  const tolerances = { primal_feasibility_tolerance: 1e-10, dual_feasibility_tolerance: 1e-10 };
  model.options.set({ output_flag: false, presolve: 'off', ...tolerances });
  const { optimal, infeasible, unbounded } = highs.constants.modelStatus;
  const solve = (programme: FloatProgramme): FloatAnswer => {
    model.passModel(highsModel(highs, programme));
    model.run();
    switch (model.getModelStatus()) {
      case optimal:
        return { state: 'optimal', value: model.getObjectiveValue() };
      case infeasible:
        return { state: 'infeasible' };
      case unbounded:
        return { state: 'unbounded' };
      default: {
        // Unbounded or infeasible, it cannot say which: without an aim there is no unbounded.
        if (programme.minimise.length === 0)
          throw new Error(`highs ended in ${model.getModelStatus()}`);
        const feasible = solve({ ...programme, minimise: [] }).state === 'optimal';
        return { state: feasible ? 'unbounded' : 'infeasible' };
      }
    }
  };
  return { name: 'highs', rounding: 0, solve };
}

/** The programme as HiGHS takes it: arrays, rows packed one after the other. */
export function highsModel(highs: Highs, { columns, rows, minimise }: FloatProgramme): ModelData {
  const colCost = new Float64Array(columns);
  for (const [column, coef] of minimise) colCost[column] = coef;
  const starts = [0];
  for (const { form } of rows) starts.push((starts.at(-1) as number) + form.length);
  const cells = rows.flatMap(({ form }) => form);
  return {
    numCols: columns,
    numRows: rows.length,
    colCost,
    colLower: new Float64Array(columns).fill(-highs.infinity),
    colUpper: new Float64Array(columns).fill(highs.infinity),
    rowLower: Float64Array.from(rows, ({ right }) => right),
    rowUpper: Float64Array.from(rows, ({ sense, right }) =>
      sense === '=' ? right : highs.infinity,
    ),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: columns,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(cells, ([column]) => column),
      values: Float64Array.from(cells, ([, coef]) => coef),
    },
  };
}

/** An exact programme in floats, its rows scaled to coefficients of the size of 1. */
export function inFloats({ columns, rows, minimise }: Programme): FloatProgramme {
  const floats = ({ at, coef }: LinearForm): FloatForm => {
    return at.map((column, k) => [column, Number(coef[k])]);
  };
  return {
    columns,
    rows: rows.map((row) => {
      const scale = Math.max(1, ...row.coef.map((c) => Math.abs(Number(c))));
      const form = floats(row).map(([column, coef]) => [column, coef / scale] as const);
      return { form, sense: row.sense, right: Number(row.right) / scale };
    }),
    minimise: floats(minimise),
  };
}

const ROUNDING = 1e-11;

/** yalps knows only x ≥ 0: each free column is the difference of two of its own. */
const yalpsPeer: Peer = {
  name: 'yalps',
  rounding: ROUNDING,
  solve({ columns, rows, minimise }) {
    const { constraints, variables } = splitModel({ columns, rows, minimise });
    const model = { direction: 'minimize', objective: 'aim', constraints, variables } as const;
    const { status, result } = solveYalps(model, { precision: ROUNDING, maxPivots: 100_000 });
    switch (status) {
      case 'optimal':
        return { state: 'optimal', value: result };
      case 'infeasible':
      case 'unbounded':
        return { state: status };
      case 'cycled':
      case 'timedout':
        return { state: 'lost' };
      default: {
        const never: never = status;
        throw new Error(`yalps ended ${never as string}`);
      }
    }
  },
};

/** The programme with every column as the difference of two that are not negative. */
export function splitModel({ columns, rows, minimise }: FloatProgramme) {
  const constraints: Record<string, { equal: number } | { min: number }> = {};
  const variables: Record<string, Record<string, number>> = {};
  for (let c = 0; c < columns; c++) [variables[`+${c}`], variables[`-${c}`]] = [{}, {}];
  const enter = (key: string, form: FloatForm) => {
    for (const [column, coef] of form) {
      (variables[`+${column}`] as Record<string, number>)[key] = coef;
      (variables[`-${column}`] as Record<string, number>)[key] = 0 - coef;
    }
  };
  rows.forEach(({ form, sense, right }, r) => {
    constraints[`row ${r}`] = sense === '=' ? { equal: right } : { min: right };
    enter(`row ${r}`, form);
  });
  enter('aim', minimise);
  return { constraints, variables };
}
