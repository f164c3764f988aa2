import { Argument, type Command } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { nearest } from '../language/suggest.js';
import { factsOf } from './command-facts.js';
import { type CommandContext, examples } from './command-options.js';
import { bash, fish, zsh } from './completion-scripts.js';

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
      context.host.out(SHELLS[word](factsOf(await context.commands())));
    });
}

function shellOf(word: string): Shell {
  if (Object.hasOwn(SHELLS, word)) return word as Shell;
  const shells = Object.keys(SHELLS);
  const offer = nearest(word, shells);
  throw new UsageError('option-value', word, { variant: 'shell', shells, guess: offer ?? null }, offer);
}
