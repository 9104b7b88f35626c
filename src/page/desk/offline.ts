import { signal } from '@preact/signals';
import { registerSW } from 'virtual:pwa-register';

/** Takes the page to a newer version that has come; undefined while there is none. */
export const newer = signal<(() => void) | undefined>(undefined);

/** Makes the page work without a network from its next visit on. */
export function workOffline(): void {
  const take = registerSW({ onNeedRefresh: () => (newer.value = () => void take(true)) });
}

/** Asks to install the page; undefined where the browser offers nothing of the kind, or it is done. */
export const install = signal<(() => void) | undefined>(undefined);

/** Hears from now on whether the page can be installed, and that it was. */
export function hearInstall(): void {
  window.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    install.value = () => void (event as Event & { prompt?: () => void }).prompt?.();
  });
  window.addEventListener('appinstalled', () => (install.value = undefined));
}
