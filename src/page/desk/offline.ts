import { signal } from '@preact/signals';
import { registerSW } from 'virtual:pwa-register';

/** Takes the page to a newer version that has come; undefined while there is none. */
export const newer = signal<(() => void) | undefined>(undefined);

/** Makes the page work without a network from its next visit on. */
export function workOffline(): void {
  const take = registerSW({ onNeedRefresh: () => (newer.value = () => void take(true)) });
}
