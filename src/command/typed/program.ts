import { Command, CommanderError, Help, Option } from 'commander';
import { MEASURED, type MeasuredKind } from '../../engine/train/index.ts';
import { type Voice, visible } from '../../telling/narrative/index.ts';
import { EXAMPLES, type Group, GROUPS } from './groups.ts';
import { suggestion, type Options } from '../session/index.ts';
import { Misuse } from '../machine/index.ts';
import { type OptionName, OPTIONS, SHELLS, type Verb, VERBS } from './verbs.ts';
import packageJson from '../../../package.json' with { type: 'json' };

/** What a call asks for. */
export type Call =
  | {
      readonly verb: Verb;
      readonly file: string;
      /** A second file, which `suspects` may have and `pack` and `endplay` must. */
      readonly seen?: string;
      /** What `sheet` is to print, or what is to be done with a `job`. */
      readonly kind?: string;
      /** What stands after the file of a job. */
      readonly words?: readonly string[];
      readonly options: Options;
    }
  | { readonly verb: 'completion'; readonly shell: (typeof SHELLS)[number] }
  | { readonly verb: 'text'; readonly text: string }
  | { readonly verb: 'screen'; readonly file?: string; readonly port?: string };

/** Reads the arguments; refuses what is wrong with them, saying what to type instead. */
export function callOf(args: readonly string[], voice: Voice): Call {
  let call: Call = { verb: 'screen' };
  let printed = '';
  const program = programOf(args, voice, {
    take: (found) => (call = found),
    print: (text) => (printed += text),
  });
  try {
    program.parse([...args], { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    if (error.exitCode === 0) return { verb: 'text', text: printed.trimEnd() };
    // No verb at all.
    if (error.code === 'commander.help') return call;
    throw refusalOf(error, program, args);
  }
  return call;
}

interface Ears {
  readonly take: (call: Call) => void;
  readonly print: (text: string) => void;
}

// The options of a verb are made only where it is asked for: there are hundreds.
function programOf(args: readonly string[], voice: Voice, ears: Ears): Command {
  const program = dressed(new Command('holdturn'), voice, ears)
    .usage(voice.say('cli.usage.program'))
    .description(voice.say('cli.about'))
    .helpCommand(false)
    .version(packageJson.version, '--version', voice.say('option.version'))
    .addOption(optionOf('lang', voice));
  for (const group of Object.keys(GROUPS) as Group[]) {
    for (const verb of GROUPS[group]) {
      const command = dressed(program.command(verb), voice, ears)
        .description(voice.say(`verb.${verb}`))
        .helpGroup(voice.say(`cli.group.${group}`));
      if (verb === 'screen') screenOf(command, voice, ears);
      else {
        askingOf(command, verb, voice, ears);
        const options = args.includes(verb) ? VERBS[verb] : [];
        for (const option of options) command.addOption(optionOf(option, voice));
      }
    }
  }
  dressed(program.command('help'), voice, ears)
    .usage('[VERB]')
    .description(voice.say('verb.help'))
    .argument('[VERB]')
    .addOption(optionOf('lang', voice))
    .action((verb?: string) => ears.take({ verb: 'text', text: helpOf(program, verb) }));
  dressed(program.command('completion'), voice, ears)
    .usage(SHELLS.join('|'))
    .description(voice.say('verb.completion'))
    .argument('<SHELL>')
    .addOption(optionOf('lang', voice))
    .action((shell: string) => ears.take({ verb: 'completion', shell: shellOf(shell) }));
  return program;
}

// A verb that asks about a train file, or does something to a job.
function askingOf(command: Command, verb: Verb, voice: Voice, { take }: Ears): void {
  command.action(() => {
    const before = verb === 'sheet' || verb === 'job';
    const [kind = '', ...files] = before ? command.args : ['', ...command.args];
    const [file = '', ...rest] = files;
    if (verb === 'job') {
      take({ verb, kind, file, words: rest, options: command.opts() });
      return;
    }
    const [seen] = rest;
    const second = seen !== undefined && { seen };
    take({ verb, file, ...second, ...(kind && { kind }), options: command.opts() });
  });
  if (verb === 'sheet') command.argument('<KIND>', voice.say('cli.kind'));
  if (verb === 'job') {
    command.usage(voice.say('cli.usage.job')).argument('<ACTION>', voice.say('cli.action'));
  }
  command.argument('<FILE>', voice.say(verb === 'job' ? 'cli.job' : 'cli.file'));
  if (verb === 'job') command.argument('[WORDS...]', voice.say('cli.words'));
  if (verb === 'suspects') command.argument('[SEEN]', voice.say('cli.seen'));
  if (verb in MEASURED) {
    command.argument('[READINGS]', voice.say(`cli.readings.${verb as MeasuredKind}`));
  }
}

function screenOf(command: Command, voice: Voice, { take }: Ears): void {
  command
    .argument('[FILE]', voice.say('cli.file'))
    .option('--port <PORT>', voice.say('option.port'))
    .addOption(optionOf('lang', voice))
    .action((file: string | undefined, { port }: { port?: string }) => {
      take({ verb: 'screen', ...(file !== undefined && { file }), ...(port && { port }) });
    });
}

// One language, one line an error, nothing printed but by us; an example behind what it is of.
function dressed(command: Command, voice: Voice, { print }: Ears): Command {
  const titles: Record<string, string> = {
    'Usage:': voice.say('cli.usage'),
    'Arguments:': voice.say('cli.arguments'),
    'Options:': voice.say('cli.options'),
    'Commands:': voice.say('cli.commands'),
  };
  const groups = Object.keys(GROUPS) as Group[];
  return command
    .exitOverride()
    .showSuggestionAfterError(false)
    .configureOutput({ writeOut: print, writeErr: () => {}, getOutHelpWidth: () => 80 })
    .usage(voice.say('cli.usage.verb'))
    .configureHelp({
      helpWidth: 80,
      styleTitle: (title) => titles[title] ?? title,
      formatItemList: (heading, items, helper) => {
        const group = groups.find((name) => voice.say(`cli.group.${name}`) === heading);
        const example = group ? [`  $ holdturn ${EXAMPLES[GROUPS[group][0]]}`] : [];
        return [...Help.prototype.formatItemList(heading, [...items, ...example], helper)];
      },
      formatHelp: (its, helper) => {
        const text = Help.prototype.formatHelp.call(helper, its, helper);
        const name = its.name();
        if (!Object.hasOwn(EXAMPLES, name)) return text;
        const example = EXAMPLES[name as keyof typeof EXAMPLES];
        return `${text}${voice.say('cli.example')}\n  $ holdturn ${example}\n`;
      },
      subcommandTerm: (verb) => {
        return [verb.name(), ...verb.registeredArguments.map((word) => word.name())].join(' ');
      },
    })
    .helpOption('-h, --help', voice.say('option.help'));
}

function optionOf(name: OptionName, voice: Voice): Option {
  const value = OPTIONS[name];
  const shown = value === '' || value.startsWith('[') ? value : `<${value}>`;
  const short = name === 'output' ? '-o, ' : '';
  const flags = `${short}--${name} ${shown}`.trimEnd();
  const option = new Option(flags, voice.say(`option.${name}`));
  const gather = (text: string, before: readonly string[] = []) => [...before, text];
  return name === 'fault' || name === 'load' ? option.argParser(gather) : option;
}

function helpOf(program: Command, verb: string | undefined): string {
  if (verb === undefined) return program.helpInformation().trimEnd();
  const command = program.commands.find((other) => other.name() === verb);
  if (!command) throw new Misuse('no.verb', suggestion(verb, verbsOf(program)));
  return command.helpInformation().trimEnd();
}

function shellOf(given: string): (typeof SHELLS)[number] {
  const shell = SHELLS.find((known) => known === given.toLowerCase());
  if (!shell) throw new Misuse('no.shell', { given: visible(given) });
  return shell;
}

function verbsOf(program: Command): string[] {
  return program.commands.map((command) => command.name());
}

// The library tells which mistake it is by a code, and the word by quotes in its message.
function refusalOf(error: CommanderError, program: Command, args: readonly string[]): unknown {
  const quoted = /'(.*)'/su.exec(error.message)?.[1] ?? '';
  const verb = args.find((arg) => verbsOf(program).includes(arg)) ?? '';
  switch (error.code) {
    case 'commander.unknownCommand':
      if (/\.ya?ml$|\.json$|^-$|\//u.test(args[0] ?? '')) {
        return new Misuse('no.verb.file', { given: visible(args[0] ?? '') });
      }
      return new Misuse('no.verb', suggestion(quoted || (args[0] ?? ''), verbsOf(program)));
    case 'commander.unknownOption': {
      const known = program.commands.find((command) => command.name() === verb) ?? program;
      const options = [...known.options.map((option) => option.long ?? ''), '--help'];
      return new Misuse('no.option', { ...suggestion(quoted, options), verb });
    }
    case 'commander.missingArgument':
      if (verb === 'sheet') return new Misuse('bad.missing kind');
      if (verb === 'job') return new Misuse('bad.missing action');
      if (quoted === 'READINGS') return new Misuse('bad.missing readings', { verb });
      return verb === 'completion'
        ? new Misuse('bad.missing shell')
        : new Misuse('bad.missing file', { verb });
    case 'commander.optionMissingArgument':
      return new Misuse('bad.missing value', { option: quoted });
    case 'commander.excessArguments':
      return new Misuse('bad.excess', { given: visible(spare(args, verb)) });
    default:
      return error;
  }
}

// The words after the verb that are neither options nor their values, but for the first.
function spare(args: readonly string[], verb: string): string {
  const takes = (arg: string | undefined) => {
    const name = arg?.startsWith('--') ? (arg.slice(2) as OptionName) : undefined;
    return name !== undefined && Object.hasOwn(OPTIONS, name) && OPTIONS[name] !== '';
  };
  const words = args.filter(
    (arg, i) => (arg === '-' || !arg.startsWith('-')) && !takes(args[i - 1]),
  );
  return words.slice(words.indexOf(verb) + 2).join(' ');
}
