/** Pages for a terminal: wrapped lines, examples indented. */

import stringWidth from 'string-width';
import { laterWordsOf } from '../language/grammar-queries.js';
import { holdsWord, idleWords, ruleOf, type StatementPage, statementPages } from './statement-pages.js';
import { PLACEHOLDERS, syntaxLine } from './syntax-line.js';

const WIDTH = 80;
/** A left column wider than this has its meaning on the next line. */
const WIDEST = 22;

/** The page of a statement as plain text. */
export function plainPage(name: string): string {
  const page = statementPages[name]!;
  const { line, places } = syntaxLine(ruleOf(name).rule);
  const rest = idleWords(name);
  const sections = [
    `${name}: ${page.title}`,
    hanging(line, '    '),
    columns(places.map((place) => [place, PLACEHOLDERS[place]])),
    ...page.text.split('\n\n').map((one) => wrap(one)),
    columns(page.parts),
    ...(rest.length > 0 ? [wrap(`Without a meaning here, and an error: ${ticked(rest)}.`)] : []),
    ...page.examples.flatMap((one) => [wrap(one.says), indent(one.text)]),
    wrap(`See also: ${page.see.join(', ')}; grammar/${page.subject.split('#')[0]}.`),
    wrap(`Messages: ${page.codes.join(', ')}.`),
    'cutwright explain WORD explains any of these.',
  ];
  return `${sections.join('\n\n')}\n`;
}

/** What a word means that stands inside statements; null where none has it. */
export function plainWord(word: string): string | null {
  const meanings = new Map<string, { part: StatementPage['parts'][number]; names: string[] }>();
  for (const [name, page] of Object.entries(statementPages)) {
    if (!laterWordsOf(ruleOf(name)).includes(word)) continue;
    const part = page.parts.find(([written]) => holdsWord(written, word));
    if (!part) continue;
    const known = meanings.get(part[1]);
    if (known) known.names.push(name);
    else meanings.set(part[1], { part, names: [name] });
  }
  if (meanings.size === 0) return null;
  const sections = [...meanings.values()].map(
    ({ part, names }) => `In ${names.join(', ')}:\n${columns([part])}`,
  );
  return `${[`${word}: a word inside statements`, ...sections].join('\n\n')}\n`;
}

/** Statements, a line each. */
export function plainList(): string {
  return columns(
    Object.entries(statementPages).map(([name, { title }]) => [name, title]),
    '',
  );
}

const ticked = (words: readonly string[]): string => words.map((one) => `\`${one}\``).join(', ');

function columns(rows: readonly (readonly [string, string])[], margin = '  '): string {
  const width = Math.min(WIDEST, Math.max(...rows.map(([left]) => stringWidth(left)))) + 2;
  return rows
    .map(([left, right]) => {
      const lines = wrap(right, WIDTH - margin.length - width).split('\n');
      const pad = ' '.repeat(margin.length + width);
      const first =
        stringWidth(left) + 2 > width
          ? `${margin}${left}\n${pad}${lines[0]}`
          : `${margin}${left}${' '.repeat(width - stringWidth(left))}${lines[0]}`;
      return [first, ...lines.slice(1).map((one) => pad + one)].join('\n');
    })
    .join('\n');
}

function hanging(text: string, margin: string): string {
  return wrap(text, WIDTH - 2 * margin.length)
    .split('\n')
    .map((line, i) => (i === 0 ? margin : margin + margin) + line)
    .join('\n');
}

export function indent(text: string): string {
  return text
    .replace(/\n+$/, '')
    .split('\n')
    .map((line) => (line === '' ? '' : `    ${line}`))
    .join('\n');
}

export function wrap(text: string, width = WIDTH): string {
  const lines = [''];
  for (const word of text.match(/(?:`[^`]*`|\S)+/g) ?? []) {
    const line = lines.at(-1)!;
    if (line !== '' && line.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines.join('\n');
}
