import { momentText } from '../../shop/records/index.ts';

/** Now, as clocks show it here, in the form of a job's entries. */
export function now(): string {
  const moment = new Date();
  return momentText(moment.getTime(), -moment.getTimezoneOffset());
}
