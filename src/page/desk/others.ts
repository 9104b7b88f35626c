import { TAB } from './kept.ts';

/** What a tab tells the others of the file that it has open. */
export interface TabNews {
  readonly tab: string;
  readonly name: string;
  readonly does: 'opened' | 'here too' | 'saved';
}

/** Hears what other tabs do with the file called `name()`, and answers who opens it that it is here. */
export function hearOthers(name: () => string, hear: (told: TabNews) => void): Tell {
  if (typeof BroadcastChannel === 'undefined') return () => {};
  const channel = new BroadcastChannel('holdturn files');
  const tell: Tell = (does) => channel.postMessage({ tab: TAB, name: name(), does });
  channel.addEventListener('message', ({ data }: MessageEvent<TabNews>) => {
    if (data.tab === TAB || data.name !== name()) return;
    if (data.does === 'opened') tell('here too');
    hear(data);
  });
  return tell;
}

export type Tell = (does: TabNews['does']) => void;
