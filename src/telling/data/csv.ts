/** Comma-separated values (RFC 4180), a decimal point in every language. */
export function csvOf(rows: readonly (readonly (string | number)[])[]): string {
  return rows.map((values) => values.map(cellText).join(',')).join('\r\n');
}

// A spreadsheet takes a text that begins with one of these signs for a formula.
function cellText(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
