/** What a new episode starts with, and a new cut: texts that check without an error. Pure. */

import { format } from '../language/format/format-text.js';
import { quote } from '../language/source.js';
import type { Statement, Tree } from '../language/tree.js';
import { CONVENTIONAL, defaults, LENGTH_UNITS, type Settings } from '../shot/settings.js';
import { LABELS } from '../words/labels.js';

/** What is known of a new episode. */
export interface NewEpisode {
  readonly title: string;
  readonly episode: string;
  readonly convention: Settings['convention'];
  readonly labels: Settings['labels'];
  readonly paper: Settings['paper'];
}

/** The files of a new episode: texts by path from its folder. */
export function episodeFiles(episode: NewEpisode): ReadonlyMap<string, string> {
  return new Map([
    ['episode.yaml', manifest(episode)],
    ['house.cut', HOUSE],
    ['cuts/c001.cut', cutText({ ...EMPTY, number: '1', title: 'First cut', uses: ['../house.cut'] })],
    ['.gitattributes', '*.cut text eol=lf diff=cut\n'],
    ['.gitignore', '# Printed from the texts.\n*.pdf\n'],
  ]);
}

/** A line of the manifest; `plain` is what holds without it, and is written behind a `#`. */
interface Line {
  readonly key: string;
  readonly value: string;
  readonly says: string;
  readonly plain: boolean;
}

const size = ({ widthMm, heightMm }: { widthMm: number; heightMm: number }): string =>
  `${widthMm}mm x ${heightMm}mm`;

function manifest(episode: NewEpisode): string {
  const said = (key: string, value: string, says: string): Line => ({ key, value, says, plain: false });
  const plain = (key: string, value: string, says: string): Line => ({ key, value, says, plain: true });
  const usual = CONVENTIONAL[episode.convention];
  const lines: readonly Line[] = [
    said('title', quoted(episode.title), ''),
    said('episode', quoted(episode.episode), ''),
    said('convention', episode.convention, 'whose form of sheet: japan or west'),
    said('labels', episode.labels, `language of the printed form: ${LABELS.join(' or ')}`),
    said('paper', episode.paper, 'A4 A3 B4 (JIS) B5 letter legal tabloid C4 kaku2'),
    said('fps', String(defaults.fps), 'frames a second'),
    said('on', String(defaults.on), 'frames that a drawing is exposed for, where nothing is said'),
    plain('numbering', defaults.numbering, 'of finished drawings: sequence, or frame'),
    plain('rows', episode.convention === 'japan' ? '144' : '96', 'rows a page: whole seconds, or whole feet'),
    plain('field', size(usual.field), 'the standard field'),
    plain('fields', String(defaults.fields), 'lines of its chart: 12 or 16'),
    plain('artwork', size(usual.artwork), 'paper that levels are drawn on'),
    plain('lengths', usual.lengths, `printed on charts and strips: ${LENGTH_UNITS.join(' or ')}`),
    plain('pegs', 'flat-round-flat', 'drawn on the true-size prints: flat-round-flat or none'),
    plain('output', `${defaults.output.width}x${defaults.output.height}`, 'pixels of the finished picture'),
    plain('scan', `${defaults.scanDpi}dpi`, 'at which artwork is scanned'),
    plain('drawings', 'scans/{cut}/{level}{number}.png', 'where scans lie, to see cuts move'),
    plain('overlap', defaults.overlap, 'of two cuts at an overlap: half, or full'),
    plain('budget', '1320+0', 'running time allowed: seconds + frames'),
    plain('stages', '[layout, key, check, in-between, finish, shoot]', 'what each cut goes through'),
    plain('due', '{ key: 2027-04-02 }', 'until when a stage is to be done'),
    plain('rates', '{ finish: 2.50 EUR per drawing }', 'what is paid for a stage'),
    plain('artists', '{ "A. Name": [1, 2], "B. Name": [3] }', 'who draws which cuts'),
    said('cuts', '["cuts/*.cut"]', 'in story order: 2 before 10'),
  ];
  const rows = lines.map(({ key, value, says, plain: off }) => {
    const text = `${off ? '# ' : ''}${key}: ${value}`;
    return says === '' ? text : `${text.padEnd(33)}${text.length > 32 ? ' ' : ''}# ${says}`;
  });
  return [
    '# What holds for every cut of the episode. Take the # off a line to change what it says.',
    ...rows,
    '',
  ].join('\n');
}

