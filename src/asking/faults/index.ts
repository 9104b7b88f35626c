export { askFaults, type FaultsReport } from './faults.ts';
export {
  type Case,
  caseOf,
  type Suspicion,
  suspicionOf,
  type Witnessed,
  witnessedBy,
} from './suspicion.ts';
