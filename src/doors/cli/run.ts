import { NoAnswer } from '../../asking/request/index.ts';
import {
  type Language,
  refusedText,
  visible,
  type Voice,
  voiceOf,
} from '../../telling/narrative/index.ts';
import { type Ink, PLAIN } from '../../telling/text/index.ts';
import { COLOURS, languageOf, Misuse, watched, type World } from '../../command/machine/index.ts';
import { type Call, callOf, renamed } from '../../command/typed/index.ts';
import type { Reply, Session } from '../../command/session/index.ts';

/** Answers one call of the command: prints, and returns the exit code (0, 1 or 2). */
export async function run(machine: World): Promise<number> {
  const { world, inputs } = watched(machine);
  let language: Language = 'en';
  // The file that is asked about, once that is known.
  let file = '';
  try {
    language = languageOf(world);
    const call = callOf(typedNow(world, language), voiceOf(language));
    if ('file' in call) file = call.file ?? '';
    const reply = await replyTo(call, world, inputs, language);
    world.out(`${reply.text}\n`);
    return reply.exit;
  } catch (error) {
    const said = refusalText(error, file, voiceOf(language));
    if (said === undefined) throw error;
    world.err(`holdturn: ${visible(said)}\n`);
    return 2;
  }
}

// Of what was asked, or of how it was typed; of anything else nothing.
function refusalText(error: unknown, file: string, voice: Voice): string | undefined {
  if (error instanceof NoAnswer) return refusedText(error.why, file, voice);
  return error instanceof Misuse ? voice.say(error.id, error.values) : undefined;
}

// What was typed, by the names of today.
function typedNow({ args, err }: World, language: Language): string[] {
  return renamed(args, (old, now) => {
    err(`holdturn: ${voiceOf(language).say('problem.renamed', { old, now })}\n`);
  });
}

async function replyTo(
  call: Call,
  world: World,
  inputs: ReadonlySet<string>,
  language: Language,
): Promise<Reply> {
  if (call.verb === 'text') return { text: call.text, exit: 0 };
  if (call.verb === 'completion') return (await import('./completion.ts')).completion(call.shell);
  const ink = inkOf(world);
  const session = (options: Session['options']): Session => {
    const page = { voice: voiceOf(language), columns: 80, ink };
    return { world, inputs, page, options };
  };
  switch (call.verb) {
    case 'screen':
      return (await import('./screen.ts')).screen(call.file, call.port, session({}));
    case 'check':
      return (await import('./check.ts')).check(call.file, session(call.options));
    case 'describe':
      return (await import('./describe.ts')).describe(call.file, session(call.options));
    case 'flow':
      return (await import('./flow.ts')).flow(call.file, session(call.options));
    case 'chart':
      return (await import('./chart.ts')).chart(call.file, session(call.options));
    case 'draw':
      return (await import('./draw.ts')).draw(call.file, session(call.options));
    case 'hand':
      return (await import('./hand.ts')).hand(call.file, session(call.options));
    case 'capacity':
      return (await import('./capacity.ts')).capacity(call.file, session(call.options));
    case 'plan':
      return (await import('./plan.ts')).plan(call.file, session(call.options));
    case 'faults':
      return (await import('./faults.ts')).faults(call.file, session(call.options));
    case 'sheet': {
      const { sheet } = await import('./sheet.ts');
      return sheet(call.kind ?? '', call.file, session(call.options));
    }
    case 'job': {
      const { job } = await import('./job.ts');
      return job(call.kind ?? '', call.file, call.words ?? [], session(call.options));
    }
    case 'pack':
    case 'endplay':
    case 'preload':
    case 'band':
    case 'wear': {
      const { measure } = await import('./measure.ts');
      return measure(call.verb, call.file, call.seen, session(call.options));
    }
    case 'suspects': {
      const { suspects } = await import('./suspects.ts');
      return suspects(call.file, call.seen, session(call.options));
    }
  }
}

// Colour only where somebody looks at it: NO_COLOR and FORCE_COLOR say so before the terminal.
function inkOf({ env, terminal }: World): Ink {
  const force = env['FORCE_COLOR'];
  const coloured = env['NO_COLOR']
    ? false
    : force
      ? force !== '0'
      : terminal && env['TERM'] !== 'dumb';
  return coloured ? COLOURS : PLAIN;
}
