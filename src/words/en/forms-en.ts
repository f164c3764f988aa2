/** What stands on forms, in English. */

import type { MoveKind } from '../../language/tree-camera.js';
import type {
  CameraPageWords,
  CutListWords,
  DocumentWords,
  FurtherMove,
  RetakeWords,
} from '../document-words.js';
import { plural } from '../number-format.js';
import type { ChartWords, MoveTitle, MoveWords, SheetWords } from '../sheet-words.js';

/** Words of the trade that are others on a western form: it calls a cut a scene, and a scene a sequence. Common practice. */
export interface EnglishTerms {
  readonly cut: string;
  /** Before a number: `c12`. */
  readonly cutShort: string;
  readonly scene: string;
  readonly sceneShort: string;
}

export const JAPAN_TERMS: EnglishTerms = { cut: 'cut', cutShort: 'c', scene: 'scene', sceneShort: 'sc. ' };
export const WEST_TERMS: EnglishTerms = {
  cut: 'scene',
  cutShort: 'sc. ',
  scene: 'sequence',
  sceneShort: 'seq. ',
};

/** At the beginning of a title. */
const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

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
  keys: ['key drawings', 'keys', 'key'],
  dialogue: 'dialogue',
  track: 'track',
  cels: ['finished cels', 'cels'],
  camera: 'camera',
  rowHeads: (feet) => [feet ? "ft'f" : 's+f', 'no.'],
  notes: 'notes',
  drawings: 'drawings',
  last: 'last no.',
  // Never broken between its last two words.
  changes: 'added, reused, not\u00a0used',
  added: 'added',
  reused: 'reused',
  missing: 'not used',
  inMemo: 'see memo',
  spreadWords: 'words in grey: spread over their rows, not read',
  off: 'OFF',
  mono: 'inner voice',
  sound: 'SE',
  music: 'music',
  cutPoint: 'cut point',
  runsOn: 'cycle',
  quoted: (title) => `“${title}”`,
  passes: (times) => `${times} times`,
  memoOn: (page) => `Memo: page ${page}`,
  memoGoesOn: (page) => `continued on page ${page}`,
  levelsOn: (names, page) => `Levels ${names}: page ${page}`,
  drawnWith: (others) => `with ${others}`,
  maskOf: (others) => `mask of ${others}`,
  maskedBy: (others) => `masked by ${others}`,
  drawnTogether: (levels) => `${levels.join(', ')}: drawn to one another, in register`,
  masks: (level, others) => `${level}: mask of ${others.join(', ')}, hides what lies under its paint`,
  noInbetweens: 'no in-b.',
  held: '',
  lineUp: (cut, what) => `same as ${cutWord} ${cut}${what ? `: ${what}` : ''}`,
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
  lineLength: (unit, count, wanted) =>
    `(${count} ${unit === 'mora' ? 'morae' : 'syllables'}, wants about ${wanted})`,
  cutNumber: (cut) => `${cutWord} ${cut}`,
  pageOf: (page, pages) => `${page} / ${pages}`,
  footPage: (page) => `page ${page}`,
});

