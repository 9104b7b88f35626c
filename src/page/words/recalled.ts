/** A word that this browser remembers for the page; '' where it remembers nothing. */
export function recalled(name: string, places: readonly ('tab' | 'browser')[]): string {
  for (const place of places) {
    try {
      const found = shelf(place).getItem(`holdturn ${name}`);
      if (found !== null) return found;
    } catch {
      // Forbidden here.
    }
  }
  return '';
}

/** Remembers it, or forgets it where it is ''; where that is forbidden, for as long as the page is open. */
export function remember(name: string, word: string, places: readonly ('tab' | 'browser')[]): void {
  for (const place of places) {
    try {
      if (word === '') shelf(place).removeItem(`holdturn ${name}`);
      else shelf(place).setItem(`holdturn ${name}`, word);
    } catch {
      // Forbidden, or full.
    }
  }
}

function shelf(place: 'tab' | 'browser'): Storage {
  return place === 'tab' ? sessionStorage : localStorage;
}
