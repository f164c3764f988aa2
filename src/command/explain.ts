import { Argument, type Command } from 'commander';
import { UsageError } from '../build/usage-error.js';
import { type Code, catalogue, type Entry } from '../language/catalogue/index.js';
import { laterWordsOf } from '../language/grammar-queries.js';
import { aboutCode, messageOf } from '../language/message.js';
import { displayWidth } from '../language/source.js';
import { byWord } from '../language/statements/statement-table.js';
import { nearest } from '../language/suggest.js';
import { called } from '../language/trade-word-faults.js';
import { drawnTradeWord, tradeWord } from '../language/trade-words.js';
import { type UserLanguage, userLanguage } from '../language/user-language.js';
import { indent, plainList, plainPage, plainWord, wrap } from '../reference/explain-text.js';
import { loadReference, referenceWords } from '../reference/reference-language.js';
import { statementPages } from '../reference/statement-pages.js';
import { PAPERS, type Paper } from '../shot/settings.js';
import { type CommandContext, choice, examples, suggest } from './command-options.js';

interface Options {
  readonly card?: boolean;
  readonly output: string;
  readonly paper: Paper;
}

export function define(command: Command, context: CommandContext): Command {
  return command
    .addArgument(
      suggest(
        new Argument(
          '[word]',
          'a statement, a word of one, or the code of a message; without it all are listed',
        ),
        knownWords,
      ),
    )
    .option('--card', 'print the whole language on one page, to hang beside the desk')
    .option('-o, --output <file>', 'the file of the card, or - for standard output', 'card.pdf')
    .addOption(choice('-p, --paper <size>', 'the paper of the card', PAPERS).default('A4'))
    .addHelpText(
      'after',
      examples(
        ['cutwright explain pan', 'the statement: how it is written, with examples'],
        ['cutwright explain T.U', 'a word of the trade: what it is called here'],
        ['cutwright explain ease', 'a word that stands inside statements'],
        ['cutwright explain timeline-short', 'what a message means, with a failing and a mended example'],
        ['cutwright explain', 'all statements and codes in a list'],
        ['cutwright explain --card --paper A3', 'the whole language on one page'],
      ),
    )
    .action(async (word: string | undefined, { card, output, paper }: Options) => {
      const language = userLanguage(context.host);
      await loadReference(language);
      if (card) {
        const commands = (await context.commands()).map(
          (one) =>
            [
              one.name().replace(/^cutwright /, ''),
              one
                .description()
                .replace(/[.。]$/, '')
                .replace(/^./, (letter) => letter.toLowerCase()),
            ] as const,
        );
        const { printCard } = await import('./card.js');
        context.status = await printCard(context.host, output, paper, language, commands);
        return;
      }
      context.host.out(word === undefined ? list(language) : explained(word, language));
    });
}

/** All that has an explanation: statements, words that stand inside them, codes. */
function knownWords(): string[] {
  const inside = [...byWord.values()].flatMap(laterWordsOf);
  return [...new Set([...Object.keys(statementPages), ...inside, ...Object.keys(catalogue)])];
}

function explained(typed: string, language: UserLanguage): string {
  const word = typed.replace(/^\[|\]$/g, '').toLowerCase();
  if (Object.hasOwn(statementPages, word)) return plainPage(word, language);
  if (Object.hasOwn(catalogue, word)) return explanation(word as Code, language);
  const inside = plainWord(word, language);
  if (inside !== null) return inside;
  const trade = drawnTradeWord(typed) ?? tradeWord(typed);
  if (trade) {
    // 原画 in a timeline, and 原画 at the start of a line.
    const said = [...new Set([trade, tradeWord(typed) ?? trade])].map((one) =>
      wrap(messageOf({ code: 'trade-word', parameters: called(one, typed) }, language)),
    );
    return `${said.join('\n')}\n\n${explained(trade.page, language)}`;
  }
  const offer = nearest(word, knownWords());
  throw new UsageError(
    'wrong-arguments',
    typed,
    { variant: 'explain-unknown', word: typed, guess: offer ?? null },
    offer,
  );
}

function list(language: UserLanguage): string {
  const { lists, severities } = referenceWords(language);
  const rows = Object.entries(catalogue) as [Code, Entry][];
  const width = Math.max(...rows.map(([code]) => code.length));
  const codes = rows.map(([code, { severity }]) => {
    const named = severities[severity];
    return `${code.padEnd(width)}  ${named}${' '.repeat(Math.max(1, 9 - displayWidth(named)))}${aboutCode(code, language).title}\n`;
  });
  return `${lists.statements}\n\n${plainList(language)}\n\n${lists.messages}\n\n${codes.join('')}`;
}

function explanation(code: Code, language: UserLanguage): string {
  const { severity, example } = catalogue[code];
  const words = referenceWords(language);
  const { title, explanation: text } = aboutCode(code, language);
  const [failing, mended] = words.situations[code] ?? [example.failing, example.mended];
  const parts = [words.about(code, words.severities[severity], title), wrap(text)];
  const files = example.kind === 'text' ? Object.entries(example.files ?? {}) : [];
  for (const [name, content] of files) parts.push(`${words.withFile(name)}\n\n${indent(content)}`);
  parts.push(`${words.failing}\n\n${indent(failing)}`, `${words.mended}\n\n${indent(mended)}`);
  const statements = Object.keys(statementPages).filter((name) => statementPages[name]!.codes.includes(code));
  if (statements.length > 0) parts.push(wrap(words.ofStatements(statements.join(', '))));
  return `${parts.join('\n\n')}\n`;
}
