import { toSvg } from '../../telling/scene/index.ts';
import { LargeButton, Tiles } from '../controls/index.ts';
import { download } from '../desk/index.ts';
import { pngOf } from '../figure/index.ts';
import type { Picture, Offered } from './pictures.ts';
import { picture } from './wanted.ts';
import { words } from './words.ts';

interface Props {
  readonly offered: readonly Offered[];
  readonly chosen: Picture | undefined;
}

/** Which drawing, and its files. */
export function OfPictures({ offered, chosen }: Props) {
  const say = words();
  return (
    <>
      <div class="print-what" role="group" aria-label={say.pictures}>
        <Tiles>
          {offered.map(({ id, title }) => (
            <LargeButton key={id} pressed={id === chosen?.id} onPress={() => (picture.value = id)}>
              {title}
            </LargeButton>
          ))}
        </Tiles>
      </div>
      {chosen && <Files chosen={chosen} />}
    </>
  );
}

function Files({ chosen: { id, scene } }: { readonly chosen: Picture }) {
  const svg = () => new Blob([toSvg(scene)], { type: 'image/svg+xml' });
  return (
    <div class="row" role="group" aria-label={words().files}>
      <LargeButton onPress={() => download(`${id}.svg`, svg())}>SVG</LargeButton>
      <LargeButton onPress={async () => download(`${id}.png`, await pngOf(svg(), scene))}>
        PNG
      </LargeButton>
    </div>
  );
}
