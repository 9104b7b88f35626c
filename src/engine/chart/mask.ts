// A combination of devices as a number: bit k is set if device k is on.

export function namesOf(mask: number, devices: readonly string[]): string[] {
  return devices.filter((_, k) => (mask >> k) & 1);
}

export function maskOf(on: readonly string[], devices: readonly string[]): number {
  return devices.reduce((mask, name, k) => (on.includes(name) ? mask | (1 << k) : mask), 0);
}
