export { answer, type Wrong } from './answer.ts';
export {
  askNext,
  type Asked,
  type Countable,
  inquire,
  inquireOf,
  type Inquiry,
  lacksOf,
  type Reply,
  type Topic,
} from './asking.ts';
export { changeOf } from './changing.ts';
export { entriesOf, FORM_SECTIONS, sectionsToTell } from './entries.ts';
export { NOTHING } from './nothing.ts';
export type { Prompt } from './prompt.ts';
export { nextPrompt, promptsOf } from './prompts.ts';