export const movesIn = ({ cut: cutWord, cutShort }: EnglishTerms): MoveWords => ({
  fix: 'FIX',
  kinds: {
    pan: { name: 'PAN', carrying: 'follow PAN', graduated: 'graduated PAN' },
    truck: { name: '' },
    pull: { name: 'pull' },
    follow: { name: 'follow' },
    slide: { name: 'slide' },
    levelTruck: { name: 'level ' },
    turn: { name: 'turn' },
    shake: { name: 'shake' },
    sway: { name: 'sway' },
  },
  told: {
    ratios: () => 'equal ratios',
    curved: () => 'curved',
    quick: () => 'Q.',
    carry: (levels) => `with ${levels}`,
    direction: (arrow) => arrow,
    way: (way) => way,
    loop: (length) => `loop ${length}`,
    sense: (sense) => sense,
    size: (size) => size,
    period: (time) => `every ${time}`,
    about: (point) => `about ${point}`,
    sideways: (set) => (set === 'yes' ? 'left and right (right first)' : 'up and down (up first)'),
  },
  changed: {
    curved: (_, curved) => (curved ? 'curved' : 'straight'),
    ratios: (_, by) => (by ? 'by equal ratios' : 'by equal widths'),
    quick: (_, quick) => (quick ? 'quick' : 'not quick'),
    carry: (levels) => (levels === '' ? 'carrying no level' : `carrying ${levels}`),
    direction: (direction) => direction,
    loop: (length) => (length === '' ? 'no loop' : `loop of ${length}`),
    about: (point) => (point === '' ? 'about the centre of the artwork' : `about ${point}`),
    sense: (sense) => sense,
    size: (size) => size,
    period: (time) => `every ${time}`,
    sideways: (_, sideways) => (sideways ? 'sideways' : 'up and down'),
  },
  directions: { left: 'to the left', right: 'to the right', up: 'up', down: 'down' },
  swing: (from, to) => `${from} to ${to}`,
  senses: { cw: 'clockwise', ccw: 'counter-clockwise' },
  positiveSenses: { cw: '(+ is clockwise)', ccw: '(+ is counter-clockwise)' },
  exposure: 'double exposure',
  glow: 'glow',
  effect: 'effect',
  wipe: (way) => `WIPE ${way.toUpperCase()}`,
  iris: (way) => `IRIS ${way.toUpperCase()}`,
  irisAt: (iris, point) => `${iris}, centre ${point}`,
  fairing: 'fairing',
  frame: 'f',
  artwork: (size) => `(artwork at least ${size})`,
  until: (value, row) => `${value} until ${row}`,
  on: (frames) => `on ${frames}s`,
  ease: (leave, arrive) => `ease ${leave}/${arrive}`,
  curve: (values) => `curve ${values}`,
  onLegs: (spacing, legs) => `${spacing} (${legs.join(', ')})`,
  onEachLeg: (spacing) => `${spacing} (each leg)`,
  leg: (n) => `leg ${n}`,
  gives: {
    centre: { beside: 'centre', memo: 'gives the centre' },
    width: { beside: 'width', memo: 'gives the width' },
  },
  widthSteps: 'graduated in width',
  fromPage: (page) => `from p.${page}`,
  noLane: (moves) => `No room in the camera column: ${moves}`,
  overlap: (what, way, cut) =>
    `${what} with ${cut === null ? (way === 'in' ? `the ${cutWord} before` : `the next ${cutWord}`) : `${cutShort}${cut}`}`,
  atCutPoint: (cutPoint, overlap) => `${cutPoint}, ${overlap}`,
});

export const moveTitles: { readonly [K in MoveKind]: MoveTitle } = {
  pan: { title: 'Pan', one: 'a pan', rival: 'move of the camera' },
  truck: { title: 'Truck', one: 'a truck', rival: 'move of the camera' },
  pull: { title: 'Pull', one: 'a pull', rival: 'pull' },
  follow: { title: 'Follow', one: 'a follow', rival: 'move of the camera' },
  slide: { title: 'Slide', one: 'a slide', rival: 'slide' },
  levelTruck: { title: 'Truck of a level', one: 'the truck of a level', rival: 'truck' },
  turn: { title: 'Turn of a level', one: 'a turn', rival: 'turn' },
  shake: { title: 'Shake', one: 'a shake', rival: 'shake' },
  sway: { title: 'Sway', one: 'a sway', rival: 'sway' },
};

export const charts: ChartWords = {
  headings: { number: 'No.', drawing: 'drawing', way: 'fraction', frames: 'frames' },
  goesOn: '(continued)',
  page: (n) => `charts ${n}`,
  count: (n) => plural(n, 'in-between'),
  even: (passages) => `even: ${passages.join(', ')}`,
  evenOnes: (n) => `${plural(n, 'even passage')} without a chart`,
  remark: (inbetweens, spacing, first) =>
    `${charts.count(inbetweens)}, ${
      { even: 'even', early: 'early', late: 'late', both: 'both', fractions: 'as marked' }[spacing]
    }, from ${first}`,
};

