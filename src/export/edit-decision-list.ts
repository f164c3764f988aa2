/**
 * An edit as a CMX 3600 edit list: one event a cut, a dissolve as an event of two lines. Its columns, its numbers of three digits
 * and its reel names of eight characters are the format's.
 */

import type { Messages } from '../language/catalogue/index.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import type { Light } from '../shot/camera/camera-model.js';
import type { Shot } from '../shot/shot.js';
import { timecode } from '../shot/time-notation.js';
import type { EditCut, EpisodeEdit } from './episode-edit.js';

/** Frames a second whose timecode needs no dropping and that edit lists are written in. */
export const EDL_SPEEDS: readonly number[] = [24, 25, 30];
/** Event numbers and lengths of dissolves have three digits. */
const MOST = 999;
/**
 * Many controllers that read the format keep the length of an effect in one byte: from memory, as manuals of edit controllers
 * give 255 frames for the longest dissolve.
 */
const MOST_READ = 255;
const TITLE_LENGTH = 70;

/** Null where the edit does not fit the format; then the diagnostics, else warnings, are errors that say why. `start`: where the record begins, in frames. */
export function edlText(
  edit: EpisodeEdit,
  start: number,
): { text: string | null; diagnostics: readonly Diagnostic[] } {
  const diagnostics = limits(edit, start);
  if (diagnostics.length > 0) return { text: null, diagnostics };
  const reels = reelsOf(edit.cuts.map(({ solved }) => solved.shot.cut));
  const lines = edit.cuts.flatMap((_, i) => event(edit, i, reels, start));
  const head = [`TITLE: ${plain(edit.title).slice(0, TITLE_LENGTH)}`, 'FCM: NON-DROP FRAME', ''];
  return { text: `${[...head, ...lines].join('\r\n')}\r\n`, diagnostics: longDissolves(edit) };
}

function longDissolves({ cuts }: EpisodeEdit): Diagnostic[] {
  return cuts.flatMap(({ solved: { shot }, dissolve }) =>
    dissolve && dissolve.length > MOST_READ
      ? [
          diagnose('edit-list-long', shot.spans.cut, {
            cut: shot.cut,
            frames: dissolve.length,
            most: MOST_READ,
          }),
        ]
      : [],
  );
}

function limits({ cuts, fps, frames }: EpisodeEdit, start: number): Diagnostic[] {
  const faults: Diagnostic[] = [];
  const fault = ({ spans }: Shot, parameters: Messages['edit-list-limit']) =>
    void faults.push(diagnose('edit-list-limit', spans.cut, parameters));
  const first = cuts[0]!.solved.shot;
  if (!EDL_SPEEDS.includes(fps)) {
    fault(first, { variant: 'speed', cut: first.cut, fps });
  }
  if (cuts.length > MOST) {
    const { shot } = cuts[MOST]!.solved;
    fault(shot, { variant: 'events', cut: shot.cut, cuts: cuts.length, most: MOST });
  }
  for (const { solved, dissolve } of cuts) {
    if (dissolve && dissolve.length > MOST)
      fault(solved.shot, { variant: 'overlap', frames: dissolve.length, most: MOST });
  }
  if (start + frames >= 24 * 3600 * fps) {
    const last = cuts.find(({ record, source }) => start + record + source.frames >= 24 * 3600 * fps)!;
    fault(last.solved.shot, { variant: 'timecode', cut: last.solved.shot.cut });
  }
  return faults;
}

/** An event takes the cut from the start of its dissolve (or its cut point) to where the next one's begins. */
function event({ cuts, fps }: EpisodeEdit, index: number, reels: readonly string[], start: number): string[] {
  const cut = cuts[index]!;
  const next = cuts[index + 1];
  const { dissolve, source } = cut;
  const lead = dissolve?.before ?? 0;
  const frames = lead + source.frames - (next?.dissolve?.before ?? 0);
  const sourceIn = source.from - lead;
  const recordIn = start + cut.record - lead;
  const number = String(index + 1).padStart(3, '0');
  const line = (reel: string, effect: string, from: number, long: number): string =>
    [
      `${number}  ${reel.padEnd(8)} V     ${effect}`,
      ...[from, from + long, recordIn, recordIn + long].map((frame) => timecode(frame, fps)),
    ].join(' ');
  const reel = reels[index]!;
  if (!dissolve) {
    return [
      line(reel, 'C       ', sourceIn, frames),
      `* FROM CLIP NAME: ${plain(cut.name)}`,
      ...remarks(cut),
    ];
  }
  const before = cuts[index - 1]!;
  const left = before.source.from + before.source.frames - lead;
  return [
    line(reels[index - 1]!, 'C       ', left, 0),
    line(reel, `D    ${String(dissolve.length).padStart(3, '0')}`, sourceIn, frames),
    `* FROM CLIP NAME: ${plain(before.name)}`,
    `* TO CLIP NAME: ${plain(cut.name)}`,
    ...remarks(cut),
  ];
}

/** Fades are in the finished picture, as the sheet orders them: told, so that nobody makes them a second time. */
function remarks({ solved }: EditCut): string[] {
  return solved.shot.camera.light.flatMap((one) => {
    const what = covering(one);
    if (what === null) return [];
    const { from, to } = one.frames;
    return [`* COMMENT: ${what} ON FRAMES ${from} TO ${to} OF THE SHEET, DONE IN THE PICTURE`];
  });
}

/** How a cut comes out of black or white or goes into it, in words; null for other light. */
function covering(light: Light): string | null {
  const way = light.kind === 'fade' || light.kind === 'wipe' || light.kind === 'iris' ? light.way : 'in';
  switch (light.kind) {
    case 'fade':
      return `${way === 'in' ? 'FADE IN FROM' : 'FADE OUT TO'} ${light.white ? 'WHITE' : 'BLACK'}`;
    case 'wipe':
      return `WIPE ${way.toUpperCase()} ${light.towards.toUpperCase()}`;
    case 'iris':
      return `IRIS ${way.toUpperCase()}`;
    default:
      return null;
  }
}

/** One line of text, without anything that a reader of lines could stumble over. */
function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\s]+/gu, ' ').trim();
}

// ---- names that an edit list can call cuts by

/** Characters of a reel's name. */
const LENGTH = 8;
/** What edit lists call black and what has no reel. */
const TAKEN = ['BL', 'AX'];

/**
 * For each cut a name of its own, of at most eight capital letters and digits: `C` and the number. What the format has no letters for
 * is left out; a name that is too long keeps its end, and one that is taken gets a number.
 */
export function reelsOf(cuts: readonly string[]): string[] {
  const taken = new Set(TAKEN);
  return cuts.map((cut) => {
    const letters = cut
      .normalize('NFKC')
      .toUpperCase()
      .replace(/[^A-Z0-9]/g, '');
    const name = `C${letters.slice(1 - LENGTH)}`;
    let free = name;
    for (let i = 2; taken.has(free); i++) free = `${name.slice(0, LENGTH - 1 - String(i).length)}X${i}`;
    taken.add(free);
    return free;
  });
}
