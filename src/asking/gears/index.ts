export {
  askCapacity,
  type LoadRequest,
  type MarginReport,
  marginsAsked,
  marginsAtLoad,
  USUAL_KPA,
} from './capacity.ts';
export { askChart } from './chart.ts';
export { askCheck } from './check.ts';
export { askFlow, flowsOf, type NamedFlow } from './flow.ts';
export { askHand } from './hand.ts';