export const documentsIn = ({ cut }: EnglishTerms): DocumentWords => ({
  parts: {
    cover: 'Cover',
    sheet: 'Sheet',
    charts: 'In-between charts',
    camera: 'Camera chart',
    table: 'Move table',
    strip: 'Scale strip, true size',
    overlay: 'Field overlay, true size',
  },
  blankForms: 'Blank forms',
  newCut: `The ${cut} is new`,
  cut: (name) => `${capital(cut)} ${name}`,
  noteCut: (name) => `${cut} ${name}`,
  onlyIn: (version, cuts, count) =>
    `only ${version === null ? 'now' : `in ${version}`}: ${count === 1 ? cut : `${cut}s`} ${cuts}`,
});

export const retakesIn = ({ cut }: EnglishTerms): RetakeWords => ({
  note: 'Retake note',
  summary: 'Retakes',
  notePage: (n) => `retake ${n}`,
  against: (version) => `against ${version}`,
  changes: (count) => plural(count, 'change'),
  cuts: (count) => plural(count, cut),
  changeCount: 'changes',
  heads: {
    number: 'no.',
    change: 'change',
    before: 'before',
    after: 'after',
    reason: 'reason',
    askedBy: 'asked by',
    answer: 'answer',
    cut,
    title: 'title',
    time: 'time',
    where: 'where',
    done: 'done, date',
  },
  places: { speech: 'dialogue, sound', camera: 'camera', notes: 'notes', head: `whole ${cut}` },
  newCut: `new ${cut}`,
  droppedCut: `${cut} dropped`,
});

export const cameraPages: CameraPageWords = {
  camera: (n) => `camera ${n}`,
  table: (n) => `moves ${n}`,
  strip: (n) => `strip ${n}`,
  overlay: (n) => `overlay ${n}`,
  scale: 'scale',
  standard: 'standard field',
  before: (row) => `before ${row}`,
  beforeRow: (row) => `before row ${row}`,
  row: (row) => `row ${row}`,
  sheet: 'paper',
  least: 'smallest that will do',
  loop: 'loop',
  centre: 'centre',
  width: 'width',
  turned: 'turned',
  unused: 'not used',
  only: { centre: 'centre only', width: 'width only' },
  outlines: {
    sheet: (levels) => `paper of ${levels}`,
    needed: (levels) => `smallest that will do for ${levels}`,
    start: (levels) => `level ${levels} at the start`,
    end: (levels) => `level ${levels} at the end`,
  },
  fieldNamed: (name) => `field ${name}`,
  levelNamed: (name) => `level ${name}`,
  titled: (name, title) => `${name} “${title}”`,
  way: (way, step, from, to) =>
    `distance ${way}, largest step ${step} a frame (${from === to ? `row ${from}` : `rows ${from}–${to}`})`,
  widthWay: (all, step, from, to) =>
    `width changes by ${all}, largest step ${step} a frame (${from === to ? `row ${from}` : `rows ${from}–${to}`})`,
  countNought: (place) => `graduations: 0 = ${place}`,
  eachFrame: (step) => `${step} on each frame, the first one too`,
  eachFrameFrom: (step, row) => `${step} on each frame from row ${row} on`,
  cornerWay: (corner) => `graduated along the ${corner} corner`,
  corners: {
    topLeft: 'upper left',
    topRight: 'upper right',
    bottomRight: 'lower right',
    bottomLeft: 'lower left',
  },
  alongCurve: 'measured along the curve',
  slope: (degrees, up, right) => `leads ${degrees}° ${up ? 'up' : 'down'} to the ${right ? 'right' : 'left'}`,
  thinned: (closest) => `closer than ${closest} only every 2nd, 4th … graduation is drawn`,
  edgeShows: (row, by, worst) => `edge shows from row ${row}, at most ${by} on row ${worst}`,
  cameraOn: (row) => `camera on row ${row}`,
  trueSize: 'Print at 100 %. This rule is 100 mm long.',
  join: 'lay the next piece on up to the inner dashed line',
  tooLong: (shown, all) => `Shown here: ${shown} of ${all}. The rest is in the move table.`,
  tile: (n, of) => `piece ${n} of ${of}`,
  tooMany: (shown) => `Too large to print whole: these are the first ${shown} pages. See the camera chart.`,
  at: (column, columns, row, rows) => `column ${column} of ${columns}, row ${row} of ${rows}`,
  columns: {
    frame: 'frame',
    time: 'time',
    width: 'width',
    field: 'field',
    turn: 'turned',
    step: 'step',
    widthStep: 'width ±',
    shareStep: '% of row before',
    scaleStep: 'scale ±',
    turnStep: 'turned ±',
    scale: 'scale %',
    camera: 'camera',
  },
  measured: ({ unit, places, camera, levels, stepsAlone, degrees }) => {
    const further = (moves: readonly FurtherMove[]) =>
      moves.length > 0 ? `, ${listed(moves)} included` : '';
    return [
      unit && `${unit} on the artwork${places ? ', x to the right, y up' : ''}`,
      camera && `camera from the centre of the standard field${further(camera)}`,
      ...levels.map(
        (level) => `${level.names}: centre of the artwork from its home${further(level.further)}`,
      ),
      stepsAlone && 'steps of the one move alone',
      degrees && 'degrees clockwise',
    ]
      .filter(Boolean)
      .join('; ');
  },
};

