import { useSignal } from '@preact/signals';
import { isFriction } from '../../engine/train/index.ts';
import { type FoundSign, SIGNS_OF_THINGS, SIGNS_OF_UNITS } from '../../shop/causes/index.ts';
import { failureTexts, foundText } from '../../telling/narrative/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import type { Study } from '../study/index.ts';
import { voiceNow } from '../words/index.ts';
import type { Enquiry } from '../enquiry/index.ts';
import { words } from './words.ts';

interface Props {
  readonly study: Study;
  readonly enquiry: Enquiry;
}

/** Why it failed: from what was found as it came apart back to what is put right before the build. */
export function Failed({ study, enquiry }: Props) {
  const say = words();
  const voice = voiceNow();
  const { findings = [], failures = [] } = enquiry.found.value ?? {};
  return (
    <details class="symptoms-failed">
      <summary>
        <h2>{voice.say('failure.title')}</h2>
      </summary>
      <div class="symptoms-card">
        {findings.length > 0 && (
          <p>
            {say.foundSoFar} {findings.map((one) => foundText(one, voice)).join('; ')}.
          </p>
        )}
        {failures.length > 0 && (
          <ol class="symptoms-failures">
            {failures.map((failure, k) => {
              const [why, mend] = failureTexts(failure, voice);
              return (
                <li key={k}>
                  <p>
                    <b>{why}</b>
                  </p>
                  <p>{mend}</p>
                </li>
              );
            })}
          </ol>
        )}
        <p class="aside">{voice.say('failure.legend')}</p>
        <Finder study={study} enquiry={enquiry} />
      </div>
    </details>
  );
}

/** Of what, then what: two touches write a note such as "second brake: burnt". */
function Finder({ study, enquiry }: Props) {
  const say = words();
  const voice = voiceNow();
  const of = useSignal<string | undefined>(undefined);
  const train = study.file.train.value;
  if (!train) return null;
  const { devices, sets, joins } = train;
  const things = [...devices, ...sets, ...joins].map(({ name }) => name);
  const write = (sign: FoundSign) => {
    const its = of.value === '' || of.value === undefined ? {} : { of: of.value };
    void enquiry.finds(foundText({ sign, ...its, said: '' }, voice));
    of.value = undefined;
  };
  if (of.value === undefined) {
    return (
      <>
        <h3>{say.foundOf}</h3>
        <Tiles>
          <LargeButton onPress={() => (of.value = '')}>{say.wholeUnit}</LargeButton>
          {things.map((name) => (
            <LargeButton key={name} onPress={() => (of.value = name)}>
              {voice.called(name)}
            </LargeButton>
          ))}
        </Tiles>
      </>
    );
  }
  const device = devices.find(({ name }) => name === of.value);
  const signs =
    of.value === '' ? SIGNS_OF_UNITS : SIGNS_OF_THINGS.filter((sign) => fits(sign, device));
  return (
    <>
      <h3>{say.foundWhat(of.value === '' ? say.wholeUnit : voice.called(of.value))}</h3>
      <Tiles>
        {signs.map((sign) => (
          <LargeButton key={sign} onPress={() => write(sign)}>
            {foundText({ sign, said: '' }, voice)}
          </LargeButton>
        ))}
        <LargeButton other onPress={() => (of.value = undefined)}>
          {say.back}
        </LargeButton>
      </Tiles>
    </>
  );
}

type Device = NonNullable<Study['file']['train']['value']>['devices'][number];

const OF_FRICTION: ReadonlySet<FoundSign> = new Set([
  'burnt',
  'hot spots',
  'bad seal',
  'worn rings',
]);

// What burns has linings; a gear has pins and faces.
function fits(sign: FoundSign, device: Device | undefined): boolean {
  if (device && isFriction(device)) return OF_FRICTION.has(sign) || sign === 'broken';
  return !OF_FRICTION.has(sign);
}
