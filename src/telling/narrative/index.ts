export { problemText } from './problems.ts';
export { sentences } from './reasons.ts';
export {
  type Arguments,
  keyOf,
  type Language,
  LANGUAGES,
  type MessageId,
  visible,
  type Voice,
  voiceOf,
} from './voice.ts';
