/**
 * A reader of CMX 3600 edit lists that shares nothing with the writer, for the tests. Rules as the format is commonly described (from
 * memory): TITLE and FCM lines; events of number, reel, channel, effect, and four timecodes in the order source in, source out,
 * record in, record out, outs not included; a dissolve is two lines of one number, the first a cut of no length from the outgoing reel,
 * the second `D nnn` from the incoming one; `*` begins a remark. Timecode is read by npm smpte-timecode.
 */

import Timecode from 'smpte-timecode';

export interface EdlLine {
  readonly event: number;
  readonly reel: string;
  readonly channel: string;
  readonly effect: 'C' | 'D';
  /** Frames of the dissolve, 0 for a cut. */
  readonly dissolve: number;
  readonly source: readonly [number, number];
  readonly record: readonly [number, number];
}

export interface Edl {
  readonly title: string;
  readonly mode: string;
  readonly lines: readonly EdlLine[];
  /** By event. */
  readonly remarks: ReadonlyMap<number, readonly string[]>;
}

const TIME = String.raw`(\d\d:\d\d:\d\d:\d\d)`;
const EVENT = new RegExp(
  String.raw`^(\d{3})  ([A-Z0-9]{1,8}) +(V) +(?:(C) +|(D) +(\d{3}) )${TIME} ${TIME} ${TIME} ${TIME}$`,
);

/** Throws where a line is none of the format. */
export function readEdl(text: string, fps: number): Edl {
  if (!text.endsWith('\r\n')) throw new Error('the last line has no end');
  const rows = text.slice(0, -2).split('\r\n');
  const title = /^TITLE: (.{0,70})$/.exec(rows[0]!)?.[1];
  const mode = /^FCM: (NON-DROP FRAME|DROP FRAME)$/.exec(rows[1]!)?.[1];
  if (title === undefined || mode === undefined) throw new Error(`no head: ${rows[0]} ${rows[1]}`);
  const lines: EdlLine[] = [];
  const remarks = new Map<number, string[]>();
  for (const row of rows.slice(2)) {
    if (row === '') continue;
    const last = lines.at(-1)?.event ?? 0;
    if (row.startsWith('* ')) remarks.set(last, [...(remarks.get(last) ?? []), row.slice(2)]);
    else lines.push(readEvent(row, fps));
  }
  return { title, mode, lines, remarks };
}

function readEvent(row: string, fps: number): EdlLine {
  const found = EVENT.exec(row);
  if (!found) throw new Error(`no event: ${row}`);
  const [, event, reel, channel, , dissolve, length, ...times] = found;
  const [a, b, c, d] = times.map((time) => frameOf(time, fps));
  return {
    event: Number(event),
    reel: reel!,
    channel: channel!,
    effect: dissolve ? 'D' : 'C',
    dissolve: Number(length ?? 0),
    source: [a!, b!],
    record: [c!, d!],
  };
}

/** Throws for a time that the clock does not have. */
function frameOf(time: string, fps: number): number {
  const read = Timecode(time, fps, false);
  if (read.toString() !== time) throw new Error(`no timecode: ${time}`);
  return read.frameCount;
}

/** What the list shows on each frame of the record, from its first: reel and source frame, two of them in a dissolve. */
export function playEdl({ lines }: Edl): string[][] {
  const start = lines[0]!.record[0];
  const seen: string[][] = [];
  const show = ({ reel, source, record }: EdlLine, frames: number) => {
    for (let i = 0; i < frames; i++) {
      const at = record[0] - start + i;
      seen[at] = [...(seen[at] ?? []), `${reel} ${source[0] + i}`];
    }
  };
  lines.forEach((line, i) => {
    if (line.effect === 'D') show(lines[i - 1]!, line.dissolve);
    show(line, line.record[1] - line.record[0]);
  });
  return seen;
}
