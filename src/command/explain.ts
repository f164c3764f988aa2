import type { Command } from 'commander';
import { type Code, catalogue, type Entry } from '../language/catalogue/index.js';
import { nearest } from '../language/suggest.js';
import { LineFault } from './line.js';
import { examples } from './options.js';
import type { Run } from './run.js';

const WIDTH = 80;

export function define(command: Command, run: Run): Command {
  return command
    .argument('[code]', 'the word in brackets behind a problem; without it all of them are listed')
    .addHelpText(
      'after',
      examples(
        ['cutwright explain timeline-short', 'what it means, with a failing and a mended example'],
        ['cutwright explain', 'all codes in a list'],
      ),
    )
    .action((code: string | undefined) => {
      run.host.out(code === undefined ? list() : explanation(known(code)));
    });
}

function known(word: string): Code {
  const code = word.replace(/^\[|\]$/g, '').toLowerCase();
  if (Object.hasOwn(catalogue, code)) return code as Code;
  const offer = nearest(code, Object.keys(catalogue));
  throw new LineFault(
    'wrong-arguments',
    word,
    `There is no code \`${word}\`; ${offer ? `did you mean \`${offer}\`?` : '`cutwright explain` lists all of them.'}`,
    offer,
  );
}

function list(): string {
  const rows = Object.entries<Entry>(catalogue);
  const width = Math.max(...rows.map(([code]) => code.length));
  return rows
    .map(([code, { severity, title }]) => `${code.padEnd(width)}  ${severity.padEnd(7)}  ${title}\n`)
    .join('');
}

function explanation(code: Code): string {
  const { severity, title, explanation: words, example } = catalogue[code];
  const parts = [`${code} (${severity}): ${title}`, wrap(words)];
  const files = example.kind === 'text' ? Object.entries(example.files ?? {}) : [];
  for (const [name, text] of files) parts.push(`With ${name}:\n\n${indent(text)}`);
  parts.push(`Goes wrong:\n\n${indent(example.failing)}`, `Mended:\n\n${indent(example.mended)}`);
  return `${parts.join('\n\n')}\n`;
}

function indent(text: string): string {
  return text
    .replace(/\n+$/, '')
    .split('\n')
    .map((line) => (line === '' ? '' : `    ${line}`))
    .join('\n');
}

function wrap(text: string): string {
  const lines = [''];
  for (const word of text.split(/\s+/)) {
    const line = lines.at(-1)!;
    if (line !== '' && line.length + 1 + word.length > WIDTH) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines.join('\n');
}
