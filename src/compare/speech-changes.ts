/** Dialogue, sound, music and the notes beside the rows. */

import type { Frames, RowNote, Spoken } from '../shot/shot.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { match } from './align.js';
import { within } from './camera-changes.js';
import type { Change, SpeechText, WordChange } from './change.js';

const PLACE = { kind: 'speech' } as const;
const textOf = ({ parts }: Spoken): string => parts.map(({ text }) => text).join(' ');
const speechOf = (spoken: Spoken): SpeechText => ({
  words: spoken.kind,
  speaker: spoken.speaker,
  text: textOf(spoken),
});
const framesOf = ({ from, to }: Frames): Frames => ({ from, to });

export function speechChanges({ shot: old }: SolvedShot, { shot: now }: SolvedShot): Change[] {
  const pairs = match(old.spoken, now.spoken, (a, b) => {
    if (a.kind !== b.kind) return null;
    const text = textOf(a) === textOf(b) ? 0 : sharesWords(textOf(a), textOf(b)) ? 1 : 3;
    const away = Math.abs(a.frames.from - b.frames.from) + Math.abs(a.frames.to - b.frames.to);
    const cost = text + (a.speaker === b.speaker ? 0 : 1.5) + Math.min(3, away / 48) + (away === 0 ? 0 : 0.5);
    return cost < 4 ? cost : null;
  });
  const [kept, stay] = [new Set(pairs.map(([i]) => i)), new Set(pairs.map(([, j]) => j))];
  const changes: Change[] = [];
  const add = (body: WordChange, rows: Frames | null) =>
    changes.push({ ...body, place: PLACE, rows } as Change);
  for (const [i, j] of pairs) {
    const [was, is] = [old.spoken[i]!, now.spoken[j]!];
    const speech = speechOf(is);
    const rows = framesOf(is.frames);
    if (textOf(was) !== speech.text)
      add({ kind: 'speech-text', old: textOf(was), now: speech.text, ...speech }, rows);
    if (was.speaker !== is.speaker)
      add({ kind: 'speech-speaker', old: was.speaker, now: is.speaker, ...speech }, rows);
    if (was.manner !== is.manner)
      add({ kind: 'speech-manner', old: was.manner, now: is.manner, ...speech }, rows);
    const toEnd = was.frames.to === old.length && is.frames.to === now.length;
    const sameTime = was.frames.from === is.frames.from && (was.frames.to === is.frames.to || toEnd);
    if (!sameTime)
      add(
        { kind: 'speech-time', frames: { old: framesOf(was.frames), now: framesOf(is.frames) }, ...speech },
        rows,
      );
    for (const tie of ties(was, is))
      add(
        { kind: 'speech-rows', ...tie, ...speech },
        tie.row.now === null ? rows : { from: tie.row.now, to: tie.row.now },
      );
  }
  for (const [j, spoken] of now.spoken.entries())
    if (!stay.has(j))
      add(
        { kind: 'speech-added', frames: framesOf(spoken.frames), ...speechOf(spoken) },
        framesOf(spoken.frames),
      );
  for (const [i, spoken] of old.spoken.entries())
    if (!kept.has(i))
      add(
        { kind: 'speech-dropped', frames: framesOf(spoken.frames), ...speechOf(spoken) },
        within(spoken.frames, now.length),
      );
  return changes.sort((a, b) => (a.rows?.from ?? 0) - (b.rows?.from ?? 0));
}

/** Words on other rows than the line's own move explains, also where they are other words; of lines with as many parts. */
function ties(was: Spoken, is: Spoken) {
  if (was.parts.length !== is.parts.length) return [];
  const by = is.frames.from - was.frames.from;
  return is.parts.flatMap(({ frame, text }, k) => {
    const before = was.parts[k]!;
    if (before.frame === frame) return [];
    if (before.frame !== null && frame !== null && frame - before.frame === by) return [];
    return [{ word: text, row: { old: before.frame, now: frame } }];
  });
}

function sharesWords(a: string, b: string): boolean {
  const words = (text: string) => new Set(text.toLowerCase().match(/[\p{L}\p{N}]/u) ? pieces(text) : [text]);
  const [one, two] = [words(a), words(b)];
  const shared = [...one].filter((word) => two.has(word)).length;
  return shared * 3 >= Math.max(one.size, two.size);
}

/** Words; of scripts without blanks pairs of letters. */
function pieces(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
    .flatMap((word) =>
      /[\u3040-\u9fff]/.test(word)
        ? Array.from({ length: Math.max(1, word.length - 1) }, (_, i) => word.slice(i, i + 2))
        : [word],
    );
}

export function noteChanges({ shot: old }: SolvedShot, { shot: now }: SolvedShot): Change[] {
  const pairs = match<RowNote>(old.notes, now.notes, (a, b) => {
    const away = Math.abs(a.frame - b.frame);
    if (a.text === b.text) return Math.min(2, away / 48);
    return away === 0 ? 1 : null;
  });
  const [kept, stay] = [new Set(pairs.map(([i]) => i)), new Set(pairs.map(([, j]) => j))];
  const changes: Change[] = [];
  const add = (body: WordChange, frame: number) => {
    const rows = frame > now.length ? null : { from: frame, to: frame };
    changes.push({ ...body, place: { kind: 'notes' }, rows } as Change);
  };
  for (const [i, j] of pairs) {
    const [was, is] = [old.notes[i]!, now.notes[j]!];
    if (was.text !== is.text)
      add({ kind: 'note-text', frame: is.frame, old: was.text, now: is.text }, is.frame);
    else if (was.frame !== is.frame)
      add({ kind: 'note-moved', frame: { old: was.frame, now: is.frame }, text: is.text }, is.frame);
  }
  for (const [j, { frame, text }] of now.notes.entries())
    if (!stay.has(j)) add({ kind: 'note-added', frame, text }, frame);
  for (const [i, { frame, text }] of old.notes.entries())
    if (!kept.has(i)) add({ kind: 'note-dropped', frame, text }, frame);
  return changes.sort((a, b) => (a.rows?.from ?? 0) - (b.rows?.from ?? 0));
}
