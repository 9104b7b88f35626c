import { describe, expect, it } from 'vitest';
import { isFault } from '../../shop/strip/index.ts';
import { LANGUAGES, learn, voiceOf } from '../../telling/narrative/index.ts';
import {
  entryMade,
  entryTold,
  faultsOf,
  howFar,
  jobIn,
  jobMade,
  partsIn,
  type PartStanding,
} from './index.ts';

const AT = '2026-11-25T12:00:00.000Z';

// What a job says of a part, by what the command would be told, a minute each.
function after(...told: readonly (readonly string[])[]): PartStanding {
  let text = jobMade({ unit: 'P-3', complaint: '', by: 'TW', at: AT });
  for (const [minute, words] of told.entries()) {
    const at = `2026-11-25T12:0${minute + 1}:00.000Z`;
    const { job } = jobIn({ called: 'p3', text });
    text += entryMade({ told: entryTold(words, {}) }, { who: 'TW', at }, job).text;
  }
  const { job, problems } = jobIn({ called: 'p3', text });
  expect(problems).toEqual([]);
  return partsIn(job, ['split cage', 'pump']).get('split cage') as PartStanding;
}

describe('the parts of a job', () => {
  const off = ['removed', 'split cage'];
  const worn = ['note', 'split cage: Turns both ways'];

  it('are off and on as was written last', () => {
    expect(after().off).toBe(false);
    expect(after(off).off).toBe(true);
    expect(after(off, ['installed', 'split cage']).off).toBe(false);
    expect(after(['removed', 'pump']).off).toBe(false);
  });

  it('keep what was found, which speaks against the same one, and not against a new one', () => {
    expect(faultsOf(after(off, worn)).map(({ says }) => says)).toEqual(['Turns both ways']);
    const same = after(off, worn, ['installed', 'split cage', 'it holds after cleaning']);
    expect(same.on).toEqual({ replaced: false, why: 'it holds after cleaning' });
    expect(faultsOf(same)).toHaveLength(1);
    const fresh = after(off, worn, ['installed', 'split cage', 'replaced']);
    expect(faultsOf(fresh)).toEqual([]);
    expect(fresh.found).toHaveLength(1);
  });

  it('are on once the build has them on, and off again from where it came off', () => {
    const built = ['built', '6', 'split cage'];
    expect(after(off, built).off).toBe(false);
    expect(after(off, built, ['built', '9', 'split cage'], ['unbuilt', '8', 'x']).off).toBe(false);
    expect(after(off, built, ['unbuilt', '6', 'x']).off).toBe(true);
    // It is the same one, as it was found.
    expect(faultsOf(after(off, worn, built))).toHaveLength(1);
  });

  it('go on as new at their step of the build, and come off with it', () => {
    const fresh = [
      off,
      worn,
      ['installed', 'split cage', 'replaced'],
      ['built', '6', 'split cage'],
    ];
    expect(after(...fresh).on).toEqual({ replaced: true });
    expect(after(...fresh, ['unbuilt', '6', 'x']).off).toBe(true);
    expect(after(...fresh, ['unbuilt', '7', 'x']).off).toBe(false);
  });

  it('tell how far a unit is, from the job alone', () => {
    let text = jobMade({ unit: 'P-3', complaint: '', by: 'TW', at: AT });
    const all = [
      off,
      ['removed', 'pump'],
      ['removed', 'drum'],
      ['installed', 'drum'],
      ['built', '1'],
    ];
    for (const [minute, words] of all.entries()) {
      const at = `2026-11-25T12:0${minute + 1}:00.000Z`;
      const { job } = jobIn({ called: 'p3', text });
      text += entryMade({ told: entryTold(words, {}) }, { who: 'TW', at }, job).text;
    }
    const { off: names, built } = howFar(jobIn({ called: 'p3', text }).job);
    expect([names, built?.told]).toEqual([['split cage', 'pump'], { kind: 'built', task: '1' }]);
  });

  it('are found sound in any language', async () => {
    await Promise.all(LANGUAGES.map(learn));
    for (const language of LANGUAGES) {
      expect(isFault(voiceOf(language).say('strip.sound'))).toBe(false);
    }
    expect(isFault('Counted: 3 frictions, 3 steels, as the file says')).toBe(false);
    expect(isFault('Linings burnt')).toBe(true);
  });
});
