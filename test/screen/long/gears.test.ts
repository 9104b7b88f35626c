import { readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, it } from 'vitest';
import { ROOT } from '../../sources.ts';
import { withBrowser } from '../browser.ts';
import { everyGear } from '../everygear.ts';

const open = withBrowser();
const TRAINS = readdirSync(path.join(ROOT, 'trains'))
  .filter((file) => file.endsWith('.train.yaml'))
  .map((file) => file.replace('.train.yaml', ''));

describe('the screen says what the engine says', () => {
  it.each(TRAINS)('of %s, in every gear, under power and on coast', (name) =>
    everyGear(open, name),
  );
});
