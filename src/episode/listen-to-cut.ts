/** A compiled cut and its recording → on which rows its lines and their words are spoken. */

import type { Host } from '../host/host.js';
import type { StatementOf } from '../language/tree.js';
import { lineText } from '../language/voice-edits.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { DOUBTFUL, type FoundLine, findLines, type LineToFind } from '../sound/find-lines.js';
import { findSpeech } from '../sound/find-speech.js';
import type { Dictionary } from '../sound/pronunciation.js';
import type { Compiled } from './compile-cut.js';
import { sourceOf } from './track-file.js';

type Voice = StatementOf<'voice'>;

export interface HeardWord {
  /** Its place in the words of the line, as `lineText` joins them: UTF-16 offsets, the second excluded. */
  readonly start: number;
  readonly end: number;
  readonly row: number;
  /** The rows on which its syllables (morae) begin. */
  readonly beats: readonly number[];
}

export interface HeardLine {
  readonly voice: Voice;
  readonly text: string;
  /** Null: it is not in the recording. */
  readonly rows: { readonly from: number; readonly to: number } | null;
  readonly words: readonly HeardWord[];
  /** 0 to 1; see `FoundLine`. */
  readonly likeness: number;
  readonly doubtful: boolean;
  /** What could not be read, by its place in the text. */
  readonly unread: FoundLine['unread'];
}

export interface Heard {
  readonly lines: readonly HeardLine[];
  /** Rows on which somebody speaks, whatever is written. */
  readonly speech: readonly { readonly from: number; readonly to: number }[];
}

export interface ListenOptions {
  readonly dictionary: Dictionary;
  /** Ties that stand in the text are not taken for known. */
  readonly again?: boolean;
  /** Nothing is asked but where somebody speaks. */
  readonly speechOnly?: boolean;
}

/** Null: the cut has no recording that could be read. */
export function listenToCut(host: Host, compiled: Compiled, options: ListenOptions): Heard | null {
  const { solved, tree, trackPath } = compiled;
  const sound = solved?.track?.sound;
  if (!solved || !tree || !sound || trackPath === null) return null;
  const part = host.readPart(trackPath, 0, 0);
  if (!part.ok) return null;
  const { shot } = solved;
  const source = sourceOf(host, trackPath, part.value);
  const window = { firstSample: sound.firstSample, seconds: shot.length / shot.fps };
  const rowAt = (seconds: number): number =>
    Math.max(1, Math.min(shot.length, Math.round(seconds * shot.fps) + 1));
  if (options.speechOnly) {
    const speech = findSpeech(source, window).map(({ from, to }) => ({
      from: rowAt(from),
      to: lastRow(to, solved),
    }));
    return { lines: [], speech };
  }
  const spoken = shot.spoken.filter(({ kind }) => kind === 'voice');
  const voices = spoken.flatMap((line) => {
    const voice = tree.statements.find(
      (one): one is Voice => one.kind === 'voice' && one.span.start === line.span.start,
    );
    return voice ? [{ line, voice }] : [];
  });
  const asked = voices.map(({ line, voice }): LineToFind => {
    let at = 0;
    const ties = line.parts.flatMap(({ frame }, i) => {
      const start = at;
      at += voice.words[i]!.text.length + 1;
      return frame === null || options.again ? [] : [{ at: start, seconds: (frame - 1) / shot.fps }];
    });
    return { text: lineText(voice), from: null, to: null, ties };
  });
  const found = findLines(source, window, asked, options.dictionary);
  const lines = voices.map(({ voice }, i): HeardLine => {
    const { words, unread, likeness } = found[i]!;
    const last = words?.at(-1);
    return {
      voice,
      text: asked[i]!.text,
      rows: words && last ? { from: rowAt(words[0]!.seconds), to: lastRow(last.endSeconds, solved) } : null,
      words: (words ?? []).map(({ start, end, seconds, beats }) => ({
        start,
        end,
        row: rowAt(seconds),
        beats: beats.map(rowAt),
      })),
      likeness,
      doubtful: words !== null && likeness < DOUBTFUL,
      unread,
    };
  });
  return { lines, speech: [] };
}

/** The last row on which something is heard that ends at a time; at least the first. */
function lastRow(seconds: number, { shot }: SolvedShot): number {
  return Math.max(1, Math.min(shot.length, Math.round(seconds * shot.fps)));
}
