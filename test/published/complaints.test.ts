import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { complaintSeen } from '../../src/engine/complaint/index.ts';
import { type Experience, readExperience } from '../../src/engine/experience/index.ts';
import { inquire } from '../../src/engine/cause/index.ts';
import { type Observation, readSeen } from '../../src/engine/suspects/index.ts';
import { sightOf, type Test, testText } from '../../src/engine/sight/index.ts';
import { diagnose, type Diagnosis } from '../../src/engine/triage/index.ts';
import {
  type Complaint,
  COMPLAINTS,
  drivenIn,
  forbids,
  isOf,
  isSame,
  linesOf,
  type Named,
  namedOf,
  type Suspected,
  trainOf,
} from './complaint.ts';

const text = readFileSync(new URL('../../experience.yaml', import.meta.url), 'utf8');
const experience = readExperience(text).experience as Experience;

it('each thing that is said of a complaint is marked', () => {
  for (const { mustNotLead, forbiddenNext } of COMPLAINTS) {
    for (const { mark } of [...mustNotLead, ...forbiddenNext])
      expect(['computed', 'common practice']).toContain(mark);
  }
});

describe.each(COMPLAINTS.map((complaint) => [complaint.id, complaint] as const))(
  '%s',
  (_, complaint) => {
    const train = trainOf(complaint);
    const inquiry = inquire(train, experience);

    it('all that was seen at once: the cause leads, and a sensible test is offered', () => {
      const { observations, problems } = readSeen(linesOf(complaint).join('\n'), inquiry);
      expect(problems).toEqual([]);
      const diagnosis = diagnose(inquiry, observations);
      const groups = diagnosis.ranking.brackets.map(({ suspects }) => {
        return suspects.map(({ cause }) => namedOf(cause, train));
      });
      const [leading = []] = groups;
      const accepted = (its: Named[]) => complaint.acceptable.some((one) => isSame(one, its));

      // 1: the leading group holds the cause, and nothing that is not acceptable.
      expect(leading.filter((its) => !accepted(its))).toEqual([]);
      const wanted = complaint.cause.length === 1 ? complaint.cause[0] : { both: complaint.cause };
      expect(leading.some((its) => isSame(wanted as Suspected, its))).toBe(true);

      // 2: nothing that must not lead is there, or above what is acceptable.
      const all = groups.flat();
      const lastAccepted = complaint.acceptable.map((one) => {
        return all.findIndex((its) => isSame(one, its));
      });
      for (const { suspect, why } of complaint.mustNotLead) {
        const place = all.findIndex((its) => isSame(suspect, its));
        const above = lastAccepted.filter((its) => its >= 0 && place >= 0 && place < its);
        expect(above, `${JSON.stringify(suspect)}: ${why}`).toEqual([]);
      }

      // 3 and 4: of the tests offered first one is sensible, and none is forbidden or made again.
      const offered = offeredBy(diagnosis);
      const sensible = (test: Test) => complaint.sensibleNext.some((its) => isOf(its, test));
      expect(offered.some(sensible)).toBe(true);
      expectFit(complaint, offered, observations);
    });

    // From the first word on: the driver's own words, what was driven, and then whatever is
    // proposed, answered as is expected.
    it('followed to its end: nothing forbidden is ever proposed on the way, and nothing twice', () => {
      const road = readSeen(drivenIn(complaint).join('\n'), inquiry);
      expect(road.problems).toEqual([]);
      const said = complaintSeen(complaint.says, inquiry).observations;
      expect(said.length).toBeGreaterThan(0);
      const observations: Observation[] = [...said, ...road.observations];
      for (let step = 0; step < MOST_STEPS; step++) {
        const diagnosis = diagnose(inquiry, observations);
        expectFit(complaint, offeredBy(diagnosis), observations);
        const { best } = diagnosis.advice;
        const [expected] = best?.parts ?? [];
        if (!best || !expected) break;
        observations.push({ test: best.test, sight: sightOf(expected.outcome), sure: 'sure' });
      }
    });
  },
);

const MOST_STEPS = 4;

// What contradicts is taken again before anything is opened; that is no test made twice for nothing.
function offeredBy({ advice: { best, others, again } }: Diagnosis): Test[] {
  const all = [best, ...others].flatMap((proposal) => (proposal ? [proposal] : []));
  expect(all.slice(0, again).filter(({ opening }) => opening > 0)).toEqual([]);
  return all.slice(again).map(({ test }) => test);
}

function expectFit(
  { forbiddenNext }: Complaint,
  offered: readonly Test[],
  observations: readonly Observation[],
): void {
  const made = new Set(observations.map(({ test }) => testText(test)));
  for (const test of offered) {
    const again = made.has(testText(test)) && test.test !== 'selector';
    expect(again, testText(test)).toBe(false);
    expect(
      forbiddenNext.filter((its) => forbids(its, test)),
      testText(test),
    ).toEqual([]);
  }
}
