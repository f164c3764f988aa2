/** What the commands take, as plain data: for completion by the shell and for the manual page. */

import type { Command, Option } from 'commander';
import { choicesOf } from './command-options.js';

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
  /** The words that may stand there, or null: a file. */
  readonly words: readonly string[] | null;
}

/** The facts of each command, in the order given. */
export function factsOf(commands: readonly Command[]): CommandFacts[] {
  return commands.map((command) => ({
    name: command.name().replace(/^cutwright /, ''),
    description: command.description(),
    options: [...command.options.filter(({ hidden }) => !hidden).map(optionFacts), HELP],
    args: command.registeredArguments.map((argument) => ({
      name: argument.name(),
      description: argument.description,
      required: argument.required,
      variadic: argument.variadic,
      words: argument.argChoices ?? null,
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
