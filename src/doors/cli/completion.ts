import { done, type Reply } from '../../command/session/index.ts';
import {
  CHOICES,
  JOB_ACTIONS,
  type OptionName,
  OPTIONS,
  SHEETS,
  SHELLS,
  VERBS,
} from '../../command/typed/index.ts';

/** The script that teaches a shell the verbs, their options, and where train files stand. */
export function completion(shell: (typeof SHELLS)[number]): Reply {
  return done({ bash, zsh, fish }[shell]());
}

const WORDS = [...Object.keys(VERBS), 'screen', 'help', 'completion'];
const OF_VERB = Object.entries(VERBS) as [string, readonly OptionName[]][];
const CHOSEN = Object.entries(CHOICES) as [OptionName, readonly string[]][];

// To try it: source <(holdturn completion bash)
function bash(): string {
  const cases = OF_VERB.map(([verb, options]) => {
    return `    ${verb}) words="${options.map((option) => `--${option}`).join(' ')} --help" ;;`;
  });
  const values = CHOSEN.map(([option, words]) => {
    return `    --${option}) COMPREPLY=($(compgen -W "${words.join(' ')}" -- "$word")); return ;;`;
  });
  return `# Completion of holdturn for bash.
_holdturn() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} words=""
  COMPREPLY=()
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W "${WORDS.join(' ')}" -- "$word"))
    return
  fi
  case $before in
    job) COMPREPLY=($(compgen -W "${JOB_ACTIONS.join(' ')}" -- "$word")); return ;;
    sheet) COMPREPLY=($(compgen -W "${SHEETS.join(' ')}" -- "$word")); return ;;
${values.join('\n')}
  esac
  case \${COMP_WORDS[1]} in
${cases.join('\n')}
    help) words="${WORDS.join(' ')}" ;;
    completion) words="${SHELLS.join(' ')}" ;;
  esac
  case $word in
    -*) COMPREPLY=($(compgen -W "$words" -- "$word")) ;;
    *)
      case \${COMP_WORDS[1]} in
        help|completion) COMPREPLY=($(compgen -W "$words" -- "$word")) ;;
        *) compopt -o filenames; COMPREPLY=($(compgen -f -X '!*.yaml' -- "$word") $(compgen -d -- "$word")) ;;
      esac ;;
  esac
}
complete -F _holdturn holdturn`;
}

// To keep it: a file _holdturn in a folder of $fpath.
function zsh(): string {
  const cases = OF_VERB.map(([verb, options]) => {
    const specs = options.map((option) => {
      const repeated = option === 'fault' || option === 'load' ? "'*'" : '';
      const words = CHOICES[option];
      const value =
        OPTIONS[option] === '' ? '' : `:${OPTIONS[option]}:${words ? `(${words.join(' ')})` : ''}`;
      return `${repeated}'--${option}${value}'`;
    });
    const kinds = verb === 'job' ? JOB_ACTIONS : SHEETS;
    const has = verb === 'sheet' || verb === 'job';
    const kind = has ? `'1:KIND:(${kinds.join(' ')})' ` : '';
    const file = `'${kind === '' ? 1 : 2}:FILE:_files -g "*.yaml"'`;
    return `    ${verb}) _arguments ${specs.join(' ')} ${kind}${file} ;;`;
  });
  return `#compdef holdturn
# Completion of holdturn for zsh.
_holdturn() {
  if (( CURRENT == 2 )); then
    compadd ${WORDS.join(' ')}
    return
  fi
  shift words
  (( CURRENT-- ))
  case $words[1] in
${cases.join('\n')}
    help) compadd ${WORDS.join(' ')} ;;
    completion) compadd ${SHELLS.join(' ')} ;;
  esac
}
compdef _holdturn holdturn`;
}

// To try it: holdturn completion fish | source
function fish(): string {
  const none = '__fish_use_subcommand';
  const lines = OF_VERB.flatMap(([verb, options]) =>
    options.map((option) => {
      const value = OPTIONS[option] === '' ? '' : ' -x';
      const words = CHOICES[option] ? ` -a '${CHOICES[option].join(' ')}'` : '';
      return `complete -c holdturn -n '__fish_seen_subcommand_from ${verb}' -l ${option}${value}${words}`;
    }),
  );
  return [
    '# Completion of holdturn for fish.',
    `complete -c holdturn -n ${none} -f -a '${WORDS.join(' ')}'`,
    ...lines,
    `complete -c holdturn -n '__fish_seen_subcommand_from job' -a '${JOB_ACTIONS.join(' ')}'`,
    `complete -c holdturn -n '__fish_seen_subcommand_from sheet' -a '${SHEETS.join(' ')}'`,
    `complete -c holdturn -n '__fish_seen_subcommand_from help' -f -a '${WORDS.join(' ')}'`,
    `complete -c holdturn -n '__fish_seen_subcommand_from completion' -f -a '${SHELLS.join(' ')}'`,
  ].join('\n');
}
