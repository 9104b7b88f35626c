import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { flow } from '../../src/engine/flow/index.ts';
import { toText } from '../../src/engine/linear/index.ts';
import { AT_THE_INPUT } from '../../src/asking/request/index.ts';
import { appliedIn, type Train } from '../../src/engine/train/index.ts';
import { readTrain } from '../../src/engine/trainfile/index.ts';
import { gearName, sentences, voiceOf } from '../../src/telling/narrative/index.ts';
import { accessFaults } from './access.ts';
import type { Opened } from './browser.ts';
import { linkTo, ourText } from './links.ts';

const reasons = (page: Page) => page.locator('.why summary').allTextContents();

/** Of a train of ours, in every gear, under power and on coast, the page says what the engine says. */
export async function everyGear(
  open: (hash: string) => Promise<Opened>,
  name: string,
): Promise<void> {
  const train = readTrain(ourText(name)).train as Train;
  const stand = { ...AT_THE_INPUT, ...(train.ends && { ends: train.ends }) };
  const { page, complaints } = await open(linkTo(ourText(name)));
  await expect.poll(() => page.locator('h1').textContent()).toBe(train.name);
  await page.getByRole('button', { name: 'Pause', exact: true }).click();
  for (const range of train.ranges) {
    for (const gear of range.gears) {
      const answer = flow(train, appliedIn(train, gear));
      const label = gearName({ range: range.name, gear: gear.name }, voiceOf('en'));
      await page
        .locator('.chart tbody')
        .getByRole('button', { name: label, exact: true })
        .first()
        .click();
      await page.getByRole('button', { name: 'under power', exact: true }).first().click();
      expect(await reasons(page)).toEqual(sentences(answer.drive.facts, voiceOf('en'), stand));
      const { ratio, state } = answer.drive;
      const caption = await page.locator('.figure-caption').first().textContent();
      const told = ratio ? voiceOf('en').number(ratio) : voiceOf('en').say('state', { state });
      expect(caption, ratio && toText(ratio)).toContain(told);
      await page.getByRole('button', { name: 'on coast', exact: true }).first().click();
      expect(await reasons(page)).toEqual(sentences(answer.coast.facts, voiceOf('en'), stand));
    }
  }
  expect(await accessFaults(page)).toEqual([]);
  expect(complaints).toEqual([]);
}
