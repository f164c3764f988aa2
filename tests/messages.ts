import { camera } from '../src/language/catalogue/camera-codes.js';
import { typing } from '../src/language/catalogue/command-codes.js';
import { cutList, episode, handover, picture } from '../src/language/catalogue/episode-codes.js';
import { files } from '../src/language/catalogue/files-codes.js';
import { type Code, catalogue } from '../src/language/catalogue/index.js';
import { mouth } from '../src/language/catalogue/mouth-codes.js';
import { statements } from '../src/language/catalogue/statements-codes.js';
import { words } from '../src/language/catalogue/syntax-codes.js';
import { timelines } from '../src/language/catalogue/timelines-codes.js';
import { track } from '../src/language/catalogue/track-codes.js';
import { usage } from '../src/language/catalogue/usage-codes.js';
import { aboutCode } from '../src/language/message.js';
import { statementPages } from '../src/reference/statement-pages.js';

/** What a message is about, for whoever does not know its code. */
const SUBJECTS: readonly (readonly [title: string, codes: readonly string[]])[] = [
  ['Characters, words, the layout of a file', Object.keys(words)],
  ['Timelines, charts, numbers of drawings', Object.keys(timelines)],
  ['The cut, its times, levels, words', Object.keys(statements)],
  ['Camera, artwork, light', Object.keys(camera)],
  ['From cut to cut', Object.keys(episode)],
  [
    'Files, the episode, the command line',
    [...Object.keys(files), ...Object.keys(usage), ...Object.keys(cutList), ...Object.keys(typing)],
  ],
  ['To the cutting room', Object.keys(handover)],
  ['The recording', Object.keys(track)],
  ['Mouths, and the length of a line', Object.keys(mouth)],
  ['Drawings and films', Object.keys(picture)],
];

/** The reference page of every message, written out of the catalogue: an index by subject, then all of them from A to Z. */
export function messagesPage(): string {
  const codes = Object.keys(catalogue).sort() as Code[];
  const left = codes.filter((code) => !SUBJECTS.some(([, own]) => own.includes(code)));
  const groups = [...SUBJECTS, ...(left.length > 0 ? [['Others', left] as const] : [])];
  return `# Messages

Written out of the catalogue; do not edit. \`cutwright explain CODE\` says the same. An error keeps a cut from printing, a warning
and a hint do not. By subject; below, [all of them from A to Z](#${codes[0]}).

${groups.map(([title, own]) => index(title, [...own].sort() as Code[])).join('\n\n')}

${codes.map((code) => section(code)).join('\n')}`;
}

function index(title: string, codes: readonly Code[]): string {
  const rows = codes.map(
    (code) => `| [${code}](#${code}) | ${catalogue[code].severity} | ${aboutCode(code, 'en').title} |`,
  );
  return `### ${title}\n\n| code | | |\n| --- | --- | --- |\n${rows.join('\n')}`;
}

function section(code: Code): string {
  const { severity, example } = catalogue[code];
  const { explanation } = aboutCode(code, 'en');
  const said = `## ${code}\n\n*${severity}* ${explanation}\n${statementsOf(code)}`;
  if (example.kind === 'situation')
    return said + situation('Faulty', example.failing) + situation('Mended', example.mended);
  const files = Object.entries(example.files ?? {})
    .map(([name, text]) => fence(`With \`${name}\`:`, text))
    .join('');
  return said + files + fence('Faulty:', example.failing) + fence('Mended:', example.mended);
}

/** The statements that can give it; of one that most can give, none is named. */
function statementsOf(code: string): string {
  const names = Object.entries(statementPages).flatMap(([name, { codes }]) =>
    (codes as readonly string[]).includes(code) ? [name] : [],
  );
  if (names.length === 0 || names.length > 12) return '';
  return `\nStatements: ${names.map((name) => `[${name}](statements/${name}.md)`).join(', ')}.\n`;
}

/** A situation in words, or an excerpt of several lines. */
function situation(title: string, text: string): string {
  return text.includes('\n') ? fence(`${title}:`, text) : `\n${title}: ${text}\n`;
}

/** The fence is longer than any in the text. */
function fence(title: string, text: string): string {
  const longest = Math.max(2, ...(text.match(/`+/g) ?? []).map((one) => one.length));
  const ticks = '`'.repeat(longest + 1);
  return `\n${title}\n\n${ticks}\n${text.replace(/\n?$/, '\n')}${ticks}\n`;
}
