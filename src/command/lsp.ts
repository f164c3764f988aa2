import { type Command, Option } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { type CommandContext, examples } from './command-options.js';

export function define(command: Command, context: CommandContext): Command {
  return (
    command
      .option(
        '--stdio',
        'speak over standard input and output; there is no other way, so it need not be said',
      )
      // Some clients add it of themselves, so that the server can see when they are gone.
      .addOption(new Option('--clientProcessId <number>').hideHelp())
      .addHelpText(
        'after',
        `
An editor starts this, not a person: it speaks the Language Server Protocol. What it offers: problems as you type with their
fixes, completion, what a drawing, time or move comes to, definitions and renaming across the cuts of an episode, layout, and
the running frame behind each line of a timeline.

How to set up VS Code, Neovim, Helix and Emacs stands in grammar/editors.
${examples(['cutwright lsp', 'what an editor is to run for files that end in .cut'])}`,
      )
      .action(async () => {
        if (process.stdin.isTTY) throw new UsageError('wrong-arguments', null, { variant: 'lsp-terminal' });
        const { serveStdio } = await import('../lsp/stdio.js');
        await serveStdio(context.host);
      })
  );
}
