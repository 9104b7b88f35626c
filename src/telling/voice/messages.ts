import type { en } from './en.ts';

/** English is the measure: every language says each of its messages. */
export type MessageId = keyof typeof en;
export type Messages = Readonly<Record<MessageId, string>>;
