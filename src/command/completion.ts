import { Argument, type Command } from 'commander';
import { nearest } from '../language/suggest.js';
import { factsOf } from './facts.js';
import { LineFault } from './line.js';
import { examples } from './options.js';
import type { Run } from './run.js';
import { bash, fish, zsh } from './shells.js';

const SHELLS = { bash, zsh, fish } as const;
type Shell = keyof typeof SHELLS;

export function define(command: Command, run: Run): Command {
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
      run.host.out(SHELLS[word](factsOf(await run.commands())));
    });
}

function shellOf(word: string): Shell {
  if (Object.hasOwn(SHELLS, word)) return word as Shell;
  const offer = nearest(word, Object.keys(SHELLS));
  throw new LineFault(
    'option-value',
    word,
    `\`completion\` is for bash, zsh or fish${offer ? `; did you mean \`${offer}\`?` : '.'}`,
    offer,
  );
}
