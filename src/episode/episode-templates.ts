/** What a new episode starts with, and a new cut: texts that check without an error. Pure. */

import { format } from '../language/format/format-text.js';
import { displayWidth, quote } from '../language/source.js';
import type { Statement, Tree } from '../language/tree.js';
import type { UserLanguage } from '../language/user-language.js';
import { CONVENTIONAL, defaults, LENGTH_UNITS, type Settings } from '../shot/settings.js';
import { LABELS } from '../words/labels.js';
import { type TemplateTexts, templateTexts } from './episode-template-texts.js';

/** What is known of a new episode. */
export interface NewEpisode {
  readonly title: string;
  readonly episode: string;
  readonly convention: Settings['convention'];
  readonly labels: Settings['labels'];
  readonly paper: Settings['paper'];
  /** Of comments and titles. */
  readonly language: UserLanguage;
}

/** The files of a new episode: texts by path from its folder. */
export function episodeFiles(episode: NewEpisode): ReadonlyMap<string, string> {
  const texts = templateTexts[episode.language];
  return new Map([
    ['episode.yaml', manifest(episode, texts)],
    ['house.cut', texts.house],
    ['cuts/c001.cut', cutText({ ...EMPTY, number: '1', title: texts.firstCut, uses: ['../house.cut'] })],
    ['.gitattributes', '*.cut text eol=lf diff=cut\n'],
    ['.gitignore', `# ${texts.ignored}\n*.pdf\n`],
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

/** Columns before the comments of the manifest. */
const COMMENTS_FROM = 33;

function manifest(episode: NewEpisode, texts: TemplateTexts): string {
  const line = (key: string, value: string, words: readonly string[], plain: boolean): Line => {
    const says = texts.says[key]?.(words) ?? '';
    return { key, value, says, plain };
  };
  const said = (key: string, value: string, ...words: readonly string[]) => line(key, value, words, false);
  const plain = (key: string, value: string, ...words: readonly string[]) => line(key, value, words, true);
  const usual = CONVENTIONAL[episode.convention];
  const lines: readonly Line[] = [
    said('title', quoted(episode.title)),
    said('episode', quoted(episode.episode)),
    said('convention', episode.convention),
    said('labels', episode.labels, ...LABELS),
    said('paper', episode.paper),
    said('fps', String(defaults.fps)),
    said('on', String(defaults.on)),
    plain('numbering', defaults.numbering),
    plain('rows', episode.convention === 'japan' ? '144' : '96'),
    plain('field', size(usual.field)),
    plain('fields', String(defaults.fields)),
    plain('artwork', size(usual.artwork)),
    plain('lengths', usual.lengths, ...LENGTH_UNITS),
    plain('pegs', 'flat-round-flat'),
    plain('output', `${defaults.output.width}x${defaults.output.height}`),
    plain('scan', `${defaults.scanDpi}dpi`),
    plain('drawings', 'scans/{cut}/{level}{number}.png'),
    plain('overlap', defaults.overlap),
    plain('budget', '1320+0'),
    plain('stages', '[layout, key, check, in-between, finish, shoot]'),
    plain('due', '{ key: 2027-04-02 }'),
    plain('rates', texts.values.rates),
    plain('artists', texts.values.artists),
    said('cuts', '["cuts/*.cut"]'),
  ];
  const rows = lines.map(({ key, value, says, plain: off }) => {
    const text = `${off ? '# ' : ''}${key}: ${value}`;
    return says === ''
      ? text
      : `${text}${' '.repeat(Math.max(1, COMMENTS_FROM - displayWidth(text)))}# ${says}`;
  });
  return [`# ${texts.manifest}`, ...rows, ''].join('\n');
}

/** A YAML scalar in double quotes: JSON text is YAML (YAML 1.2, 10.2). */
const quoted = (text: string): string => JSON.stringify(text);

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
