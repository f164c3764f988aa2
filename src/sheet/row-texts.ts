/** What is said beside the rows of a sheet, as text: each where it begins, and how far it lasts. For who cannot draw bars beside rows. */

import type { Shot, Spoken } from '../shot/shot.js';
import { wordStretches } from '../shot/word-stretches.js';
import type { SolvedLight, SolvedMove } from '../solve/camera/solved-camera.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { SheetWords } from '../words/sheet-words.js';
import { cameraPlan, type FormSettings, saidOn } from './camera/camera-plan.js';
import { speakerOf } from './speech/speech-lanes.js';

export interface RowTexts {
  /** '' where nothing begins. Two that begin on one row have ` / ` between them. */
  on(frame: number): string;
  /** Something that began before, or begins here, covers the frame. */
  lasts(frame: number): boolean;
}

/** Lines of these kinds: who speaks, and each stretch of words on the row on which it begins. */
export function speechTexts(shot: Shot, kinds: readonly Spoken['kind'][], words: SheetWords): RowTexts {
  const column = new Column(shot.length);
  for (const line of shot.spoken) {
    if (!kinds.includes(line.kind)) continue;
    const { from, to } = line.frames;
    column.last(from, to);
    const stretches = wordStretches(line);
    const speaker = speakerOf(line, words);
    if (stretches[0]?.from !== from) column.put(from, speaker);
    for (const stretch of stretches) {
      column.put(stretch.from, `${stretch.from === from ? speaker : ''} ${stretch.text}`.trim());
    }
  }
  return column;
}

export function noteTexts({ length, notes }: Shot): RowTexts {
  const column = new Column(length);
  for (const { frame, text } of notes) column.put(frame, text);
  return column;
}

/**
 * Moves and light by their names on paper; on later rows the places and graduations that they reach. `only`: of one of them alone; null:
 * of none.
 */
export function cameraTexts(
  solved: SolvedShot,
  form: FormSettings,
  only?: SolvedMove | SolvedLight | null,
): RowTexts {
  const column = new Column(solved.shot.length);
  const { items, fixed } = cameraPlan(solved, form, undefined);
  if (fixed !== null && only === undefined) column.put(1, fixed);
  for (const item of items) {
    if (only !== undefined && (item.solved ?? item.light) !== only) continue;
    column.last(item.from, item.last);
    for (let frame = item.from; frame <= item.last; frame++) {
      const name = frame === item.from ? (item.names[0] ?? '') : '';
      column.put(frame, `${name} ${saidOn(item, frame - 1, frame)}`.trim());
    }
  }
  return column;
}

class Column implements RowTexts {
  private readonly texts = new Map<number, string>();
  private readonly covered: Uint8Array;

  constructor(length: number) {
    this.covered = new Uint8Array(length + 1);
  }

  put(frame: number, text: string): void {
    if (text === '') return;
    const before = this.texts.get(frame);
    this.texts.set(frame, before === undefined ? text : `${before} / ${text}`);
  }

  /** Both included. */
  last(from: number, to: number): void {
    this.covered.fill(1, from, to + 1);
  }

  on(frame: number): string {
    return this.texts.get(frame) ?? '';
  }

  lasts(frame: number): boolean {
    return this.covered[frame] === 1;
  }
}
