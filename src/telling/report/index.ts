export { chartText } from './charttext.ts';
export { checkJson, checkText } from './checked.ts';
export { flowAtText, flowText } from './flowtext.ts';
export { gearsText, type NamedFlow } from './gearstext.ts';
export { handText } from './handtext.ts';
export { chartJson, flowJson, flowAtJson, gearsJson, handJson } from './json.ts';
export { type Ink, type Page, paragraph, PLAIN } from './page.ts';
