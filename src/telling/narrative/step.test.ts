import { describe, expect, it } from 'vitest';
import { plan, type Plan } from '../../engine/plan/index.ts';
import { readTrain } from '../../engine/trainfile/index.ts';
import type { Preload } from '../../engine/train/index.ts';
import { measuringTexts } from './measuring.ts';
import { lastLook, type StepContext, stepTold } from './step.ts';
import { voiceOf } from '../voice/voice.ts';

const { train } = readTrain(`
holdturn: 1
input: turbine shaft
output: main shaft
sets: { set: { sun: 30, ring: 66 } }
joined: { turbine shaft: [set.sun], main shaft: [set.carrier] }
devices:
  ring band: { band: set.ring }
  ring sprag: { one-way: [set.ring, race], lets: clockwise }
  race brake: { brake: race }
  park pawl: { pawl: main shaft }
ranges: { P: { P: [park pawl] }, D: { "1": [ring band] } }
teardown:
  pump: { carries: [turbine shaft, set.sun] }
  servo: { feeds: [ring band] }
  strap: { carries: [ring band] }
  race pack: { carries: [race brake] }
  race: { carries: [race], under: [race pack] }
  sprag: { carries: [ring sprag] }
  ring: { carries: [set.ring] }
  shaft: { carries: [main shaft, set.carrier] }
  pawl part: { carries: [park pawl] }
  cover: { closes: [side bearings], bolts: { torque: 24 Nm } }
preload:
  side bearings:
    turning: { least: 1 Nm, most: 2 Nm }
    used: { least: 0.5 Nm, most: 1 Nm }
bands:
  ring band: { pitch: 1.25 mm, lever: 0.7, limits: { clearance: { least: 1.2 mm, most: 1.7 mm } } }
`);
if (!train) throw new Error('the train of this test has a mistake');
const its = plan(train) as Plan;

function contextIn(language: 'en' | 'es'): StepContext {
  return { train: train as NonNullable<typeof train>, plan: its, voice: voiceOf(language) };
}
function toldOf(title: string, language: 'en' | 'es' = 'en') {
  const context = contextIn(language);
  const told = its.steps.map((step) => stepTold(step, context));
  const found = told.find((one) => one.title === title);
  if (!found) throw new Error(`${title} is none of ${told.map((one) => one.title).join(', ')}`);
  return found;
}

describe('a step', () => {
  it('warns of springs at the servo of a band, not at its strap', () => {
    expect(toldOf('servo').caution).toMatch(/^Springs/u);
    expect(toldOf('strap').caution).toBeUndefined();
  });

  it('says by how many turns a band is backed off, and what its limits are of', () => {
    const how = toldOf('Band adjustment: ring band').how.join(' ');
    expect(how).toContain('Clearance at the drum: 1.2\u00A0mm');
    expect(how).toContain('Limits of the travel, by those of the clearance and the lever: 1.7');
    // (1.2 + 1.7) / 2 over 0.7 and 1.25 mm a turn is 1.657 turns: 1 5/8 in eighths.
    expect(how).toContain('Back off 1\u00A05/8 turns');
    expect(toldOf('Ajuste de la banda: ring band', 'es').how.join(' ')).toContain('1\u00A05/8');
  });

  it('proves a preload by the torque, new bearings and those that run again', () => {
    const { how, reads } = toldOf('Preload: side bearings');
    expect(reads).toBe(true);
    expect(how.filter((line) => line.startsWith('Limits for'))).toHaveLength(2);
    expect(toldOf('Precarga: side bearings', 'es').how[0]).toMatch(/^Limpie/u);
  });

  it('has no limits for a preload of which none are known, and says whose data to look up', () => {
    const told = (preload: Omit<Preload, 'bearings'>) => {
      const step = { does: 'preload', number: 1, preload: { bearings: 'x', ...preload } } as const;
      return measuringTexts(step, { ...its, steps: [step] }, voiceOf('en'));
    };
    const [how, ...none] = told({});
    expect(none).toEqual([voiceOf('en').say('sheet.measure.no limit')]);
    const used = { turning: { least: '0.5 Nm', most: '1 Nm' } };
    const [, ...some] = told(used);
    expect(some[0]).toContain('0.5');
    expect(some.at(-1)).toBe(voiceOf('en').say('sheet.own data'));
    expect(how).toBe(told(used)[0]);
  });

  it('tries a pawl, which has no plates and does not drag', () => {
    const { checks } = toldOf('Try it by hand: park pawl');
    expect(checks[0]?.right).toBe('turns neither way');
    expect(checks[0]?.wrong.join(' ')).toContain('park pawl: does not hold');
    expect(JSON.stringify(its.steps.map((step) => stepTold(step, contextIn('en'))))).not.toMatch(
      /park pawl: (?:drags|does not grip)/u,
    );
  });

  it('has the races of a one-way clutch tried that nothing later shows backwards', () => {
    const hinted = its.steps.flatMap((step) =>
      step.does === 'fit' && step.oneWays?.length ? [step.part.name] : [],
    );
    expect(hinted).toEqual(['race']);
    expect(toldOf('race').how.join(' ')).toContain('Hold the outer race of the ring sprag');
    expect(toldOf('race', 'es').how.join(' ')).toContain('ring sprag');
  });

  it('never stops for a part that was left out, once it is tightened', () => {
    const stops = its.steps.map((step) => lastLook(step, contextIn('en')) ?? '');
    expect(its.mistakes.some(({ part }) => part === 'cover')).toBe(true);
    expect(stops.join(' ')).not.toContain('cover: left out');
  });
});
