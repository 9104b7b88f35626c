/** A job's own name in this browser. */
export function newId(): string {
  return crypto.getRandomValues(new Uint32Array(3)).join('-');
}
