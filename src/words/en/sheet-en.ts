import { plural } from '../number-format.js';
import type { SheetWords } from '../sheet-words.js';
import type { EnglishTerms } from './terms-en.js';

/** `12`, `12 and 15`, `12, 15 and 20`. */
const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join() : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

export const sheetIn = ({ cut: cutWord, cutShort, scene }: EnglishTerms): SheetWords => ({
  language: 'en',
  headSeparator: ' · ',
  title: 'title',
  episode: 'episode',
  scene,
  cut: cutWord,
  time: 'time',
  feet: 'feet + frames',
  take: 'take',
  page: 'page',
  artist: 'artist',
  signatures: ['layout', 'key', 'director', 'animation director', 'checker', 'in-between'],
  memo: 'memo',
  flashCaution:
    'CAUTION: flashing light can trigger seizures. The finished picture must pass the broadcaster’s or publisher’s test and local rules; this sheet is no such test.',
  stack: 'stack',
  keys: 'key drawings',
  dialogue: 'dialogue',
  cels: 'finished cels',
  camera: 'camera',
  notes: 'notes',
  drawings: 'drawings',
  last: 'last no.',
  // Never broken between its last two words.
  changes: 'added, reused, not\u00a0used',
  added: 'added',
  reused: 'reused',
  missing: 'not used',
  inMemo: 'see memo',
  spreadEvenly: 'words in grey: spread evenly, not read',
  off: 'OFF',
  mono: 'inner voice',
  sound: 'SE',
  music: 'music',
  cutPoint: 'cut point',
  runsOn: 'cycle',
  quoted: (title) => `“${title}”`,
  passes: (times) => `${times} times`,
  memoOn: (page) => `Memo: page ${page}`,
  memoGoesOn: (page) => `goes on on page ${page}`,
  levelsOn: (names, page) => `Levels ${names}: page ${page}`,
  reuse: (level, cut, other) => `${level}: reuse of ${cutWord} ${cut}, level ${other}`,
  lent: (level, borrowers) =>
    `${level} is shown again in ${borrowers.length === 1 ? cutWord : `${cutWord}s`} ${listed(borrowers.map(({ cut, as }) => `${cut} (as ${as})`))}`,
  lentShort: (cuts) => `again in ${cuts.map((cut) => `${cutShort}${cut}`).join(' ')}`,
  changed: (against, bars) => `Changed against ${against}${bars ? ' (bar: rows that differ)' : ''}`,
  unchanged: (against) => `No change against ${against}`,
  handles: (head, tail, length) =>
    `Handles (shaded rows): ${[head && `${head} before the ${cutWord}`, tail && `${tail} after it`].filter(Boolean).join(', ')}. Sheet ${length} in all.`,
  keyCount: (keys) => plural(keys, 'key'),
  backgroundCount: (backgrounds) => plural(backgrounds, 'background'),
  frames: (count) => plural(count, 'frame'),
  framesASecond: (fps) => `${fps} a second`,
  drawingCounts: ({ keys, breakdowns, inbetweens, reused, backgrounds }) =>
    [
      keys > 0 && plural(keys, 'key'),
      breakdowns > 0 && plural(breakdowns, 'breakdown'),
      inbetweens > 0 && plural(inbetweens, 'in-between'),
      reused > 0 && `${reused} reused besides`,
      backgrounds > 0 && `${plural(backgrounds, 'background')} besides`,
    ]
      .filter(Boolean)
      .join(', '),
  handlesLine: (head, tail, length) =>
    `handles ${[head && `${head} before the ${cutWord}`, tail && `${tail} after the ${cutWord}`].filter(Boolean).join(', ')}; sheet ${length} in all`,
  cutNumber: (cut) => `${cutWord} ${cut}`,
  pageOf: (page, pages) => `${page} / ${pages}`,
  footPage: (page) => `page ${page}`,
});
