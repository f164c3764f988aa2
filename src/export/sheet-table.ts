/**
 * The sheet as a table for programs that know nothing of this one: a row a frame, and beside each frame what the printed sheet
 * says there. A cell is filled only where something changes, as on paper.
 */

import { cameraTexts, noteTexts, speechTexts } from '../sheet/row-texts.js';
import { unitOf } from '../sheet/sheet-geometry.js';
import { rowName } from '../shot/time-notation.js';
import type { SolvedLevel, SolvedShot } from '../solve/solved-shot.js';
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
  const unit = unitOf(settings, fps);
  const columns = [
    speechTexts(shot, ['voice'], words),
    speechTexts(shot, ['sound'], words),
    speechTexts(shot, ['music'], words),
    noteTexts(shot),
    cameraTexts(solved, settings),
  ];
  for (const { frame, x, y, width, rotation } of camera.frames) {
    const { pixelX, pixelY } = pixelsOf({ screenX: x, screenY: y }, settings);
    yield [
      shot.cut,
      frame,
      rowName(frame, unit, feet),
      frame <= handles.head ? 'head' : frame > length - handles.tail ? 'tail' : '',
      ...columns.map((column) => column.on(frame) || (column.lasts(frame) ? LASTS : '')),
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
