import { signal } from '@preact/signals';

/** What fills the screen, for a class at the other end of the room. */
export const large = signal<Element | null>(null);

document.addEventListener('fullscreenchange', () => (large.value = document.fullscreenElement));

/** Fills the screen with something; Escape, or the same again, brings the page back. */
export function fillWith(what: Element | null): Promise<void> | undefined {
  return document.fullscreenElement ? document.exitFullscreen() : what?.requestFullscreen();
}
