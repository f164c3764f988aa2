/** Ways of writing times, lengths, directions and signs that are not those of the language, each with what would be written here. */

import type { TextRange } from './source.js';

interface Rewording {
  /** The source of an expression; those of all take longer to make than a cut to read, so that each is made when it is first asked. */
  readonly found: string;
  readonly flags: string;
  readonly written: string;
  /** Where it is looked for: in timelines and phrases, in all other statements, or in both. */
  readonly where: 'drawn' | 'said' | 'both';
  /** It says where something comes from, and is written as where it goes to. */
  readonly towards?: true;
}

const FRAMES = '(?:[Ff]rames?|FRAMES|frs?|f|コマ|k)';
const FIGURE = String.raw`(?<![\p{L}\d.+])(\d+(?:\.\d+)?)`;
const SIGNED = String.raw`-?\d+(?:\.\d+)?`;
const SECONDS = '(?:seconds?|secs?|s|秒)';
const NAME = String.raw`[\p{L}][\p{L}\p{N}_]*`;

/** Whether letters behind a number are a unit of time: `12コマ`, `2s`. */
export const isTimeUnit = (letters: string): boolean =>
  new RegExp(`^(?:${FRAMES}|${SECONDS})$`, 'iu').test(letters);

const END = String.raw`(?![\p{L}\p{N}])`;
const TIME = String.raw`\d+(?:\+\d+|'\d+)?`;

const THE = String.raw`(?:(?:the|screen)\s+)*`;
const TO = String.raw`(?:\s+to\s+|-to-|\s*->\s*)${THE}`;
const SIDE = String.raw`(?:[\s-]+hand)?(?:\s+(?:edge|side))?`;
/** The side that something comes from, the opposite one, the first in Japanese, and the direction that it takes. */
const COMING = [
  ['left|west', 'right|east', '左', 'right'],
  ['right|east', 'left|west', '右', 'left'],
  ['top|above|up|north', 'bottom|below|down|south', '上', 'down'],
  ['bottom|below|down|south', 'top|above|up|north', '下', 'up'],
] as const;

const rewording = (where: Rewording['where'], found: string, written: string, flags = 'gu'): Rewording => ({
  found,
  flags,
  written,
  where,
});

const expressions = new Map<Rewording, RegExp>();

function expressionOf(entry: Rewording): RegExp {
  const made = expressions.get(entry) ?? new RegExp(entry.found, entry.flags);
  expressions.set(entry, made);
  return made;
}

