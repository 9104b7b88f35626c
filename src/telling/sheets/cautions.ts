import type { Voice } from '../narrative/index.ts';
import type { Caution } from './document.ts';

/** What can hurt at a task. */
export type Danger = 'hands' | 'springs' | 'air' | 'weight' | 'fluid' | 'sharp';

/** The cautions that fit a task, and who has the last word; `more` are the task's own. */
export function cautionOf(
  dangers: readonly Danger[],
  voice: Voice,
  more: readonly string[] = [],
): Caution {
  return {
    block: 'caution',
    title: voice.say('plan.caution'),
    lines: [
      ...more,
      ...dangers.map((danger) => dangerText(danger, voice)),
      voice.say('sheet.caution.maker'),
    ],
  };
}

function dangerText(danger: Danger, voice: Voice): string {
  switch (danger) {
    case 'fluid':
      return voice.say('caution.fluid');
    case 'sharp':
      return voice.say('sheet.caution.sharp');
    case 'hands':
    case 'springs':
    case 'air':
    case 'weight':
      return voice.say('plan.caution.of', { what: danger });
  }
}
