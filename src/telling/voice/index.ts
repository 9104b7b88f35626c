export { type Language, LANGUAGES } from '../../engine/words/index.ts';
export { learn } from './message.ts';
export { type MessageId } from './messages.ts';
export { type Arguments, keyOf, visible, type Voice, voiceOf } from './voice.ts';
