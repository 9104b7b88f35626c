export {
  type Asked,
  type Examination,
  examine,
  type TestQuestion,
  questionOf,
} from './examination.ts';
export { type Explained, explanationOf } from './explanation.ts';
export { askFaults, type FaultsReport } from './faults.ts';
export {
  type Case,
  caseOf,
  caseWith,
  type Proof,
  type Suspicion,
  suspicionOf,
  type Witnessed,
  witnessedBy,
  underSuspicion,
} from './suspicion.ts';
