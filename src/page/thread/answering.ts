import {
  askFaults,
  caseWith,
  type Examination,
  examine,
  explain,
  type Explanation,
  type FaultsRequest,
  mustBeExperience,
  type FaultsReport,
  type TestQuestion,
  questionOf,
  type Suspicion,
  suspicionOf,
  underSuspicion,
} from '../../asking/faults/index.ts';
import { askCheck } from '../../asking/gears/index.ts';
import type { Objection } from '../../telling/narrative/index.ts';
import { askPlan } from '../../asking/build/index.ts';
import { asIfTold } from '../../asking/job/index.ts';
import { type Given, NoAnswer, trainAsFound, trainIn } from '../../asking/request/index.ts';
import type { Train } from '../../engine/train/index.ts';
import type { Plan } from '../../engine/plan/index.ts';
import { type FoldedJob, seenProblems, type Told } from '../../shop/records/index.ts';
import { type Diagnosed, diagnosedOf } from '../../telling/sheets/index.ts';

/** What was told of a train: its text, what was written down, and which tests nobody wants to make. */
export interface AllTold {
  readonly train: string;
  readonly job: FoldedJob;
  readonly skipped: readonly string[];
}

/** What is worked out beside the page: by each question, what it takes and what comes of it. */
export interface Beside {
  examine: { readonly takes: AllTold; readonly gives: Examination };
  question: { readonly takes: AllTold & { readonly test: string }; readonly gives: TestQuestion };
  explain: {
    readonly takes: AllTold & { readonly bracket: number; readonly suspect: number };
    readonly gives: Explanation;
  };
  /** Whether an entry says what the train knows; throws where it does not. */
  fits: { readonly takes: AllTold & { readonly told: Told }; readonly gives: null };
  faults: {
    readonly takes: { readonly train: string } & FaultsRequest;
    readonly gives: FaultsReport;
  };
  /** Whether a shop's figures are sound; throws where they are not. */
  weighs: { readonly takes: Given; readonly gives: null };
  /** What a diagnosis sheet says; filled in from no job, it has boxes. */
  diagnosed: {
    readonly takes: Found & { readonly job: FoldedJob | null };
    readonly gives: Diagnosed;
  };
  planned: { readonly takes: Found; readonly gives: Plan };
  /** What looks odd in a file that is a train, as `check` tells it. */
  checked: { readonly takes: { readonly train: string }; readonly gives: readonly Objection[] };
}

/** A train's text, and what is wrong with it. */
export interface Found {
  readonly train: string;
  readonly fault: readonly string[];
}

/** Answers, and remembers what the last train's faults would show. */
export class Answering {
  private readonly experience: Given;
  private known:
    | { readonly text: string; readonly its: ReturnType<typeof underSuspicion> }
    | undefined;
  private last: { readonly key: string; readonly suspicion: Suspicion } | undefined;

  constructor(experience: Given) {
    this.experience = experience;
  }

  /** Whether it answers by these figures. */
  knows({ called, text }: Given): boolean {
    return this.experience.called === called && this.experience.text === text;
  }

  /** Throws `NoAnswer` where there is none. */
  answer<Ask extends keyof Beside>(ask: Ask, takes: Beside[Ask]['takes']): Beside[Ask]['gives'];
  answer(...[ask, takes]: { [A in keyof Beside]: [A, Beside[A]['takes']] }[keyof Beside]) {
    switch (ask) {
      case 'examine':
        return this.examined(takes).examination;
      case 'question':
        return questionOf(this.suspicion(takes), takes.test);
      case 'explain':
        return this.explained(takes);
      case 'fits':
        return this.fits(takes);
      case 'faults':
        return askFaults(trainOf(takes.train), takes).report;
      case 'weighs':
        mustBeExperience(takes);
        return null;
      case 'diagnosed':
        return this.diagnosed(takes);
      case 'checked': {
        const { train, problems } = askCheck(takes.train);
        return train ? problems.filter(({ severity }) => severity === 'warning') : [];
      }
      case 'planned':
        return askPlan(trainAsFound(trainOf(takes.train), takes));
    }
  }

  private examined({ train, job, skipped }: AllTold) {
    const its = caseWith(this.suspected({ train, fault: [] }), { job: asIfTold(job, []) });
    const { suspicion, examination } = examine(its, skipped);
    this.last = { key: keyOf({ train, job, skipped }), suspicion };
    return { suspicion, examination };
  }

  private suspected({ train, fault }: Found) {
    const text = JSON.stringify([train, fault]);
    if (this.known?.text !== text) {
      const found = trainAsFound(trainOf(train), { fault });
      this.known = { text, its: underSuspicion(found, this.experience) };
    }
    return this.known.its;
  }

  private diagnosed({ job, ...found }: Beside['diagnosed']['takes']): Diagnosed {
    const its = caseWith(this.suspected(found), job ? { job: asIfTold(job, []) } : {});
    return diagnosedOf(suspicionOf(its));
  }

  private suspicion(told: AllTold): Suspicion {
    if (this.last?.key === keyOf(told)) return this.last.suspicion;
    return this.examined(told).suspicion;
  }

  private fits({ told, ...all }: Beside['fits']['takes']): null {
    const { inquiry } = this.suspicion(all);
    const [problem] = told.kind === 'seen' ? seenProblems(told, inquiry, all.job) : [];
    if (problem) throw new NoAnswer({ refused: 'bad.entry', problem });
    return null;
  }

  private explained({ bracket, suspect, ...told }: Beside['explain']['takes']): Explanation {
    const suspicion = this.suspicion(told);
    const { cause } = suspicion.ranking.brackets[bracket]?.suspects[suspect] ?? {};
    if (!cause) throw new RangeError(`no suspect ${bracket}, ${suspect}`);
    return explain(suspicion, cause);
  }
}

function trainOf(text: string): Train {
  return trainIn({ called: '', text }).train;
}

function keyOf({ train, job, skipped }: AllTold): string {
  return JSON.stringify([train, job, skipped]);
}
