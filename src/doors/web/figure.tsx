import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { type Scene, toSvg } from '../../telling/drawing/index.ts';
import { download } from './desk/index.ts';
import { pngOf } from './png.ts';
import { spoken } from './words.ts';

interface Props {
  readonly caption: string;
  /** For the names of its files. */
  readonly name: string;
  readonly scene: Scene;
  /** The same as a table. */
  readonly table: ComponentChildren;
  /** What else stands in the caption. */
  readonly tools?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A picture with its caption, its twin as a table, and its files. */
export function Figure({ caption, name, scene, table, tools, children }: Props) {
  const say = words();
  const asTable = useSignal(false);
  const svg = () => new Blob([toSvg(scene)], { type: 'image/svg+xml' });
  return (
    <figure class="figure">
      {children}
      <figcaption>
        <span class="figure-caption">{caption}</span>
        {tools}
        <button
          type="button"
          aria-expanded={asTable.value}
          onClick={() => (asTable.value = !asTable.value)}
        >
          {say.table}
        </button>
        <button type="button" onClick={() => download(`${name}.svg`, svg())}>
          SVG
        </button>
        <button
          type="button"
          onClick={async () => download(`${name}.png`, await pngOf(svg(), scene))}
        >
          PNG
        </button>
      </figcaption>
      {asTable.value && (
        <div class="figure-table" tabIndex={0} role="group" aria-label={caption}>
          {table}
        </div>
      )}
    </figure>
  );
}

const words = spoken({ en: { table: 'As a table' }, es: { table: 'Como tabla' } });
