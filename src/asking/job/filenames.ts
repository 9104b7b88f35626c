import type { Train } from '../../engine/train/index.ts';
import { inFileNames } from '../../engine/words/index.ts';
import type { Told } from '../../shop/records/index.ts';

/**
 * What is told with the names of the train's own file in place of those of another language, so that
 * whoever reads the job, in whatever language, reads of the same things. A note stays as it is.
 */
export function toldInFileNames(told: Told, train: Train): Told {
  const own = (name: string) => inFileNames(name, train);
  switch (told.kind) {
    case 'note':
    case 'signed':
      return told;
    case 'built':
      return {
        ...told,
        ...(told.of !== undefined && { of: own(told.of) }),
        ...(told.said !== undefined && { said: own(told.said) }),
      };
    case 'unbuilt':
      return { ...told, why: own(told.why) };
    case 'photograph':
      return { ...told, ...(told.part !== undefined && { part: own(told.part) }) };
    case 'removed':
    case 'installed':
      return { ...told, part: own(told.part) };
    default:
      return { ...told, of: own(told.of) };
  }
}
