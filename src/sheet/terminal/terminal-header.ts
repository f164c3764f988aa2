/** What stands over the rows: a fact a line, so that two versions can be compared line by line. */

import { hanging } from '../../layout/text-table.js';
import type { Shot } from '../../shot/shot.js';
import { feetAndFrames, rowName, secondsAndFrames, secondsText } from '../../shot/time-notation.js';
import type { SolvedLevel, SolvedShot } from '../../solve/solved-shot.js';
import type { SheetWords } from '../../words/sheet-words.js';
import { cameraMemo } from '../camera/camera-memo.js';
import type { CameraPlan } from '../camera/lane-assignment.js';
import type { LentLevel } from '../page-look.js';
import { wholeText } from '../speech/speech-lanes.js';
import { speakerOf } from './terminal-lanes.js';

export interface TerminalHead {
  readonly solved: SolvedShot;
  readonly words: SheetWords;
  readonly camera: CameraPlan;
  readonly lent: readonly LentLevel[];
  /** Rows of a second or foot, and whether they are feet. */
  readonly unit: number;
  readonly feet: boolean;
}

const INDENT = 4;

export function headLines(headed: TerminalHead, width: number): string[] {
  return facts(headed)
    .filter((line) => line !== '')
    .flatMap((line) => hanging(line, width, INDENT));
}

function facts({ solved, words, camera, lent, unit, feet }: TerminalHead): string[] {
  const { shot, levels, counts } = solved;
  const { settings } = shot;
  const labelled = (label: string, value: string): string => (value === '' ? '' : `${label} ${value}`);
  const name = (frame: number): string => rowName(frame, unit, feet);
  return [
    [words.cutNumber(shot.cut), shot.title && words.quoted(shot.title)].filter(Boolean).join(' '),
    [
      `${words.time} ${secondsText(shot.time, shot.fps)}`,
      feet ? feetAndFrames(shot.time) : '',
      words.frames(shot.time),
      words.framesASecond(shot.fps),
    ]
      .filter(Boolean)
      .join(' · '),
    handles(shot, words),
    [settings.title, settings.episode].filter(Boolean).join(' '),
    labelled(words.scene, shot.scene),
    labelled(words.take, shot.take),
    labelled(words.artist, shot.artists.join(', ')),
    [`${words.drawings} ${counts.drawings}`, words.drawingCounts(counts)].filter(Boolean).join(': '),
    `${words.stack} ${levels.map((level) => level.name).join(' < ')}`,
    ...levels.filter(({ timed }) => timed).map((level) => levelFacts(level, words)),
    ...levels.flatMap(({ name: level, reuse }) =>
      reuse ? [words.reuse(level, reuse.cut, reuse.level)] : [],
    ),
    ...[...new Set(lent.map(({ level }) => level))].map((level) =>
      words.lent(
        level,
        lent.filter((one) => one.level === level),
      ),
    ),
    ...(solved.camera.flashes ? [words.flashCaution] : []),
    ...shot.memos.map(({ text }) => `${words.memo} ${text.replace(/\s+/gu, ' ')}`),
    ...cameraMemo(camera).map((line) => `${words.camera} ${line}`),
    ...shot.spoken.map((line) => {
      const kind = { voice: '', sound: words.sound, music: words.music }[line.kind];
      const rows = `${name(line.frames.from)}–${name(line.frames.to)}`;
      return [rows, kind, speakerOf(line, words), words.quoted(wholeText(line))].filter(Boolean).join(' ');
    }),
    ...shot.notes.map(({ frame, text }) => `${name(frame)} ${words.notes} ${text.replace(/\s+/gu, ' ')}`),
  ];
}

function handles({ handles: { head, tail }, length, fps }: Shot, words: SheetWords): string {
  if (head === 0 && tail === 0) return '';
  const long = (frames: number): string => (frames === 0 ? '' : secondsAndFrames(frames, fps));
  return words.handlesLine(long(head), long(tail), secondsAndFrames(length, fps));
}

/** `A “Pim”: drawings 11, last no. 12, no 7`. */
function levelFacts(
  { name, title, background, drawings, lastCel, missing }: SolvedLevel,
  words: SheetWords,
): string {
  const own = drawings.filter(({ reused }) => !reused).length;
  const gone = missing.map(({ cel }) => cel).join(' ');
  return [
    `${name}${title && ` ${words.quoted(title)}`}: ${background ? words.backgroundCount(own) : `${words.drawings} ${own}`}`,
    `${words.last} ${lastCel}`,
    gone && `${words.missing} ${gone}`,
  ]
    .filter(Boolean)
    .join(', ');
}
