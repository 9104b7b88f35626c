import { useSignal } from '@preact/signals';
import { visible } from '../../telling/narrative/index.ts';
import { LargeButton } from '../controls/index.ts';
import { ownExperience, pick, readText, useExperience } from '../desk/index.ts';
import { troubleText } from '../enquiry/index.ts';
import { beside } from '../thread/index.ts';
import { words } from './words.ts';

const KINDS = { 'application/yaml': ['.yaml', '.yml'] };

/** By whose experience suspects are weighed: common practice, or a shop's file, chosen here. */
export function ShopFile() {
  const say = words();
  const trouble = useSignal<string | undefined>(undefined);
  const own = ownExperience.value;
  const choose = async () => {
    trouble.value = undefined;
    try {
      const picked = await pick(KINDS);
      if (!picked) return;
      const { name: called, text } = await readText(picked);
      await beside('weighs', { called, text });
      if (!useExperience({ called, text })) trouble.value = say.shopUnkept;
    } catch (error) {
      trouble.value = `${say.shopRefused} ${troubleText(error)}`;
    }
  };
  return (
    <section class="symptoms-shop" aria-label={say.shop}>
      <p>{own ? say.shopOwn(visible(own.called)) : say.shopCommon}</p>
      {trouble.value !== undefined && (
        <p class="symptoms-trouble" role="alert">
          {trouble.value}
        </p>
      )}
      <div class="row">
        <LargeButton onPress={() => void choose()}>{say.shopChoose}</LargeButton>
        {own && (
          <LargeButton onPress={() => void useExperience(undefined)}>{say.shopBack}</LargeButton>
        )}
      </div>
    </section>
  );
}
