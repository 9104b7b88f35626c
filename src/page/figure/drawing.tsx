import type { JSX } from 'preact';
import { type Mark, placement, round, type Scene } from '../../telling/scene/index.ts';

/** A scene on the screen: the same marks and classes as in a file, names as text and no more. */
export function Drawing({
  scene,
  ...rest
}: { readonly scene: Scene } & JSX.IntrinsicElements['svg']) {
  const { width, height, title, marks } = scene;
  return (
    <svg
      class="drawing"
      viewBox={`0 0 ${width} ${height}`}
      style={`--wide: ${width}; --high: ${height}`}
      role="img"
      aria-label={title}
      {...rest}
    >
      {marks.map((mark, i) => (
        <Marked key={i} mark={mark} />
      ))}
    </svg>
  );
}

function Marked({ mark }: { readonly mark: Mark }): JSX.Element {
  switch (mark.mark) {
    case 'path':
      return <path class={mark.look} d={mark.d} />;
    case 'words':
      return (
        <text
          class={mark.look}
          x={round(mark.x)}
          y={round(mark.y)}
          text-anchor={mark.anchor}
          font-size={mark.size}
        >
          {mark.text}
        </text>
      );
    case 'group':
      return (
        <g
          class={mark.look}
          data-kind={mark.about?.kind}
          data-name={mark.about?.name}
          transform={mark.at && placement(mark.at)}
        >
          {mark.marks.map((inner, i) => (
            <Marked key={i} mark={inner} />
          ))}
        </g>
      );
  }
}