/** A YAML scalar in double quotes: JSON text is YAML (YAML 1.2, 10.2). */
const quoted = (text: string): string => JSON.stringify(text);

const HOUSE = `# What several cuts of the episode share. A cut reads it with: use "../house.cut"
# Each level that plays a phrase has its own drawings 1, 2, ...

phrase walk = 1--2--3--4--                # a cycle on two steps: walk.. goes on, walk*2 twice
phrase blink = 1-2:3 1.1                  # shut for 3 frames, open again over the same in-between
`;

export interface NewCut {
  readonly number: string;
  readonly title: string;
  /** As typed: `5+0`, `120`, `8'04`. */
  readonly time: string;
  readonly artist: string;
  /** Levels with a timeline, bottom to top; null: as the cut that it is like, or A. */
  readonly levels: readonly string[] | null;
  readonly uses: readonly string[];
  /** The cut whose set-up it takes. */
  readonly like: { readonly tree: Tree; readonly text: string } | null;
}

const EMPTY: NewCut = {
  number: '1',
  title: '',
  time: '',
  artist: '',
  levels: null,
  uses: [],
  like: null,
};

/** What holds of a new cut where nothing is said. */
export const LENGTH = '3+0';

/**
 * The text of a new cut: each level shows one key, held to the end. Of the cut that it is like it takes the files used, speed,
 * numbering, scene, artist, stack, levels (not what they reuse) and fields.
 */
export function cutText(cut: NewCut): string {
  const { like } = cut;
  const source = ({ span }: Statement): string => like!.text.slice(span.start, span.end);
  const statements = like?.tree.statements ?? [];
  const of = <K extends Statement['kind']>(...kinds: readonly K[]): string[] =>
    statements.filter(({ kind }) => (kinds as readonly string[]).includes(kind)).map(source);
  const time = cut.time || of('time')[0]?.replace(/^time\s+/, '') || LENGTH;
  const levels = cut.levels ?? levelsOf(statements) ?? ['A'];
  const titles = new Map(
    statements.flatMap((one) => {
      if (one.kind === 'mouth') return [[one.level.text, one.speaker]];
      return one.kind === 'timeline' ? [[one.level.text, one.title]] : [];
    }),
  );
  const artist = cut.artist === '' ? of('artist') : [`artist ${quote(cut.artist)}`];
  const levelLines = statements.flatMap((one) =>
    one.kind === 'level' && one.reuse === null && (cut.levels === null || !titles.has(one.level.text))
      ? [source(one)]
      : [],
  );
  const stack = cut.levels === null && like ? of('stack') : [`stack BG ${levels.join(' ')}`];
  const timelines = levels.map((name) => {
    const title = cut.levels === null ? titles.get(name)?.text : undefined;
    return `${name}${title === undefined ? '' : ` ${quote(title)}`}: 1..`;
  });
  const fields = of('field');
  const paragraphs = [
    [...cut.uses.map((path) => `use ${quote(path)}`), ...of('use')],
    [
      `cut ${cut.number}${cut.title === '' ? '' : ` ${quote(cut.title)}`}`,
      `time ${time}`,
      ...artist,
      ...of('fps', 'on', 'numbering', 'scene'),
    ],
    [...stack, ...levelLines],
    timelines,
    [...fields, ...of('fix')],
  ];
  const text = paragraphs
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n');
  return format(`${cut.number}.cut`, `${text}\n`).text;
}

/** Levels with a timeline, typed or made for a mouth, in the order of writing; undefined where there is none. */
function levelsOf(statements: readonly Statement[]): string[] | undefined {
  const levels = statements.flatMap((one) =>
    one.kind === 'timeline' || one.kind === 'mouth' ? [one.level.text] : [],
  );
  return levels.length > 0 ? [...new Set(levels)] : undefined;
}
