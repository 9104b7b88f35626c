export { bandJson } from './bandjson.ts';
export { bandText } from './bandtext.ts';
export { chartText } from './charttext.ts';
export { checkJson, checkText } from './checked.ts';
export { faultsCsv } from './faultscsv.ts';
export { faultsJson } from './faultsjson.ts';
export { type FaultsReport, faultsText } from './faultstext.ts';
export { flowAtText, flowText } from './flowtext.ts';
export { gearsText, type NamedFlow } from './gearstext.ts';
export { handText } from './handtext.ts';
export { chartJson, flowJson, flowAtJson, gearsJson, handJson } from './json.ts';
export { jobJson } from './jobjson.ts';
export { jobText } from './jobtext.ts';
export { oneWayJson, oneWayText } from './onewaytext.ts';
export { type Ink, type Page, paragraph, PLAIN } from './page.ts';
export { endPlayJson } from './endplayjson.ts';
export { endPlayText } from './endplaytext.ts';
export { packJson } from './packjson.ts';
export { packText } from './packtext.ts';
export { suspectsJson } from './suspectsjson.ts';
export { adviceLines, percent, suspectsText, type Suspicion, unusedLines } from './suspectstext.ts';
export { marginJson } from './marginjson.ts';
export {
  marginCells,
  type MarginReport,
  marginSources,
  marginText,
  sidesOf,
} from './margintext.ts';
export { preloadJson } from './preloadjson.ts';
export { preloadText } from './preloadtext.ts';
export { wearJson } from './wearjson.ts';
export { wearText } from './weartext.ts';
export { planJson } from './planjson.ts';
export { planText } from './plantext.ts';
