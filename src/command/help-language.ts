/** What `--help` shows, in the user's language. Commands define themselves in English; each text is exchanged for the other language's. */

import { type AddHelpTextContext, type AddHelpTextPosition, Command, type Option } from 'commander';
import { displayWidth } from '../language/source.js';
import { wrapped } from '../language/text-wrap.js';
import { choicesOf } from './command-options.js';

export interface HelpTexts {
  /** Above lists: `Usage:`, `Options:` … */
  readonly titles: Readonly<Record<string, string>>;
  /** Behind an option: what it is where nothing is said. */
  readonly ofDefault: (value: string) => string;
  /** An option with the words that it takes. */
  readonly ofWords: (text: string, words: readonly string[]) => string;
  /** The help of the program; `commands`: a line each. */
  readonly program: (commands: string) => string;
  /** By the English. */
  readonly lines: Readonly<Record<string, string>>;
}

/** Columns of a help text. */
export const HELP_WIDTH = 100;

/** The text in the other language; the same where it has none. */
const exchanged = (texts: HelpTexts, english: string): string => texts.lines[english] ?? english;

/** A command whose help text is that of another language. Call `translate` when it is defined. */
export class TranslatedCommand extends Command {
  constructor(
    name: string,
    private readonly texts: HelpTexts,
  ) {
    super(name);
    this.configureHelp({
      displayWidth: (text) => displayWidth(text),
      boxWrap: wrapped,
      styleTitle: (title) => texts.titles[title] ?? title,
      // The words that an argument takes are in its text.
      argumentDescription: (argument) => argument.description,
      optionDescription: (option) => describedOption(option, texts),
    });
  }

  override addHelpText(
    position: AddHelpTextPosition,
    text: string | ((context: AddHelpTextContext) => string),
  ): this {
    return super.addHelpText(position, (context) =>
      translatedText(typeof text === 'string' ? text : text(context), this.texts),
    );
  }

  /** Exchanges what was defined. */
  translate(): this {
    const { texts } = this;
    this.description(exchanged(texts, this.description()));
    this.helpOption('-h, --help', exchanged(texts, 'this text'));
    for (const argument of this.registeredArguments)
      argument.description = exchanged(texts, argument.description);
    for (const option of this.options) {
      const words = choicesOf(option);
      option.description = words
        ? texts.ofWords(exchanged(texts, plainDescription(option.description, words)), words)
        : exchanged(texts, option.description);
    }
    return this;
  }
}

/** What `choice` was given. */
export const plainDescription = (description: string, words: readonly string[]): string =>
  description.replace(`: ${words.join(', ')}`, '');

function describedOption(option: Option, texts: HelpTexts): string {
  const { description, defaultValue } = option;
  return defaultValue === undefined ? description : `${description}${texts.ofDefault(String(defaultValue))}`;
}

/** A line of example: the command, blanks, what it does. */
const EXAMPLE = /^ {2}(\S.*?)( {3,})(\S.*)$/;

/** What stands behind the options: examples line by line, anything else by paragraphs. */
export function translatedText(text: string, texts: HelpTexts): string {
  const out = text.split(/\n{2,}/).map((paragraph) => {
    const [first = '', ...rest] = paragraph.replace(/^\n|\n$/g, '').split('\n');
    const title = texts.titles[first];
    if (title !== undefined) return [title, ...rest.map((line) => translatedExample(line, texts))].join('\n');
    const whole = [first, ...rest].join(' ');
    const other = texts.lines[whole];
    return other === undefined ? paragraph.replace(/^\n|\n$/g, '') : wrapped(other, HELP_WIDTH);
  });
  return `\n${out.filter((one) => one !== '').join('\n\n')}\n`;
}

function translatedExample(line: string, texts: HelpTexts): string {
  const whole = texts.lines[line];
  if (whole !== undefined) return whole;
  const [, command, gap, what] = EXAMPLE.exec(line) ?? [];
  return what === undefined ? line : `  ${command}${gap}${exchanged(texts, what)}`;
}