/** The first that finds something at a place holds there. */
const REWORDINGS: readonly Rewording[] = [
  // Text in single quotes.
  rewording('both', `(?<=[\\s])'([^'"\\n]*)'`, '"$1"'),
  // Times.
  rewording('said', String.raw`(?<=^time\s+)(\d+)\.0+(?=\s*$)`, '$1+0'),
  rewording('said', String.raw`(?<=^time\s+)00?:0?(\d+):0?(\d+)(?=\s*$)`, '$1+$2'),
  rewording('said', String.raw`(?<=^fps\s+)(\d+)\s*fps`, '$1'),
  rewording('said', String.raw`(?<=^fade\s+in\s+(?:white\s+)?)(\d+)(?=\s*$)`, '1..$1'),
  rewording(
    'said',
    `(?<![\\p{L}\\p{N}.])(\\d+)\\s*${SECONDS}\\s*(?:\\+|and|,)?\\s*(\\d+)\\s*${FRAMES}?${END}`,
    '$1+$2',
    'giu',
  ),
  rewording('said', `(?<![\\p{L}\\p{N}.])(\\d+)\\s*${SECONDS}${END}`, '$1+0', 'giu'),
  rewording('said', String.raw`(?<![\p{L}\p{N}.+])(\d+(?:\+\d+)?)\s*${FRAMES}${END}`, '$1'),
  rewording('drawn', `(?<![\\p{L}\\p{N}.])(\\d+)\\s*:\\s*(\\d+)\\s*${SECONDS}${END}`, '$1:$2+0', 'giu'),
  rewording('drawn', `(?<![\\p{L}\\p{N}.])(\\d+)\\s*:\\s*(\\d+)\\s*${FRAMES}${END}`, '$1:$2'),
  rewording('drawn', `(?<![\\p{L}\\p{N}.])(\\d+)\\s*(?:for|x)\\s*(\\d+)\\s*${FRAMES}${END}`, '$1:$2', 'giu'),
  rewording('said', String.raw`(?<![\p{L}\p{N}.:])0*(\d+):(?=\d\d(?![\d:]))0?(\d+)`, '$1+$2'),
  rewording('said', String.raw`(?<=^time\s+)(\d+)-(\d\d?)(?=\s*$)`, '$1+$2'),
  rewording(
    'said',
    String.raw`(?<![\p{L}\p{N}.])(\d+\+\d+)\s*(?:[-~〜～…‥]|to|until|till|through)\s*(\d+\+\d+)${END}`,
    '$1..$2',
  ),
  rewording(
    'said',
    String.raw`(?<![\p{L}\p{N}.@>])(${TIME})\s*(?:[-~〜～…‥]|to|until|till|through)\s*(${TIME})${END}`,
    '$1..$2',
  ),
  rewording('said', String.raw`(?<=\s)(${TIME})\s*(?:to|until) (?:the )?end${END}`, '$1..'),
  // What comes from the left goes to the right; in a pan `left to right` would be two fields.
  ...COMING.map(
    ([from, to, japanese, here]): Rewording => ({
      ...rewording(
        'said',
        String.raw`(?<=\s)(?<!^(?:pan|truck|slide|turn)\s.*)(?:from\s+${THE}(?:${from})(?:${TO}(?:${to})|${SIDE})|(?:${from})${TO}(?:${to})|${japanese}から(?:[左右上下]へ?)?)${END}`,
        here,
        'giu',
      ),
      towards: true,
    }),
  ),
  // Fields that a move goes through.
  rewording(
    'said',
    String.raw`(?<=\s)(?:from\s+)?(${NAME})\s*(?:>|->|=>|→|to)\s*(${NAME})\s+(${TIME})\s*(?:\.\.|-|to|~|〜)\s*(${TIME})${END}`,
    '$1@$3 > $2@$4',
  ),
  rewording('said', String.raw`(?<=@[^\s>]+)\s*(?:->|=>|→|to|⇒|から)\s*(?=${NAME}\s*@|\d+%)`, ' > '),
  rewording('said', String.raw`(?<=@[^\s>,]+)\s*[\s,]\s*(${NAME}@|\d+%@)`, ' > $1'),
  rewording('said', String.raw`(?<=\s)(${NAME})\s+at\s+(${TIME})${END}`, '$1@$2'),
  rewording(
    'said',
    String.raw`(?<=\s)(${NAME})\s+(${TIME})\s*(?:>|->|=>|→|to)\s*(${NAME})\s+(${TIME})${END}`,
    '$1@$2 > $3@$4',
  ),
  rewording('said', String.raw`(?<=\s)(${SIGNED}\s*,\s*${SIGNED})(?=\s*@)`, '($1)'),
  rewording('said', String.raw`(?<=\s)at\s*\(\s*(${SIGNED})\s*[, ]\s*(${SIGNED})\s*\)`, 'at $1,$2'),
  rewording('said', String.raw`(?<=\s)at\s+(${SIGNED})\s+(${SIGNED})(?![\p{L}\d])`, 'at $1,$2'),
  rewording('said', String.raw`(?<=^field\s+\S+\s+\S+\s+)(${SIGNED},${SIGNED})`, 'at $1'),
  rewording('said', String.raw`(?<=^field\s+\S+\s+\S+\s+)(\d\S*[NSEW](?:\s+\d\S*[NSEW])?)(?=\s*$)`, 'at $1'),
  rewording('said', String.raw`(?<=^field\s.*)\s+(?:center|centre)(?=\s*$)`, ''),
  rewording('said', String.raw`(?<=^(?:mark\s+\S+|note)\s+)at\s+`, ''),
  rewording('said', String.raw`(?<=^level\s+\S+\s+)(\d+x\d+(?:mm|cm|in)?)`, 'size $1'),
  rewording(
    'said',
    String.raw`(?<=^level\s+)(${NAME})\s+(?:is\s+)?masked\s+(?:by|with)\s+(${NAME})`,
    '$2 masks $1',
  ),
  rewording(
    'said',
    String.raw`(?<=^level\s+\S.*)(?<=\s)(?:is\s+)?(?:drawn|painted|made|together)\s+with${END}`,
    'with',
  ),
  rewording('said', String.raw`(?<=\s)(\d+%|\d+mm)\s*(?:to|->|→)\s*(\d+%|\d+mm)(?![@\p{L}\d])`, '$1>$2'),
  rewording('said', String.raw`(?<=\sreuse\s+)(\d+)([A-Z])${END}`, '$1/$2'),
  rewording('said', String.raw`(?<=^wipe\s+)(left|right|up|down)\s+(in|out)${END}`, '$2 $1'),
  rewording('said', String.raw`\((off|mono)\)`, '$1'),
  rewording('said', String.raw`(?<=\d)\s*:(?=\s*["「])`, ''),
  // Units.
  rewording('said', String.raw`${FIGURE}\s*mm\s*(?:\/|per)\s*(?:frame|fr|k|コマ)${END}`, '$1mm/f', 'giu'),
  rewording('said', String.raw`${FIGURE}\s+(mm\/f|cm\/f|in\/f|mm|cm|in|deg|%|F)(?![\p{L}\p{N}])`, '$1$2'),
  rewording('said', String.raw`${FIGURE}\s*(?:°|degrees?|度)`, '$1deg'),
  rewording('said', String.raw`${FIGURE}\s*(?:percent|パーセント)`, '$1%'),
  rewording('said', String.raw`${FIGURE}\s*(?:millimet(?:er|re)s?|ミリ)${END}`, '$1mm', 'giu'),
  // Directions and senses.
  rewording('said', String.raw`(?<=\s)(?:(?:screen|to the|to)\s+)?(?:west|left|左へ?)${END}`, 'left', 'giu'),
  rewording(
    'said',
    String.raw`(?<=\s)(?:(?:screen|to the|to)\s+)?(?:east|right|右へ?)${END}`,
    'right',
    'giu',
  ),
  rewording('said', String.raw`(?<=\s)(?:north|upwards?|up|上へ?)${END}`, 'up', 'giu'),
  rewording('said', String.raw`(?<=\s)(?:south|downwards?|down|下へ?)${END}`, 'down', 'giu'),
  rewording('said', String.raw`(?<=\s)(?:clockwise|時計回り|右回り)${END}`, 'cw', 'giu'),
  rewording(
    'said',
    String.raw`(?<=\s)(?:(?:counter|anti)[- ]?clockwise|反時計回り|左回り)${END}`,
    'ccw',
    'giu',
  ),
  // Ramps and marks.
  rewording(
    'said',
    String.raw`(?<=\s)(?:ease|slow|cushion)[- ]?in[- ]?(?:and[- ]?)?out\s+(\d+)`,
    'ease $1',
    'giu',
  ),
  rewording('said', String.raw`(?<=\s)(?:fairing|フェアリング|cushion)${END}`, 'fair', 'giu'),
  rewording('said', String.raw`(?<=\sfair\s+)@?(${TIME})(?=\s+\d+%)`, 'ア@$1'),
  rewording('said', String.raw`(?<=\s)(?:目盛り?|graduations?|memori)${END}`, 'graduated', 'giu'),
  rewording('said', String.raw`(?<=\s)(?:around|pivot)${END}`, 'about', 'giu'),
  rewording('said', String.raw`(?<=\s)(?:os|オフ|offscreen)${END}`, 'off', 'giu'),
  rewording('said', String.raw`(?<=\s)(?:モノローグ|monologue|thinks)${END}`, 'mono', 'giu'),
  rewording('said', String.raw`(?<=\s)(?:white out|白)${END}`, 'white', 'giu'),
  // Words that say nothing here.
  rewording('said', String.raw`(?<=\s)black(?:\s+|$)`, ''),
  rewording(
    'said',
    String.raw`(?<=\s)(?:camera|frames?|from|over|during|by|speed|of|no\.?|#)\s+(?=[\d\p{L}])`,
    '',
    'giu',
  ),
  rewording('said', String.raw`\s+linear${END}`, ''),
  rewording('said', String.raw`(?<=^cut\s+\S+?)\s*[:,-]?\s+((?!scene)\p{L}[^"「」\n]*?)(?=\s*$)`, ' "$1"'),
  rewording('said', String.raw`(?<=^stack\s.*?)\s*[>/,]\s*`, ' '),
  rewording('said', String.raw`(?<=\s)(\d\S*mm\/f)\s+(left|right|up|down)${END}`, '$2 $1'),
  // Drawings.
  rewording('both', String.raw`(?<=\s)\/\/\s`, '# '),
  rewording('both', String.raw`(?<=\s)on\s+(\d)s${END}`, 'on $1'),
  rewording('drawn', String.raw`\{\s*(?:slow|ease|cushion)[- ]?in\s*\}`, '{late}'),
  rewording('drawn', String.raw`\{\s*(?:slow|ease|cushion)[- ]?out\s*\}`, '{early}'),
  rewording('drawn', String.raw`\s*;(?=\s|$)`, ''),
  rewording('both', String.raw`(?<=\s)on\s+ones${END}`, 'on 1', 'giu'),
  rewording('both', String.raw`(?<=\s)on\s+twos${END}`, 'on 2', 'giu'),
  rewording('both', String.raw`(?<=\s)on\s+threes${END}`, 'on 3', 'giu'),
  rewording('both', String.raw`(?<=\s)on\s+fours${END}`, 'on 4', 'giu'),
  rewording('drawn', String.raw`\s*,(?=\s)`, ''),
  rewording('drawn', ',', ' '),
  rewording('drawn', String.raw`(?<=\))\s*(?:x|\*)\s*(\d+)(?:\s*times)?${END}`, '*$1', 'giu'),
  rewording('drawn', String.raw`(?<=\))\s*(\d+)\s*times${END}`, '*$1', 'giu'),
  rewording('drawn', String.raw`(?<=[\d)])\s*[~〜～→](?=\s*$)`, '..'),
  rewording('said', String.raw`\s*,\s*(?=${NAME})`, ' '),
  rewording('said', String.raw`;\s*$`, ''),
  rewording('said', String.raw`(?<=^\S+)\s*[=:]\s*`, ' '),
];

