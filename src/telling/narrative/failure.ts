import type { Failure, Finding } from '../../shop/causes/index.ts';
import { keyOf, type Voice } from '../voice/index.ts';

/** "second brake: burnt". */
export function foundText({ sign, of }: Finding, voice: Voice): string {
  const name = of === undefined ? '' : voice.name(of);
  return voice.say('finding', { has: of === undefined ? 'no' : 'yes', name, sign: keyOf(sign) });
}

/** What may have caused some of what was found, and what is done about it before the build. */
export function failureTexts(failure: Failure, voice: Voice): readonly [why: string, mend: string] {
  const { root, of, by, explains } = failure;
  const name = of === undefined ? '' : voice.name(of);
  const values = { root: keyOf(root), name, by: by === undefined ? '' : voice.name(by) };
  const findings = explains.map((one) => foundText(one, voice)).join(', ');
  return [
    voice.say('failure.from', { failure: voice.say('failure', values), findings }),
    voice.say('failure.mend', values),
  ];
}
