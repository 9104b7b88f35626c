import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';

// Whether the first picture has been painted, and there is time for the rest.
const painted = signal(false);

/**
 * Called when the first picture has been put on the page: once it is painted the train is set
 * moving by `move`, and once it moves there is time for the rest.
 */
export function firstPictureIsUp(move: () => void, rest: () => void): void {
  afterFrames(1, () => {
    move();
    afterFrames(4, () => {
      painted.value = true;
      rest();
    });
  });
}

function afterFrames(frames: number, then: () => void): void {
  if (frames === 0) setTimeout(then);
  else requestAnimationFrame(() => afterFrames(frames - 1, then));
}

/** A part of the page that is fetched and made once the first picture is there; until then, nothing. */
export function later<Props extends object>(
  fetch: () => Promise<ComponentType<Props>>,
): (props: Props) => preact.JSX.Element | null {
  const part = signal<{ readonly Part: ComponentType<Props> } | undefined>(undefined);
  let asked = false;
  return (props) => {
    if (painted.value && !asked) {
      asked = true;
      void fetch().then((Part) => (part.value = { Part }));
    }
    const { Part } = part.value ?? {};
    return Part ? <Part {...props} /> : null;
  };
}
