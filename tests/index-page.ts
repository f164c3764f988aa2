/** grammar/a-to-z.md: every word that somebody may look for, and the page that tells it. */

import { readdirSync, readFileSync } from 'node:fs';
import { laterWordsOf } from '../src/language/grammar-queries.js';
import { ruleOf, statementPages } from '../src/reference/statement-pages.js';

interface Entry {
  readonly word: string;
  readonly is: string;
  readonly links: readonly string[];
}

const statementLink = (name: string): string => `[${name}](statements/${name}.md)`;

function statements(): Entry[] {
  return Object.entries(statementPages).map(([name, { title, subject }]) => ({
    word: `\`${name}\``,
    is: `statement: ${title}`,
    links: [statementLink(name), `[${subject.split('.')[0]}](${subject})`],
  }));
}

/** Words that stand inside statements, with the statements that have them. */
function options(): Entry[] {
  const holders = new Map<string, string[]>();
  for (const name of Object.keys(statementPages))
    for (const [written] of statementPages[name]!.parts)
      for (const word of laterWordsOf(ruleOf(name)))
        if (new RegExp(`(?<![\\p{L}\\p{N}])${word}(?![\\p{L}\\p{N}])`, 'u').test(written))
          holders.set(word, [...new Set([...(holders.get(word) ?? []), name])]);
  return [...holders].map(([word, names]) => ({
    word: `\`${word}\``,
    is: 'word in a statement',
    links: names.map(statementLink),
  }));
}

/** The words of the glossary, in both languages. */
function terms(): Entry[] {
  const rows = [
    ...readFileSync('grammar/glossary.md', 'utf8').matchAll(
      /^\| ([^|]+) \| [^|]* \| ([^|]+) \|.*\| *(\[[^|]*\)) \|$/gm,
    ),
  ];
  return rows.flatMap(([, word, japanese, link]) => [
    { word: word!, is: 'word of the trade', links: [link!, '[glossary](glossary.md)'] },
    ...(japanese === '—' || /^[\x20-\x7e]+$/.test(japanese!)
      ? []
      : [{ word: japanese!, is: `on a Japanese sheet: ${word}`, links: [link!, '[glossary](glossary.md)'] }]),
  ]);
}

/** The subjects of the messages. */
function messages(): Entry[] {
  return [...readFileSync('grammar/messages.md', 'utf8').matchAll(/^### (.+)$/gm)]
    .filter(([, title]) => !/^[a-z-]+$/.test(title!))
    .map(([, title]) => {
      const anchor = title!
        .toLowerCase()
        .replace(/[^\p{L}\p{N} _-]/gu, '')
        .replaceAll(' ', '-');
      return { word: title!, is: 'messages', links: [`[messages](messages.md#${anchor})`] };
    });
}

/** The commands that a page names in its title. */
function commands(): Entry[] {
  return readdirSync('grammar')
    .filter((name) => name.endsWith('.md'))
    .flatMap((page) => {
      const command = /^# .*`cutwright ([a-z]+)`/.exec(readFileSync(`grammar/${page}`, 'utf8'))?.[1];
      return command
        ? [{ word: `\`cutwright ${command}\``, is: 'command', links: [`[${page.slice(0, -3)}](${page})`] }]
        : [];
    });
}

const sortKey = ({ word }: Entry): string => word.replace(/`|cutwright /g, '').toLowerCase();

export function indexPage(): string {
  const all = [...statements(), ...options(), ...terms(), ...messages(), ...commands()].sort((a, b) =>
    sortKey(a) < sortKey(b) ? -1 : sortKey(a) > sortKey(b) ? 1 : a.is < b.is ? -1 : 1,
  );
  const rows = all.map(({ word, is, links }) => `| ${word} | ${is} | ${links.join(', ')} |`);
  return `# Index

Written out of the language, the glossary and the messages; do not edit. Every statement, every word inside statements, every word of the trade, the
commands, and the messages by subject. Japanese words stand at the end.

| word | is | page |
| --- | --- | --- |
${rows.join('\n')}
`;
}
