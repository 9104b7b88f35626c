import type {
  Browser,
  BrowserContext,
  BrowserContextOptions,
  CDPSession,
  Page,
} from 'playwright-core';

/** Who comes, and how the browser is. */
export interface Visit extends BrowserContextOptions {
  /** Nobody has been here before. */
  readonly isFirst?: boolean;
  /** The browser has never met the page: it knows how often a site was used, and trusts it more. */
  readonly isNew?: boolean;
}

/**
 * Who comes to the page, each with nothing kept. A visitor of a common kind is kept over the tests and
 * forgets all between them, since to meet a new one takes longer than most tests: the browser starts a
 * process and compiles the page anew.
 */
export class Visitors {
  private readonly browser: Browser;
  private readonly address: string;
  private readonly idle = new Map<string, Kept[]>();
  private readonly here: Kept[] = [];

  constructor(browser: Browser, address: string) {
    this.browser = browser;
    this.address = address;
  }

  /** A page of somebody who was never here, or has begun once (unless `isFirst`) and no more. */
  async come({ viewport = DESK, isNew = false, ...visit }: Visit): Promise<Page> {
    const kind = JSON.stringify(visit);
    if (isNew || !Object.keys(visit).every((option) => COMMON.has(option))) {
      return (await this.meet({ viewport, ...visit })).newPage();
    }
    const kept = this.idle.get(kind)?.pop() ?? (await this.keep(kind, visit));
    this.here.push(kept);
    const page = await kept.context.newPage();
    await page.setViewportSize(viewport ?? DESK);
    return page;
  }

  /** Every page is closed; who is kept forgets what they did, the others are gone. */
  async leave(): Promise<void> {
    const here = this.here.splice(0);
    const keeps = new Set([...this.idle.values(), here].flat().map(({ context }) => context));
    const others = this.browser.contexts().filter((context) => !keeps.has(context));
    await Promise.all([
      ...others.map((context) => context.close()),
      ...here.map((kept) => this.forget(kept)),
    ]);
  }

  private async meet({ isFirst = false, ...options }: Visit): Promise<BrowserContext> {
    const context = await this.browser.newContext({ serviceWorkers: 'block', ...options });
    // As one comes back to it; for the first visit there is a test of its own.
    if (!isFirst) await context.addInitScript("localStorage.setItem('holdturn begun', 'yes')");
    context.setDefaultTimeout(30_000);
    return context;
  }

  // A picture of the page's own that stays open, so that the browser ends no process with the last page.
  private async keep(kind: string, visit: Visit): Promise<Kept> {
    const context = await this.meet(visit);
    const anchor = await context.newPage();
    await anchor.goto(`${this.address}icon.svg`);
    return { kind, context, anchor, session: await context.newCDPSession(anchor) };
  }

  private async forget(kept: Kept): Promise<void> {
    const { kind, context, anchor, session } = kept;
    await Promise.all(context.pages().map((page) => page !== anchor && page.close()));
    const { origin } = new URL(this.address);
    await session.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
    const idle = this.idle.get(kind) ?? [];
    this.idle.set(kind, [...idle, kept]);
  }
}

interface Kept {
  readonly kind: string;
  readonly context: BrowserContext;
  readonly anchor: Page;
  readonly session: CDPSession;
}

const DESK = { width: 1400, height: 900 };
const COMMON: ReadonlySet<string> = new Set(['isFirst', 'hasTouch', 'isMobile']);
