import { useEffect, useRef } from 'preact/hooks';
import { HTML_STYLE, htmlOf, PAPER_MM, type Printing } from '../../telling/sheets/index.ts';
import { breakIntoPages } from './pages.ts';

interface Props {
  readonly printing: Printing;
  readonly label: string;
  /** How many pages it takes. */
  readonly onPages: (count: number) => void;
}

/** Sheets as they will be printed, a page below the other; what is printed while they are there is they. */
export function PaperView({ printing, label, onPages }: Props) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const host = place.current;
    if (!host) return undefined;
    const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
    const sheets = document.createElement('div');
    sheets.className = 'sheets';
    const { wide, high } = PAPER_MM[printing.paper];
    sheets.style.setProperty('--across', `${wide}mm`);
    // A hair less than the paper, or a printer that rounds adds an empty page behind each.
    sheets.style.setProperty('--down', `${high - 0.2}mm`);
    sheets.innerHTML = htmlOf(printing);
    const looks = document.createElement('style');
    looks.textContent = HTML_STYLE;
    root.replaceChildren(looks, sheets);
    onPages(breakIntoPages(sheets));
    const fit = () => fitInto(host, sheets);
    const watch = new ResizeObserver(fit);
    watch.observe(host);
    fit();
    return () => watch.disconnect();
  }, [printing]);
  useEffect(() => {
    const rules = document.createElement('style');
    rules.textContent = pageRules(printing);
    document.head.append(rules);
    return () => rules.remove();
  }, [printing]);
  return <div ref={place} class="print-paper" role="group" aria-label={label} tabIndex={0} />;
}

// As large as there is room for, and never larger than the paper.
function fitInto(host: HTMLElement, sheets: HTMLElement): void {
  const pages = [...sheets.children] as HTMLElement[];
  for (const page of pages) {
    page.style.setProperty('--fit', '1');
    const { width } = page.getBoundingClientRect();
    page.style.setProperty('--fit', `${Math.min(1, host.clientWidth / width)}`);
  }
}

function pageRules({ paper }: Printing): string {
  const size = paper === 'a4' ? 'A4' : 'letter';
  return `@page { size: ${size}; margin: 0 } @page wide { size: ${size} landscape; margin: 0 }`;
}
