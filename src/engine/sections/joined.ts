import * as v from 'valibot';
import { memberName, or } from '../form/index.ts';
import { MEMBER, byName, listOf, section } from '../entries/index.ts';

const JOIN_NAME = memberName('The name of the one member that the listed members make.', {
  as: 'join',
  names: 'member',
  own: true,
});

export const JOINED = section({
  key: 'joined',
  form: byName(
    JOIN_NAME,
    v.pipe(v.array(MEMBER, or('members')), v.minLength(1, or('members'))),
    'Members that are splined, tabbed or made in one piece, by the name of the one member they make.',
  ),
  read: (entries) => ({ joins: listOf(entries, (name, members) => ({ name, members })) }),
  write: ({ joins }) => new Map(joins.map(({ name, members }) => [name, members])),
  check: ({ joins }, at, findings) => {
    for (const { name, members } of joins) {
      members.forEach((one, i) => {
        const place = () => at('joined', name, `${i}`);
        if (one === name) findings.error(place(), { problem: 'joined to itself', member: one });
        else if (members.indexOf(one) < i)
          findings.error(place(), { problem: 'listed twice', name: one });
      });
    }
  },
});
