import { readdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { flow } from '../../src/engine/flow/index.ts';
import { toText } from '../../src/engine/linear/index.ts';
import { AT_THE_INPUT } from '../../src/asking/request/index.ts';
import { appliedIn, type Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { gearName, sentences, voiceOf } from '../../src/telling/narrative/index.ts';
import { ROOT } from '../sources.ts';
import { accessFaults } from './access.ts';
import { withBrowser } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const open = withBrowser();
const TRAINS = readdirSync(path.join(ROOT, 'trains'))
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => file.replace('.train.yaml', ''));

const reasons = (page: Page) => page.locator('.why summary').allTextContents();

describe('the screen says what the engine says', () => {
  it.each(TRAINS)('of %s, in every gear, under power and on coast', async (name) => {
    const train = readTrain(ourText(name)).train as Train;
    const stand = { ...AT_THE_INPUT, ...(train.ends && { ends: train.ends }) };
    const { page, complaints } = await open(linkTo(ourText(name)));
    await expect.poll(() => page.locator('h1').textContent()).toBe(train.name);
    await page.getByRole('button', { name: 'Pause', exact: true }).click();
    for (const range of train.ranges) {
      for (const gear of range.gears) {
        const answer = flow(train, appliedIn(train, gear));
        const label = gearName({ range: range.name, gear: gear.name });
        await page
          .locator('.chart tbody')
          .getByRole('button', { name: label, exact: true })
          .first()
          .click();
        await page.getByRole('button', { name: 'under power', exact: true }).first().click();
        expect(await reasons(page)).toEqual(sentences(answer.drive.facts, 'en', stand));
        const { ratio, state } = answer.drive;
        const caption = await page.locator('.figure-caption').first().textContent();
        const told = ratio ? voiceOf('en').number(ratio) : voiceOf('en').say('state', { state });
        expect(caption, ratio && toText(ratio)).toContain(told);
        await page.getByRole('button', { name: 'on coast', exact: true }).first().click();
        expect(await reasons(page)).toEqual(sentences(answer.coast.facts, 'en', stand));
      }
    }
    expect(await accessFaults(page)).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
