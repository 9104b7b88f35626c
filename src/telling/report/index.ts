export { bandText } from './bandtext.ts';
export { chartText } from './charttext.ts';
export { checkText } from './checktext.ts';
export { endPlayText } from './endplaytext.ts';
export { faultMarks, soundMarks } from './faultstable.ts';
export { faultsText } from './faultstext.ts';
export { flowAtText, flowText } from './flowtext.ts';
export { gearsText } from './gearstext.ts';
export { handText } from './handtext.ts';
export { jobText } from './jobtext.ts';
export {
  marginCells,
  marginSources,
  pressureText,
  marginText,
  sidesOf,
  deviceCells,
  firstToSlipText,
} from './margintext.ts';
export { oneWayText } from './onewaytext.ts';
export { packText } from './packtext.ts';
export { planText } from './plantext.ts';
export { preloadText } from './preloadtext.ts';
export { adviceLines, percent, suspectsText, unusedLines } from './suspectstext.ts';
export { wearText } from './weartext.ts';
