import { voiceOf } from '../../telling/narrative/index.ts';
import { ours } from './ours.ts';
import { Refusal } from './refusal.ts';
import { done, type Reply, type Session } from './session.ts';
import { textOf } from './source.ts';

/** Where the screen is found first, so that its kept work is found again. */
const PORT = 8477;

/**
 * Opens the bench in a browser, with a train of ours or with `file`; prints the address, and
 * answers until it is stopped. Nothing outside this machine can ask it.
 */
export async function screen(
  file: string | undefined,
  given: string | undefined,
  { world, language }: Session,
): Promise<Reply> {
  if (!world.serve) throw new Refusal('no.screen');
  const link = file === undefined ? '' : linkOf(textOf(file, world));
  const port = given === undefined ? PORT : Number(given);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Refusal('bad.port', { given: given ?? '' });
  }
  const say = (address: string) => {
    world.out(`${voiceOf(language).say('screen.at', { address: `${address}${link}` })}\n`);
    return `${address}${link}`;
  };
  await world.serve(ours('dist', 'web'), port, say);
  return done(voiceOf(language).say('screen.over'));
}

// The page reads the same: deflate, then base64 as RFC 4648 has it for addresses.
function linkOf(text: string): string {
  const { deflateRawSync } = process.getBuiltinModule('node:zlib');
  return `#train=${deflateRawSync(text).toString('base64url')}`;
}
