import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';

// Whether the first picture has been painted, and there is time for the rest.
const painted = signal(false);

/** Called when the first picture has been put on the page; calls back once it is painted. */
export function firstPictureIsUp(then: () => void): void {
  requestAnimationFrame(() =>
    setTimeout(() => {
      then();
      setTimeout(() => (painted.value = true));
    }),
  );
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
