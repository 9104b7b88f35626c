export { askFaults, type FaultsReport } from './faults.ts';
export { type Case, caseOf, type Suspicion, suspicionOf, type Told, toldBy } from './suspicion.ts';
