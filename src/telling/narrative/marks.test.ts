import { describe, expect, it } from 'vitest';
import { type DeviceWork } from '../../engine/flow/index.ts';
import { ONE, ZERO } from '../../engine/linear/index.ts';
import { doingOf, MARKS } from './marks.ts';
import { LANGUAGES, voiceOf } from '../voice/index.ts';

describe.each(LANGUAGES)('the legends in %s', (language) => {
  const voice = voiceOf(language);
  it('tell every mark of a picture', () => {
    const legend = voice.say('marks.picture');
    const told = Object.values(MARKS).filter((mark) => !legend.includes(mark));
    expect(told).toEqual([]);
  });

  it('tell every mark of a chart, and what an empty cell is', () => {
    const legend = voice.say('marks.chart');
    for (const doing of ['on', 'idle', 'holding', 'over-running'] as const)
      expect(legend).toContain(`${MARKS[doing]} `);
    expect(legend).toMatch(/Empty|Vacío/u);
  });
});

it('no mark is a letter, and what differs in a gear has marks that differ', () => {
  expect(Object.values(MARKS).join('')).not.toMatch(/[\p{L}\p{N}()]/u);
  const { on, idle, holding, off, 'over-running': overRuns } = MARKS;
  expect(new Set([on, idle, holding, off, overRuns]).size).toBe(5);
});

it('a device that is on and carries nothing is marked apart', () => {
  const work = (state: DeviceWork['state'], torque = ONE): DeviceWork => {
    return { kind: 'clutch', state, slip: ZERO, torque } as DeviceWork;
  };
  expect(doingOf(work('applied'))).toBe('on');
  expect(doingOf(work('applied', ZERO))).toBe('idle');
  expect(doingOf(work('holding'))).toBe('holding');
  expect(doingOf(work('free'))).toBe('off');
});