/** What would be replaced where, and what was found there. */
export interface Reworded extends TextRange {
  readonly found: string;
  readonly text: string;
  readonly towards?: true;
}

const QUOTED = /"(?:\\.|[^"\\\n])*"|「[^」\n]*」/gu;

/**
 * All that is written otherwise in a stretch of a folded text, in order; quoted text is left alone. Offsets are those of the text.
 */
export function rewordings(folded: string, { start, end }: TextRange, drawn: boolean): Reworded[] {
  const stretch = folded.slice(start, end);
  const quoted = [...stretch.matchAll(QUOTED)].map(({ index, 0: { length } }) => ({
    start: index,
    end: index + length,
  }));
  const taken: TextRange[] = [...quoted];
  const made: Reworded[] = [];
  for (const entry of REWORDINGS) {
    const { written, where } = entry;
    if (where !== 'both' && (where === 'drawn') !== drawn) continue;
    for (const match of stretch.matchAll(expressionOf(entry))) {
      const from = match.index;
      const to = from + match[0].length;
      if (taken.some((one) => one.start < to && from < one.end)) continue;
      const text = filled(written, match);
      if (text === match[0]) continue;
      taken.push({ start: from, end: to });
      const towards = entry.towards ? { towards: entry.towards } : {};
      made.push({ start: start + from, end: start + to, found: match[0], text, ...towards });
    }
  }
  return made.sort((a, b) => a.start - b.start);
}

const filled = (written: string, match: RegExpMatchArray): string =>
  written.replace(/\$(\d)/g, (_, index: string) => match[Number(index)] ?? '');
