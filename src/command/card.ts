/** `explain --card`: the language on one page. */

import { resolve } from 'node:path';
import { CutPrinter } from '../build/cut-printer.js';
import { deliver, overwriting, STANDARD_OUTPUT } from '../build/output-targets.js';
import { COMMAND_LINE, UsageError } from '../build/usage-error.js';
import type { Host } from '../host/host.js';
import type { UserLanguage } from '../language/user-language.js';
import { cardPage } from '../reference/card/card-page.js';
import { referenceWords } from '../reference/reference-language.js';
import type { Paper } from '../shot/settings.js';
import { ConsoleReporter } from './console-reporter.js';

const NOWHERE = { file: COMMAND_LINE, start: 0, end: 0 };

/** `commands`: names and what they do. The reference of the language has to be loaded. Gives the exit status. */
export async function printCard(
  host: Host,
  output: string,
  paper: Paper,
  language: UserLanguage,
  commands: readonly (readonly [string, string])[],
): Promise<number> {
  const path = resolve(host.cwd, output);
  const target = output === '-' ? STANDARD_OUTPUT : { path, name: output };
  const refused = target.path === null ? null : overwriting(host, path, output, NOWHERE);
  if (refused) throw new UsageError(refused.code, output, refused.parameters);
  const printer = CutPrinter.open(host);
  const page = cardPage(paper, language, commands, printer.fonts.metrics);
  const bytes = await printer.print({
    title: referenceWords(language).card.document,
    author: '',
    language,
    pages: [page],
    bookmarks: [],
    trueSize: false,
  });
  const fault = deliver(host, target, bytes, NOWHERE);
  if (fault) throw new UsageError(fault.code, output, fault.parameters);
  const reporter = new ConsoleReporter(host, 'human', false);
  reporter.say(
    target.path === null
      ? reporter.words.wroteToStandardOutput(reporter.words.pages(1))
      : reporter.words.wrote(target.name, reporter.words.pages(1)),
  );
  return reporter.finish();
}
