import path from 'node:path';
import { ours, Misuse, type Handed } from '../../command/machine/index.ts';
import { done, type Reply, type Session, textOf } from '../../command/session/index.ts';

/** Where the screen is found first, so that its kept work is found again. */
const PORT = 8477;

/**
 * Opens the bench in a browser, with a train of ours or with `file`; prints the address, and
 * answers until it is stopped. Nothing outside this machine can ask it.
 */
export async function screen(
  file: string | undefined,
  given: string | undefined,
  { world, page }: Session,
): Promise<Reply> {
  if (!world.serve) throw new Misuse('no.screen');
  const handed = file === undefined ? undefined : givenOf(file, textOf(file, world));
  const port = given === undefined ? PORT : Number(given);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Misuse('bad.port', { given: given ?? '' });
  }
  const say = (address: string) => {
    const link = handed ? `${address}#${handed.path}` : address;
    world.out(`${page.voice.say('screen.at', { address: link })}\n`);
    return link;
  };
  await world.serve(ours('dist', 'web'), port, say, handed);
  return done(page.voice.say('screen.over'));
}

// The browser is told a short address, and fetches the file from there: what stands on a command
// line is seen by every process, and may not be long.
function givenOf(file: string, text: string): Handed {
  const { randomBytes } = process.getBuiltinModule('node:crypto');
  const name = file === '-' ? 'given.train.yaml' : path.basename(file);
  return {
    path: `given/${randomBytes(16).toString('base64url')}/${encodeURIComponent(name)}`,
    text,
  };
}
