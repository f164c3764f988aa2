/**
 * The sheet as a table for programs that know nothing of this one: a row a frame, and beside each frame what the printed sheet
 * says there. A cell is filled only where something changes, as on paper.
 */

import { cameraPlan, saidOn } from '../sheet/camera/camera-plan.js';
import { speakerOf, wordStretches } from '../sheet/speech/speech-lanes.js';
import { FRAMES_A_FOOT } from '../shot/settings.js';
import type { Spoken } from '../shot/shot.js';
import { rowName } from '../shot/time-notation.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
import type { SheetWords } from '../words/sheet-words.js';
import { wordsOf } from '../words/words.js';
import { pixelsOf } from './cut-json.js';

/** In a cell: what began above still lasts. */
export const LASTS = '|';
/** In a level's cell: from here on nothing of it is seen. As it is typed. */
export const NOTHING = 'x';

const FIRST_COLUMNS = ['cut', 'frame', 'time', 'handle', 'dialogue', 'sound', 'music', 'notes', 'camera'];
const PLACE_COLUMNS = ['x', 'y', 'width', 'rotation', 'pixelX', 'pixelY', 'pixelWidth'];

/** What the name of a level's column begins with: no other column's name has a blank. */
const LEVEL_COLUMN = 'level ';

/**
 * The columns of a cut, those of its levels last, bottom to top; a level without a timeline is no column. `x`, `y`, `width` are those of the camera in mm of the field, from its
 * centre, y up; `rotation` in degrees clockwise; the pixels are those of the finished picture, y up. Places have three decimals.
 */
export const sheetColumns = (solved: SolvedShot): string[] => [
  ...FIRST_COLUMNS,
  ...PLACE_COLUMNS,
  ...timed(solved).map(({ name }) => LEVEL_COLUMN + name),
];

const timed = ({ levels }: SolvedShot): SolvedLevel[] =>
  levels.filter(({ exposures }) => exposures.length > 0);

/** One row a frame of the sheet, handles included, in the order of `sheetColumns`. */
export function* sheetRows(solved: SolvedShot): Iterable<(string | number)[]> {
  const { shot, camera } = solved;
  const levels = timed(solved);
  const { settings, fps, length, handles } = shot;
  const words = wordsOf(settings).sheet;
  const feet = settings.convention === 'west';
  const unit = feet ? FRAMES_A_FOOT : Math.max(1, Math.round(fps));
  const said = { voice: rowTexts(length), sound: rowTexts(length), music: rowTexts(length) };
  for (const line of shot.spoken) putLine(said[line.kind], line, words);
  const notes = rowTexts(length);
  for (const { frame, text } of shot.notes) notes.put(frame, text);
  const moves = movesBeside(solved);
  for (const { frame, x, y, width, rotation } of camera.frames) {
    const { pixelX, pixelY } = pixelsOf({ screenX: x, screenY: y }, settings);
    yield [
      shot.cut,
      frame,
      rowName(frame, unit, feet),
      frame <= handles.head ? 'head' : frame > length - handles.tail ? 'tail' : '',
      said.voice.on(frame),
      said.sound.on(frame),
      said.music.on(frame),
      notes.on(frame),
      moves.on(frame),
      ...[
        x,
        y,
        width,
        rotation,
        pixelX,
        pixelY,
        (width * settings.output.width) / settings.field.widthMm,
      ].map(rounded),
      ...levels.map(({ exposures }) => {
        const exposure = exposures[frame - 1];
        if (!exposure?.starts) return '';
        return exposure.cel ?? NOTHING;
      }),
    ];
  }
}

/** Three decimals: a thousandth of a millimetre. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;

/** What is said beside the rows of a sheet: texts on the rows where they begin, and how far they last. */
interface RowTexts {
  put(frame: number, text: string): void;
  /** `last` included. */
  lasting(from: number, last: number): void;
  on(frame: number): string;
}

function rowTexts(length: number): RowTexts {
  const texts = new Map<number, string[]>();
  const lasts = new Uint8Array(length + 1);
  return {
    put(frame, text) {
      if (text !== '') texts.set(frame, [...(texts.get(frame) ?? []), text]);
    },
    lasting(from, last) {
      lasts.fill(1, from, last + 1);
    },
    on: (frame) => texts.get(frame)?.join(' / ') ?? (lasts[frame] === 1 ? LASTS : ''),
  };
}

function putLine(column: RowTexts, line: Spoken, words: SheetWords): void {
  const { from, to } = line.frames;
  column.lasting(from, to);
  const stretches = wordStretches(line);
  const speaker = speakerOf(line, words);
  if (stretches[0]?.from !== from) column.put(from, speaker);
  for (const stretch of stretches) {
    column.put(stretch.from, `${stretch.from === from ? speaker : ''} ${stretch.text}`.trim());
  }
}

/** Moves and light by their names on paper, in the sheet's language; on later rows the places and graduations that they reach. */
function movesBeside(solved: SolvedShot): RowTexts {
  const { shot } = solved;
  const { items, fixed } = cameraPlan(solved, shot.settings, undefined);
  const column = rowTexts(shot.length);
  if (fixed !== null) column.put(1, fixed);
  for (const item of items) {
    column.lasting(item.from, item.last);
    for (let frame = item.from; frame <= item.last; frame++) {
      const name = frame === item.from ? (item.names[0] ?? '') : '';
      column.put(frame, `${name} ${saidOn(item, frame - 1, frame)}`.trim());
    }
  }
  return column;
}
