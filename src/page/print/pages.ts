/**
 * Breaks sheets into pages of their paper, as `htmlOf` wrote them: no text is cut, a heading stays with
 * what follows it, a row is whole, and a table that goes on has its head again. Gives how many there are.
 */
export function breakIntoPages(sheets: Element): number {
  const long = [...sheets.children];
  for (const sheet of long) new Broken(sheet).break();
  const pages = [...sheets.children];
  for (const [i, page] of pages.entries()) {
    for (const its of page.querySelectorAll('.sheet-page')) its.textContent = `${i + 1}`;
    for (const its of page.querySelectorAll('.sheet-pages')) its.textContent = `${pages.length}`;
    page.ariaLabel = `${page.ariaLabel ?? ''}, ${i + 1}/${pages.length}`;
  }
  return pages.length;
}

/** A sheet on its way from one long page to as many as it takes. */
class Broken {
  private readonly sheet: Element;
  private page: Element;
  private body: Element;

  constructor(sheet: Element) {
    this.sheet = sheet;
    this.page = sheet;
    this.body = bodyOf(sheet);
  }

  break(): void {
    const blocks = [...this.body.children];
    this.body.replaceChildren();
    for (const block of blocks) this.put(block);
  }

  private put(block: Element): void {
    this.body.append(block);
    if (this.fits()) return;
    block.remove();
    if (block instanceof HTMLTableElement) {
      this.putTable(block);
      return;
    }
    // What is longer than a page must break after all.
    if (block.matches('.together') && !this.isNew() && this.fitsNew(block)) this.turn();
    else if (block.matches('.together')) {
      const inside = [...block.children];
      for (const inner of inside) this.put(inner);
      return;
    } else if (!this.isNew()) this.turn();
    this.body.append(block);
  }

  private putTable(table: HTMLTableElement): void {
    const rows = [...table.rows].filter((row) => row.parentElement?.tagName === 'TBODY');
    let part = partOf(table);
    let on = 0;
    this.body.append(part);
    while (rows.length > 0) {
      const [row] = rows as [HTMLTableRowElement];
      part.tBodies[0]?.append(row);
      if (this.fits()) {
        rows.shift();
        on += 1;
        continue;
      }
      row.remove();
      if (on === 0 && this.isAlone(part)) {
        // Longer than a page by itself: its words go on in a row below.
        const rest = this.halved(row, part);
        rows.splice(0, 1, ...rest);
        on += 1;
        continue;
      }
      // A single row is left neither before the break nor behind it.
      const few = on === 1 || (on > 2 && rows.length === 1);
      if (few) rows.unshift(...[...(part.tBodies[0]?.rows ?? [])].slice(-1));
      if (on <= 1) part.remove();
      this.turn();
      const again = on > 1;
      part = partOf(table);
      if (again) part.tHead?.setAttribute('data-again', '');
      this.body.append(part);
      on = 0;
    }
  }

  // The first of what a row says that a page has room for, and a row with what is left.
  private halved(row: HTMLTableRowElement, part: HTMLTableElement): HTMLTableRowElement[] {
    part.tBodies[0]?.append(row);
    const rest = row.cloneNode(true) as HTMLTableRowElement;
    for (const [k, cell] of [...row.cells].entries()) {
      const all = cell.textContent ?? '';
      const words = all.split(/(?<=\s)/u);
      if (words.length === 1) {
        rest.cells[k]?.replaceChildren();
        continue;
      }
      let [least, most] = [1, words.length];
      while (least < most) {
        const half = Math.ceil((least + most) / 2);
        cell.textContent = words.slice(0, half).join('');
        if (this.fits()) least = half;
        else most = half - 1;
      }
      cell.textContent = words.slice(0, least).join('');
      const its = rest.cells[k];
      if (its) its.textContent = words.slice(least).join('');
    }
    return rest.textContent === '' || rest.textContent === row.textContent ? [] : [rest];
  }

  // A new page, with the heading that would be the last thing on this one, and the words below it.
  private turn(): void {
    const last = [...this.body.children].slice(-2);
    const at = last.findLastIndex((one) => one.tagName === 'H3');
    const carried = at < 0 || this.body.children.length === last.length ? [] : last.slice(at);
    const fresh = at === 0 && last[1]?.tagName !== 'P' ? [] : carried;
    const page = this.empty();
    this.page.after(page);
    this.page = page;
    this.body = bodyOf(page);
    this.body.append(...fresh);
  }

  private empty(): Element {
    const page = this.sheet.cloneNode(false) as Element;
    for (const part of this.sheet.children) {
      page.append(part.cloneNode(!part.matches('.sheet-body')));
    }
    return page;
  }

  private isNew(): boolean {
    return [...this.body.children].every((one) => /^H[23]$/u.test(one.tagName));
  }

  private isAlone(part: Element): boolean {
    return [...this.body.children].every((one) => one === part || /^H[23]$/u.test(one.tagName));
  }

  private fitsNew(block: Element): boolean {
    const page = this.empty();
    this.page.after(page);
    bodyOf(page).append(block);
    const fits = within(bodyOf(page));
    block.remove();
    page.remove();
    return fits;
  }

  private fits(): boolean {
    return within(this.body);
  }
}

function within(body: Element): boolean {
  const last = body.lastElementChild;
  // Half a pixel is rounding.
  return !last || last.getBoundingClientRect().bottom <= body.getBoundingClientRect().bottom + 0.5;
}

function bodyOf(sheet: Element): Element {
  const body = sheet.querySelector('.sheet-body');
  if (!body) throw new TypeError('a sheet without a body');
  return body;
}

// A table with the same head and no rows.
function partOf(table: HTMLTableElement): HTMLTableElement {
  const part = table.cloneNode(false) as HTMLTableElement;
  for (const its of table.querySelectorAll(':scope > :is(colgroup, thead)')) {
    part.append(its.cloneNode(true));
  }
  part.append(table.ownerDocument.createElement('tbody'));
  return part;
}
