import type { Unsigned } from '../../asking/build/index.ts';
import { visible, type Voice } from '../voice/index.ts';

/** What stands open where somebody signs, a sentence each; `signed`: it was signed already. */
export function unsignedTexts(its: Unsigned, signed: boolean, voice: Voice): readonly string[] {
  const { open, unread, faulty, off, build } = its;
  const list = (names: readonly string[]) => voice.list(names.map((name) => voice.called(name)));
  const parts = faulty.map(({ part, says }) => {
    return voice.say('sign.part', { part: voice.called(part), what: says.map(visible).join('; ') });
  });
  const told = { signed: signed ? 'yes' : 'no', open: list(open) };
  return [
    ...(open.length > 0 ? [voice.say('sign.open', told)] : []),
    ...(parts.length > 0 ? [voice.say('sign.faulty', { parts: voice.list(parts) })] : []),
    ...(off.length > 0 ? [voice.say('sign.off', { names: list(off) })] : []),
    ...(unread.length > 0 ? [voice.say('sign.unread', { names: list(unread) })] : []),
    ...(build ? buildTexts(build, voice) : []),
  ];
}

function buildTexts(
  { all, undone, from = 0, wrong, unseen, starts, startsUndone }: NonNullable<Unsigned['build']>,
  voice: Voice,
): readonly string[] {
  const steps = unseen.map((step) => `${step}`);
  return [
    ...(wrong.length > 0 ? [voice.say('sign.wrong', { steps: voice.list(wrong) })] : []),
    ...(steps.length > 0 ? [voice.say('sign.unseen', { steps: voice.list(steps) })] : []),
    ...(undone > 0 ? [voice.say('sign.build', { done: all - undone, undone, all, from })] : []),
    ...(startsUndone > 0 ? [voice.say('sign.start', { undone: startsUndone, all: starts })] : []),
  ];
}
