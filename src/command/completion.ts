import { Argument, type Command, type Option } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { nearest } from '../language/suggest.js';
import { type CommandContext, choicesOf, examples, wordsOfArgument } from './command-options.js';
import type { HelpTexts } from './help-language.js';

const SHELLS = { bash, zsh, fish } as const;
type Shell = keyof typeof SHELLS;

export function define(command: Command, context: CommandContext): Command {
  const shell = new Argument('<shell>', 'bash, zsh or fish').choices(Object.keys(SHELLS));
  return command
    .addArgument(shell.argParser(shellOf))
    .addHelpText(
      'after',
      `\nPrints a script for the shell to read. Words, options and what they take are completed, and .cut files and folders.\n${examples(
        ['source <(cutwright completion bash)', 'in ~/.bashrc'],
        ['source <(cutwright completion zsh)', 'in ~/.zshrc, after compinit'],
        ['cutwright completion fish | source', 'in ~/.config/fish/config.fish'],
      )}`,
    )
    .action(async (word: Shell) => {
      context.host.out(SHELLS[word](factsOf(await context.commands(), context.help)));
    });
}

function shellOf(word: string): Shell {
  if (Object.hasOwn(SHELLS, word)) return word as Shell;
  const shells = Object.keys(SHELLS);
  const offer = nearest(word, shells);
  throw new UsageError('option-value', word, { variant: 'shell', shells, guess: offer ?? null }, offer);
}

// ---- what the commands take, as plain data: for completion by the shell and for the manual page

export interface OptionFacts {
  /** `--paper`. */
  readonly long: string;
  /** `-p`, or null. */
  readonly short: string | null;
  readonly description: string;
  /** What its value is called (`size`), or null: it takes none. */
  readonly value: string | null;
  /** The words that it takes, or null: any. */
  readonly words: readonly string[] | null;
}

export interface CommandFacts {
  /** `build`, without the program's name. */
  readonly name: string;
  readonly description: string;
  readonly options: readonly OptionFacts[];
  /** What stands behind it, such as `[files...]`. */
  readonly args: readonly ArgumentFacts[];
}

export interface ArgumentFacts {
  readonly name: string;
  readonly description: string;
  readonly required: boolean;
  readonly variadic: boolean;
  /** The words that may stand there, or are suggested; null: a file. */
  readonly words: readonly string[] | null;
}

/** The facts of each command, in the order given. */
export function factsOf(commands: readonly Command[], texts: HelpTexts | null = null): CommandFacts[] {
  const help = { ...HELP, description: texts?.lines[HELP.description] ?? HELP.description };
  return commands.map((command) => ({
    name: command.name().replace(/^cutwright /, ''),
    description: command.description(),
    options: [...command.options.filter(({ hidden }) => !hidden).map(optionFacts), help],
    args: command.registeredArguments.map((argument) => ({
      name: argument.name(),
      description: argument.description,
      required: argument.required,
      variadic: argument.variadic,
      words: wordsOfArgument(argument),
    })),
  }));
}

const HELP: OptionFacts = {
  long: '--help',
  short: '-h',
  description: 'how it is used, with examples',
  value: null,
  words: null,
};

function optionFacts(option: Option): OptionFacts {
  return {
    long: option.long ?? option.short!,
    short: option.short ?? null,
    description: option.description,
    value: /[<[]([^>\]]+)[>\]]/.exec(option.flags)?.[1] ?? null,
    words: choicesOf(option) ?? null,
  };
}

// ---- completion scripts, written out of what the commands take. Each is a pure function of the facts

const NOTE = 'Completion for cutwright; written by "cutwright completion".';

/** Files that commands read: their endings. */
const ENDINGS = ['cut', 'yaml', 'yml', 'csv'];

/** Flags of an option as they may be typed. */
const flags = ({ long, short }: OptionFacts): string[] => [...(short ? [short] : []), long];

const valued = ({ options }: CommandFacts): OptionFacts[] => options.filter(({ value }) => value !== null);

// ---- bash

