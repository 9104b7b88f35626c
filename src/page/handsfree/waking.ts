import { signal } from '@preact/signals';

/** Keeps the screen awake while it is wanted, and again once the page is back in sight. */
export class Waking {
  /** `absent`: this browser cannot; `refused`: it would not, as on a nearly empty battery. */
  readonly stands = signal<'off' | 'awake' | 'refused' | 'absent'>('off');

  private lock: { release(): Promise<void> } | undefined;
  private wanted = false;

  start(): void {
    if (this.wanted) return;
    this.wanted = true;
    document.addEventListener('visibilitychange', this.take);
    this.take();
  }

  stop(): void {
    this.wanted = false;
    document.removeEventListener('visibilitychange', this.take);
    void this.lock?.release().catch(() => undefined);
    this.lock = undefined;
    this.stands.value = 'off';
  }

  // The browser takes it back whenever the page is hidden.
  private readonly take = (): void => void this.taken();

  private async taken(): Promise<void> {
    if (document.visibilityState !== 'visible') return;
    if (!('wakeLock' in navigator)) {
      this.stands.value = 'absent';
      return;
    }
    try {
      const lock = await navigator.wakeLock.request('screen');
      if (!this.wanted) {
        await lock.release();
        return;
      }
      this.lock = lock;
      this.stands.value = 'awake';
    } catch {
      if (this.wanted) this.stands.value = 'refused';
    }
  }
}