export const cutListIn = ({ cut, scene, sceneShort }: EnglishTerms): CutListWords => ({
  list: `${capital(cut)} list`,
  rhythm: 'Rhythm',
  listPage: (n) => `${cut} list ${n}`,
  heads: {
    title: 'title',
    episode: 'episode',
    cuts: `${cut}s`,
    running: 'running time',
    budget: 'budget',
    page: 'page',
  },
  columns: {
    cut,
    title: 'title',
    scene,
    time: 'time',
    frames: 'frames',
    feet: 'feet',
    rows: 'rows',
    levels: 'levels',
    keys: 'keys',
    breakdowns: 'break-\ndowns',
    inbetweens: 'in-be-\ntweens',
    drawings: 'draw-\nings',
    reused: 'reused',
    camera: 'camera',
    sheetPages: 'sheet\npages',
    pages: 'all\npages',
    artist: 'artist',
    problems: 'errors,\nwarnings',
    remarks: 'remarks',
  },
  total: 'total',
  artists: {
    artist: 'artist',
    cuts: `${cut}s`,
    running: 'running time',
    drawings: 'drawings',
    nobody: 'nobody named',
  },
  over: (time) => `${time} over`,
  under: (time) => `${time} under`,
  exact: 'to the frame',
  noBudget: 'none',
  backgroundsNote: (backgrounds) => `${plural(backgrounds, 'background')} painted, in no other count.`,
  pace: (drawings, time) => `${drawings} new drawings a second; a ${cut} runs ${time} on average`,
  sharedNote: (cuts) =>
    `${plural(cuts, cut)} of several artists: counted for each of them here, once in the total.`,
  unsoundNote: (cuts, untimed) =>
    `${plural(cuts, cut)} with errors (!): counted as far as could be read, not printed${untimed > 0 ? `; the time of ${untimed} is not known and not in the total` : ''}.`,
  problemsNote: (errors, warnings) => `${plural(errors, 'error')}, ${plural(warnings, 'warning')}`,
  overlapNote: (time) => `The times of the ${cut}s come to ${time}; overlaps run once.`,
  legend: {
    camera: 'camera or level moves',
    dialogue: 'dialogue',
    density: 'new drawings a second:',
    overlap: 'overlap',
    scene: `new ${scene}`,
    unsound: `${cut} with errors`,
    budget: 'budget ends',
    notDrawn: (cuts) => `Not drawn, time not known: ${cuts}`,
  },
  scene: (name) => `${sceneShort}${name}`,
});