/** For bash 4 and later, without its completion package. */
function bash(commands: readonly CommandFacts[]): string {
  const names = commands.map(({ name }) => name);
  return `# ${NOTE}
_cutwright() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} options='' words=''
  COMPREPLY=()
  if ((COMP_CWORD == 1)); then
    mapfile -t COMPREPLY < <(compgen -W '${[...names, 'help', '--help', '--version'].join(' ')}' -- "$word")
    return
  fi
  case \${COMP_WORDS[1]} in
${commands.map(bashCommand).join('\n')}
  help) words='${names.join(' ')}' ;;
  esac
  if [[ $word == -* ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$options" -- "$word")
  elif [[ -n $words ]]; then
    mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word")
  else
    compopt -o filenames 2> /dev/null
    mapfile -t COMPREPLY < <(
      compgen -d -- "$word"
      compgen -f -- "$word" | grep -E '\\.(${ENDINGS.join('|')})$'
    )
  fi
}
complete -F _cutwright cutwright
`;
}

function bashCommand(command: CommandFacts): string {
  const words = command.args[0]?.words;
  const cases = valued(command).map((option) => {
    const act = option.words
      ? `words='${option.words.join(' ')}'`
      : 'compopt -o default 2> /dev/null; return';
    return `    ${flags(option).join(' | ')}) ${act} ;;`;
  });
  return [
    `  ${command.name})`,
    `    options='${command.options.flatMap(flags).join(' ')}'`,
    ...(words ? [`    words='${words.join(' ')}'`] : []),
    ...(cases.length > 0
      ? ['    case $before in', ...cases.map((one) => `  ${one.slice(2)}`), '    esac']
      : []),
    '    ;;',
  ].join('\n');
}

// ---- zsh

const zshText = (text: string): string => text.replace(/'/g, "'\\''");
const zshWord = (text: string): string => zshText(text.replace(/[\][:\\]/g, (one) => `\\${one}`));

/** To be sourced after compinit, or saved as \`_cutwright\` on the fpath. */
function zsh(commands: readonly CommandFacts[]): string {
  const rows = commands.map(({ name, description }) => `    '${name}:${zshText(description)}'`);
  return `#compdef cutwright
# ${NOTE}
_cutwright() {
  local -a commands=(
${rows.join('\n')}
  )
  if ((CURRENT == 2)); then
    _describe -t commands command commands
    return
  fi
  local command=$words[2]
  shift words
  ((CURRENT--))
  case $command in
${commands.map(zshCommand).join('\n')}
  help) _describe -t commands command commands ;;
  esac
}
# CommandContext as a function of the fpath, or sourced.
if [[ \${funcstack[1]} == _cutwright ]]; then
  _cutwright "$@"
else
  compdef _cutwright cutwright
fi
`;
}

function zshCommand(command: CommandFacts): string {
  const specs = command.options.map((option) => {
    const both = flags(option);
    const said = `[${zshWord(option.description)}]`;
    const value = option.value
      ? `:${zshWord(option.value)}:${option.words ? `(${option.words.join(' ')})` : '_files'}`
      : '';
    return both.length > 1
      ? `'(${both.join(' ')})'{${both.join(',')}}'${said}${value}'`
      : `'${both[0]}${said}${value}'`;
  });
  const [argument] = command.args;
  const what = argument?.words ? `(${argument.words.join(' ')})` : `_files -g "*.(${ENDINGS.join('|')})(-.)"`;
  const rest = argument ? [`'${argument.variadic ? '*' : '1'}:${zshWord(argument.name)}:${what}'`] : [];
  return `  ${command.name})\n    _arguments \\\n${[...specs, ...rest].map((one) => `      ${one}`).join(' \\\n')}\n    ;;`;
}

// ---- fish

const fishText = (text: string): string => text.replace(/\\/g, '\\\\').replace(/'/g, "\\'");

function fish(commands: readonly CommandFacts[]): string {
  const names = commands.map(({ name }) => name);
  const lines = commands.flatMap((command) => {
    const on = `complete -c cutwright -n '__fish_seen_subcommand_from ${command.name}'`;
    const words = command.args[0]?.words;
    return [
      `complete -c cutwright -n __fish_use_subcommand -f -a ${command.name} -d '${fishText(command.description)}'`,
      ...(words ? [`${on} -f -a '${words.join(' ')}'`] : []),
      ...command.options.map((option) => {
        const short = option.short ? ` -s ${option.short.slice(1)}` : '';
        const takes = option.words ? ` -x -a '${option.words.join(' ')}'` : option.value ? ' -r' : '';
        return `${on} -l ${option.long.slice(2)}${short}${takes} -d '${fishText(option.description)}'`;
      }),
    ];
  });
  return `# ${NOTE}
${lines.join('\n')}
complete -c cutwright -n __fish_use_subcommand -f -a help -d 'How a command is used'
complete -c cutwright -n '__fish_seen_subcommand_from help' -f -a '${names.join(' ')}'
`;
}
