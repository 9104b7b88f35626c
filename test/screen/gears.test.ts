import { it } from 'vitest';
import { withBrowser } from './browser.ts';
import { everyGear } from './everygear.ts';

const open = withBrowser();

// The train that the page opens with; every other is in long/.
it('the screen says what the engine says, in every gear, under power and on coast', () =>
  everyGear(open, 'kestrel-three-speed'));
