import type { Locator, Page } from 'playwright-core';

type Role = Parameters<Page['getByRole']>[0];

/** What was pressed, and how large it was on the screen. */
export interface Pressed {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** Whoever works with the page, and knows of it only what a screen reader tells: roles and names. */
export abstract class Person {
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  abstract press(name: string | RegExp, role?: Role): Promise<void>;
  abstract type(label: string | RegExp, text: string): Promise<void>;

  /** Whether something of this name is there to be pressed. */
  async sees(name: string | RegExp, role: Role = 'button'): Promise<boolean> {
    return this.found(name, role).first().isVisible();
  }

  /** Waits until a heading of this name is there. */
  async reads(name: string | RegExp): Promise<void> {
    await this.found(name, 'heading').first().waitFor();
  }

  found(name: string | RegExp, role: Role = 'button'): Locator {
    return this.page.getByRole(role, { name, exact: typeof name === 'string' });
  }

  // What is there and can be used.
  protected async usable(name: string | RegExp, role: Role): Promise<Locator> {
    const its = this.found(name, role).and(this.page.locator(':enabled')).first();
    try {
      await its.waitFor({ state: 'attached' });
    } catch {
      const there = await this.page.getByRole('main').ariaSnapshot();
      throw new Error(`no ${role} ${String(name)} in\n${there}`);
    }
    return its;
  }
}

/** By a finger, in a glove. */
export class Fingers extends Person {
  readonly pressed: Pressed[] = [];

  async press(name: string | RegExp, role: Role = 'button'): Promise<void> {
    const its = await this.usable(name, role);
    await its.scrollIntoViewIfNeeded();
    const { width = 0, height = 0 } = (await its.boundingBox()) ?? {};
    this.pressed.push({ name: String(name), width, height });
    await its.tap();
  }

  async type(label: string | RegExp, text: string): Promise<void> {
    await (await this.usable(label, 'textbox')).fill(text);
  }
}

/** By keys alone: a tab after the other, from wherever the last press has left them. */
export class Keys extends Person {
  async press(name: string | RegExp, role: Role = 'button'): Promise<void> {
    await this.goTo(name, role);
    await this.page.keyboard.press('Enter');
  }

  async type(label: string | RegExp, text: string): Promise<void> {
    await this.goTo(label, 'textbox');
    await this.page.keyboard.press('Control+A');
    await this.page.keyboard.type(text);
  }

  private async goTo(name: string | RegExp, role: Role): Promise<void> {
    const its = await this.usable(name, role);
    const isThere = () => its.evaluate((one) => one === document.activeElement);
    for (let tabs = 0; tabs < MOST_TABS; tabs++) {
      // oxlint-disable-next-line no-await-in-loop
      if (await isThere()) return;
      // oxlint-disable-next-line no-await-in-loop
      await this.page.keyboard.press('Tab');
    }
    // A row of its own is one stop, and the arrows go along it.
    throw new Error(`no tab leads to ${role} ${String(name)}`);
  }
}

const MOST_TABS = 200;
