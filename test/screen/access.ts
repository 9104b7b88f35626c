import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What the accessibility checker finds on the page, a line each: its rule, and where. */
export async function accessFaults(page: Page): Promise<string[]> {
  // Through the debugger, since the page's own policy allows no script but its own.
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: Axe }).axe.run({
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}

interface Axe {
  run(options: {
    resultTypes: string[];
  }): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
}
