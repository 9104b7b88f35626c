import { faultNamed } from '../../engine/faults/index.ts';
import { faultName, gearName } from '../../telling/narrative/index.ts';
import type { Study, Build } from '../study/index.ts';
import { spoken, voiceNow } from '../words/index.ts';

/** What stands under the diagrams: the gear, its ratio, and what is wrong with the wrong build. */
export const captions = spoken({
  en: captionsIn('As it should be'),
  es: captionsIn('Como debe ser'),
});

function captionsIn(sound: string) {
  return {
    right: (study: Study) => {
      const beside = study.wrong.train.value ? ` ${sound}.` : '';
      return `Fig. 1.${beside} ${told(study, study.right)}`;
    },
    wrong: (study: Study) => `Fig. 2. ${faultsText(study)}. ${told(study, study.wrong)}`,
  };
}

/** What is wrong with the wrong build, in the reader's language. */
export function faultsText(study: Study): string {
  const train = study.file.train.value;
  const names = study.faults.value.map((text) => {
    const named = train && faultNamed(text, train);
    return named && 'fault' in named ? faultName(named.fault, voiceNow()) : text;
  });
  return names.join(', ');
}

// "D 1, L 1: 17/7 = 2.429", or what state it is in.
function told(study: Study, build: Build): string {
  const voice = voiceNow();
  const gears = study.gears.value.map(({ range, gear }) => {
    return gearName({ range: range.name, gear: gear.name }, voice);
  });
  const on = gears.length > 0 ? gears.join(', ') : voice.names(study.on.value);
  const setting = study.setting.value;
  const working = build.answer.value?.working;
  if (setting.by === 'hand') return `${on}${on && '. '}${words().byHand(voice.name(setting.turn))}`;
  if (!working) return `${on}.`;
  const { ratio, state } = working;
  return `${on}: ${ratio ? voice.number(ratio) : voice.say('state', { state })}`;
}

const words = spoken({
  en: {
    byHand: (member: string) => `By hand: ${member}; “hands off” gives it back to the engine.`,
  },
  es: { byHand: (member: string) => `A mano: ${member}; «soltar» lo devuelve al motor.` },
});
