import type { MeasuredKind } from '../../engine/train/index.ts';
import type { Problem } from '../../engine/yaml/index.ts';

/**
 * Why what was asked has no answer, as plain data; telling words it. Texts in it are as they
 * were given, whatever they would do to a terminal.
 */
export type Refused =
  | UnknownName
  | {
      readonly refused:
        | 'no.way'
        | 'no.race'
        | 'no.friction'
        | 'no.device.at all'
        | 'bad.speeds'
        | 'bad.efficiency'
        | 'bad.pressure'
        | 'bad.torque'
        | 'bad.stall ratio';
      readonly given: string;
    }
  | { readonly refused: 'no.load'; readonly given: string; readonly output: string }
  | { readonly refused: 'bad.loads'; readonly outputs: readonly string[] }
  | { readonly refused: 'bad.load twice'; readonly output: string }
  /** What is wrong upstream leaves valves that chase each other, in this gear among others. */
  | { readonly refused: 'bad.oil chase'; readonly gear: string }
  /** A fault upstream changes what gears apply, and devices were named. */
  | { readonly refused: 'bad.oil on' }
  | { readonly refused: 'bad.fault twice'; readonly given: string; readonly before: string }
  /** The ends that the file names beside input and output; none where it names none. */
  | { readonly refused: 'no.end'; readonly given: string; readonly ends: readonly string[] }
  | { readonly refused: 'bad.held turned'; readonly member: string }
  /** The gear stands in each of these ranges. */
  | {
      readonly refused: 'bad.gear alone';
      readonly gear: string;
      readonly ranges: readonly string[];
    }
  | {
      readonly refused:
        | 'bad.missing turn'
        | 'bad.case turned'
        | 'bad.few speeds'
        | 'bad.choice'
        | 'no.ranges'
        | 'bad.at losses'
        /** The train's file tells none. */
        | 'no.capacities'
        | 'no.torque'
        | 'no.teardown'
        | 'bad.series alone';
    }
  /** What has no meaning beside one-way clutches. */
  | { readonly refused: 'bad.one-way'; readonly option: string }
  | {
      readonly refused: 'bad.many devices' | 'bad.many parts';
      readonly count: number;
      readonly most: number;
    }
  | { readonly refused: 'bad.many faults'; readonly rows: number; readonly gears: number }
  | {
      readonly refused: 'bad.trials' | 'bad.series';
      readonly given: string;
      readonly least: number;
      readonly most: number;
    }
  /** Neither in the readings nor in the job. */
  | {
      readonly refused: `no.measured ${MeasuredKind}`;
      readonly called: string;
    }
  /** The words of an entry of a job, of which there are too many, none, or such as say nothing. */
  | { readonly refused: 'bad.excess'; readonly given: string }
  | { readonly refused: 'bad.missing words'; readonly kind: string }
  | { readonly refused: 'bad.words'; readonly kind: string; readonly given: string }
  | { readonly refused: 'bad.entry'; readonly problem: Problem }
  /** A step of a build that is of something else. */
  | { readonly refused: 'bad.task of'; readonly task: string; readonly of: string }
  /** The text of a train, or another, that cannot be read; the first problem first. */
  | {
      readonly refused: 'bad.train' | 'bad.file';
      readonly called: string;
      readonly problems: readonly Problem[];
    };

/** A name that nothing bears: the nearest that something does, and all that could stand there. */
export type UnknownName = Unknown &
  (
    | {
        readonly refused:
          | 'no.member'
          | 'no.range'
          | 'no.gear'
          | 'no.device'
          | 'no.part'
          | 'no.output'
          | 'no.one-way'
          | 'no.entry kind'
          /** Of a build. */
          | 'no.task'
          | 'no.entry'
          /** That is measured, or a device. */
          | 'no.measured';
      }
    /** Of which part of the request. */
    | { readonly refused: 'no.fault name'; readonly of: 'fault' | 'only' }
    | { readonly refused: 'no.fault' | 'no.fault place'; readonly name: string }
  );

export interface Unknown {
  readonly given: string;
  readonly near?: string;
  readonly known: readonly string[];
}

/** Thrown by whatever is asked, and caught where a door words what came of it. */
export class NoAnswer extends Error {
  readonly why: Refused;

  constructor(why: Refused) {
    super(why.refused);
    this.why = why;
  }
}
