import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { type Scene, toSvg } from '../../telling/scene/index.ts';
import { download } from '../desk/index.ts';
import { pngOf } from './png.ts';
import { fillWith } from './large.ts';
import './figure.css';
import { spoken } from '../words/index.ts';

interface Props {
  readonly caption: string;
  /** For the names of its files. */
  readonly name: string;
  readonly scene: Scene;
  /** The same with its legend, for a file in which it stands by itself. */
  readonly inFile?: () => Scene;
  /** The same as a table. */
  readonly table: ComponentChildren;
  /** What else stands in the caption. */
  readonly tools?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A picture with its caption, its twin as a table, and its files. */
export function Figure({ caption, name, scene, inFile, table, tools, children }: Props) {
  const say = words();
  const asTable = useSignal(false);
  const place = useRef<HTMLElement>(null);
  const alone = () => inFile?.() ?? scene;
  const svg = (its: Scene) => new Blob([toSvg(its)], { type: 'image/svg+xml' });
  return (
    <figure class="figure" ref={place}>
      {children}
      <figcaption>
        <span class="figure-caption">{caption}</span>
        {tools}
        <span class="figure-tools">
          {document.fullscreenEnabled && (
            <button
              type="button"
              onClick={() => void fillWith(place.current?.closest('.builds') ?? place.current)}
            >
              {say.large}
            </button>
          )}
          <button
            type="button"
            aria-expanded={asTable.value}
            onClick={() => (asTable.value = !asTable.value)}
          >
            {say.table}
          </button>
          <button type="button" onClick={() => download(`${name}.svg`, svg(alone()))}>
            SVG
          </button>
          <button
            type="button"
            onClick={async () => download(`${name}.png`, await pngOf(svg(alone()), alone()))}
          >
            PNG
          </button>
        </span>
      </figcaption>
      {asTable.value && (
        <div class="figure-table" tabIndex={0} role="group" aria-label={caption}>
          {table}
        </div>
      )}
    </figure>
  );
}

const words = spoken({
  en: { table: 'As a table', large: 'Full screen' },
  es: { table: 'Como tabla', large: 'Pantalla completa' },
});
