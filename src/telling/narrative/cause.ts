import type { Warning } from '../../engine/check/index.ts';
import { visible, type Voice } from '../voice/index.ts';

/** The one change that mends every odd gear, with what to look at. */
export function oneCauseText(
  cause: Extract<Warning, { readonly problem: 'one cause' }>,
  voice: Voice,
): string {
  const { mend, ...names } = said(cause);
  const { name, other = '', was = '', key = '' } = names;
  const spelt = { name: visible(name), other: visible(other), was: visible(was), key };
  return voice.say('problem.one cause', { mend, ...spelt, gears: cause.gears });
}

interface Said {
  readonly mend: string;
  readonly name: string;
  readonly other?: string;
  readonly was?: string;
  readonly key?: string;
}

function said(cause: Parameters<typeof oneCauseText>[0]): Said {
  switch (cause.mend) {
    case 'turned round':
      return { mend: 'turned', name: cause.device, key: `lets: ${cause.lets}` };
    case 'devices exchanged':
      return { mend: 'devices', name: cause.device, other: cause.other };
    case 'members exchanged':
      return { mend: 'members', name: cause.members[0], other: cause.members[1] };
    case 'other member':
      return { mend: 'other', name: cause.device, other: cause.member, was: cause.was };
  }
}
