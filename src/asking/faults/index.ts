export {
  type Asked,
  type Examination,
  examine,
  type TestQuestion,
  questionOf,
} from './examination.ts';
export { explain, type Explained, type Explanation, explanationOf } from './explanation.ts';
export { askFaults, type FaultsReport, type FaultsRequest } from './faults.ts';
export {
  type Case,
  caseOf,
  caseWith,
  mustBeExperience,
  type Proof,
  type Suspicion,
  suspicionOf,
  type Witnessed,
  witnessedBy,
  underSuspicion,
} from './suspicion.ts';
