import { PLACEHOLDERS } from '../src/reference/english-reference.js';
import { syntaxLine } from '../src/reference/explain-text.js';
import { idleWords, ruleOf, type StatementPage, statementPages } from '../src/reference/statement-pages.js';
import type { Crop } from './pictures.js';

/** What is shown of the first example of each page. */
export const PICTURES: Readonly<Record<string, readonly Crop[]>> = {
  timeline: [{ rows: [1, 36] }],
  phrase: [{ rows: [1, 24] }],
  cut: ['head'],
  time: ['head'],
  fps: [{ rows: [1, 27] }],
  on: [{ rows: [1, 24] }],
  mark: [{ rows: [44, 66] }],
  stack: ['memo', { rows: [1, 12] }],
  level: ['chart'],
  cels: [{ rows: [1, 18] }],
  numbering: [{ rows: [1, 18] }],
  use: [{ rows: [1, 24] }],
  voice: [{ rows: [28, 70] }],
  sound: [{ rows: [67, 72] }],
  music: [{ rows: [1, 18] }],
  track: [{ rows: [1, 72] }],
  mouth: [{ rows: [1, 54] }],
  note: [{ rows: [54, 66] }],
  memo: ['memo'],
  same: ['memo'],
  scene: ['head'],
  take: ['head'],
  artist: ['head'],
  accept: [{ rows: [1, 12] }],
  field: ['chart'],
  fix: ['memo', 'chart'],
  pan: [{ rows: [1, 18] }, 'chart'],
  truck: [{ rows: [1, 18] }, 'chart'],
  pull: [{ rows: [1, 18] }, 'chart'],
  follow: [{ rows: [1, 18] }, 'chart'],
  slide: [{ rows: [1, 18] }, 'chart'],
  turn: [{ rows: [1, 18] }, 'chart'],
  shake: [{ rows: [1, 40] }],
  sway: [{ rows: [1, 40] }],
  fade: ['memo', { rows: [1, 27] }],
  wipe: ['memo', { rows: [1, 21] }],
  iris: ['memo', { rows: [1, 23] }],
  expose: ['memo', { rows: [25, 54] }],
  glow: ['memo', { rows: [25, 54] }],
  effect: ['memo', { rows: [1, 18] }],
  overlap: ['memo'],
};

export const pictureName = (name: string, crop: Crop): string =>
  `${name}-${typeof crop === 'string' ? crop : 'rows'}.svg`;

function what(crop: Crop): string {
  if (typeof crop !== 'string') return `the sheet, frames ${crop.rows[0]} to ${crop.rows[1]}`;
  return {
    head: 'the head of the sheet',
    memo: 'the memo',
    chart: 'the camera chart',
    charts: 'the in-between charts',
  }[crop];
}

/** The page of a statement in grammar/statements/. */
export function statementPage(name: string): string {
  const page = statementPages[name]!;
  const { line, places } = syntaxLine(ruleOf(name).rule);
  const rest = idleWords(name);
  return `${[
    `# ${name}`,
    `*${page.title}.* Written out of the reference; do not edit. \`cutwright explain ${name}\` says the same.`,
    fence('text', line),
    `where ${places.map((place) => `${place} is ${PLACEHOLDERS[place].replace(/`/g, '')}`).join('; ')}.`,
    page.text,
    ['| written | means |', '| --- | --- |', ...page.parts.map(row)].join('\n'),
    ...(rest.length > 0
      ? [
          `Without a meaning here, and an [error](../messages.md#option-misplaced): ${rest.map((one) => `\`${one}\``).join(', ')}.`,
        ]
      : []),
    ...page.examples.flatMap((one, i) => [
      one.says,
      ...Object.entries(one.files ?? {}).map(([file, text]) => fence(`cut file=${file}`, text)),
      fence(['cut', one.time && `time=${one.time}`, one.expect].filter(Boolean).join(' '), one.text),
      ...(i === 0
        ? PICTURES[name]!.map((crop) => `![${what(crop)}](../pictures/statements/${pictureName(name, crop)})`)
        : []),
    ]),
    `See also: ${page.see.map((one) => `[${one}](${one}.md)`).join(', ')}. The subject: [${page.subject.split('.')[0]}](../${page.subject}). The whole grammar: [syntax](../syntax.md#${name}).`,
    `Messages: ${page.codes.map((code) => `[${code}](../messages.md#${code})`).join(', ')}.`,
  ]
    .join('\n\n')
    .trimEnd()}\n`;
}

const row = ([written, meaning]: StatementPage['parts'][number]): string =>
  `| \`${written.replaceAll('|', '\\|')}\` | ${meaning.replaceAll('|', '\\|')} |`;

const fence = (words: string, text: string): string => `\`\`\`${words}\n${text.trimEnd()}\n\`\`\``;
