/** Changes of levels, drawings and speech as English sentences, and how English says times, places and names in any change. */

import type {
  ChangeOf,
  Follow,
  Frames,
  Point,
  SeenThing,
  Shown,
  SpeechText,
  Was,
} from '../../compare/change.js';
import {
  type ChangeSentences,
  isLater,
  lasts,
  listOf,
  listsOf,
  type Naming,
  numberRuns,
  rises,
  type SentenceFormat,
} from '../change-sentences.js';
import { figure, plural, share } from '../number-format.js';
import type { EnglishTerms } from './forms-en.js';

export const was = (text: string | number) => `(was ${text})`;
/** `other`: what stood, or stands now, in its place. */
export const quoted = (text: string, t: SentenceFormat, other?: string) => `“${t.brief(text, other)}”`;
export const none = (text: string, t: SentenceFormat) => (text === '' ? 'none' : quoted(text, t));

/** `12 frames`, from a second on `1+12`. */
export function time(frames: number, t: SentenceFormat): string {
  return t.long(frames) ? t.length(Math.abs(frames)) : plural(Math.abs(frames), 'frame');
}

/** `16 frames (was 12)`. */
export function times({ old, now }: Was<number>, t: SentenceFormat): string {
  if (t.long(old) || t.long(now)) return `${t.length(now)} ${was(t.length(old))}`;
  return `${plural(now, 'frame')} ${was(old)}`;
}

export const later = (by: number, t: SentenceFormat) => `${time(by, t)} ${by > 0 ? 'later' : 'earlier'}`;
export const longer = (by: number, t: SentenceFormat) => `${time(by, t)} ${by > 0 ? 'longer' : 'shorter'}`;
export const range = ({ from, to }: Frames, t: SentenceFormat) =>
  from === to ? t.row(from) : `${t.row(from)} to ${t.row(to)}`;

export function seen(it: SeenThing, level: string): string {
  if (it.form === 'empty') return 'empty';
  if (it.form === 'cycle')
    return it.first === it.last ? `the cycle on ${it.first}` : `the cycle ${it.first}-${it.last}`;
  return it.kind === 'key' ? `key ${it.drawing}` : `${level}${it.cel} (${it.drawing})`;
}

export function by({ xMm, yMm }: Point): string {
  const sides = [
    Math.abs(xMm) < 5e-3 ? '' : `${figure(Math.abs(xMm))} mm ${xMm > 0 ? 'right' : 'left'}`,
    Math.abs(yMm) < 5e-3 ? '' : `${figure(Math.abs(yMm))} mm ${yMm > 0 ? 'up' : 'down'}`,
  ].filter(Boolean);
  return sides.join(', ') || 'moved by a hair';
}

export const at = ({ xMm, yMm }: Point) => `${figure(xMm)},${figure(yMm)}`;

export const size = (it: { widthMm: number; heightMm: number } | null) =>
  it ? `${figure(it.widthMm)} x ${figure(it.heightMm)} mm` : 'the usual sheet';

export function timed(name: string, frames: Was<Frames>, t: SentenceFormat): string {
  const shift = isLater(frames);
  const span = `${range(frames.now, t)} ${was(range(frames.old, t))}`;
  if (shift !== null) return `${name} ${later(shift, t)}: ${span}`;
  if (frames.now.to === frames.old.to)
    return `${name} begins ${later(frames.now.from - frames.old.from, t)}: ${span}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  return grown === 0 ? `${name}: ${span}` : `${name} ${longer(grown, t)}: ${span}`;
}

// ---- the cut as a whole, its levels and their artwork

const plain = (label: string) => (change: Was<string>) =>
  `${label} ${change.now || 'none'} ${was(change.old || 'none')}`;
const names = (list: readonly string[]) => list.join(', ') || 'nobody';

export const levelsIn = ({ cut, scene }: EnglishTerms) =>
  ({
    cut: ({ old, now }) => `${cut} ${now} ${was(old)}`,
    time: ({ old, now }, t) => `${cut} ${longer(now - old, t)}: ${t.length(now)} ${was(t.length(old))}`,
    handles: ({ old, now }, t) =>
      `handles: ${t.length(now.head)} before, ${t.length(now.tail)} after the ${cut} ${was(`${t.length(old.head)}, ${t.length(old.tail)}`)}`,
    fps: ({ old, now }) => `${now} frames a second ${was(old)}`,
    'standard-field': ({ old, now }) => `standard field ${size(now)} ${was(size(old))}`,
    title: ({ old, now }, t) => `title ${none(now, t)} ${was(none(old, t))}`,
    scene: plain(scene),
    take: plain('take'),
    artist: ({ old, now }) => `artist ${names(now)} ${was(names(old))}`,
    'line-up': ({ old, now }) => {
      const told = (cuts: readonly string[]) => (cuts.length > 0 ? `${cut} ${cuts.join(', ')}` : 'none');
      return `same as ${told(now)} ${was(told(old))}`;
    },
    memo: ({ old, now }, t) => {
      if (old === null) return `memo added: ${quoted(now!, t)}`;
      return now === null
        ? `memo dropped: ${quoted(old, t)}`
        : `memo reworded: ${quoted(now, t, old)} ${was(quoted(old, t, now))}`;
    },
    stack: ({ old, now }) => `stack, bottom to top: ${now.join(' ')} ${was(old.join(' '))}`,
    'level-added': ({ level, title, drawings, above }, t) =>
      `level ${level}${title ? ` ${quoted(title, t)}` : ''} added, ${above ? `above ${above}` : 'at the bottom'}${drawings ? `: ${plural(drawings, 'drawing')}` : ''}`,
    'level-dropped': ({ level, title, drawings }, t) =>
      `level ${level}${title ? ` ${quoted(title, t)}` : ''} dropped${drawings ? `: ${plural(drawings, 'drawing')}` : ''}`,
    'level-renamed': ({ level, old }) => `level ${old} is called ${level}`,
    'level-title': ({ level, old, now }, t) => `${level}: title ${none(now, t)} ${was(none(old, t))}`,
    'artwork-size': ({ level, old, now }) => `${level}: artwork ${size(now)} ${was(size(old))}`,
    'artwork-home': ({ level, old, now }) =>
      `${level}: artwork ${by({ xMm: now.xMm - old.xMm, yMm: now.yMm - old.yMm })}, at ${at(now)} ${was(at(old))}`,
    'level-manner': ({ level, manner: how, now }) =>
      ({
        free: `${level}: its edges ${now ? 'may' : 'must not'} show`,
        carry: `${level}: ${now ? 'fixed to the camera' : 'no longer fixed to the camera'}`,
        flash: `${level}: ${now ? 'its appearing is a flash' : 'no flash any more'}`,
      })[how],
    'level-others': ({ level, part, old, now }) => {
      const told = (others: readonly string[]) => (others.length > 0 ? others.join(', ') : 'none');
      return part === 'with'
        ? `${level}: drawn to ${told(now)} ${was(told(old))}`
        : `${level}: mask of ${told(now)} ${was(told(old))}`;
    },
    reuse: ({ level, old, now }) => {
      const from = (it: typeof now) => (it ? `${cut} ${it.cut}, level ${it.level}` : 'none');
      return `${level}: ${now ? `reuse of ${from(now)}` : 'no reuse'} ${was(from(old))}`;
    },
    'level-timed': ({ level, now }) =>
      now ? `${level}: has a timeline now` : `${level}: no timeline any more, simply there`,
    direct: ({ level, from, to, now }) =>
      `${level}: ${now ? 'no in-betweens meant' : 'no longer said that no in-betweens are meant'} from key ${from} to key ${to}`,
    'level-emptied': ({ level }) => `${level}: empty throughout`,
  }) satisfies Partial<ChangeSentences>;

// ---- what levels show

function block(first: SeenThing, last: SeenThing, level: string): string {
  const [a, b] = [seen(first, level), seen(last, level)];
  if (a === b) return a;
  if (first.form === 'drawing' && last.form === 'drawing' && first.kind === 'key' && last.kind === 'key')
    return `keys ${first.drawing} to ${last.drawing}`;
  return `${a} to ${b}`;
}

const naming = (level: string): Naming => ({
  one: (it) => seen(it, level),
  full: ({ cel, drawing, way }) => `${level}${cel} (${way!.from}>${way!.to}.${drawing.split('.').at(-1)})`,
  betweens: (count) => plural(count, 'in-between'),
  ends: (first, last, count) => `${first} … ${last} (${count} exposures)`,
  comma: ', ',
});

function follow(it: Follow | null, t: SentenceFormat, level: string): string {
  if (!it) return '';
  const what = it.last ? `what follows up to ${seen(it.last, level)}` : 'what follows';
  return `; ${what} comes ${later(it.by, t)}`;
}

const inCycle = (it: { inCycle: boolean }) => (it.inCycle ? ', in each pass of the cycle' : '');

/** `less`: it gives up its frames. */
function heldBy(holder: SeenThing, level: string, less: boolean): string {
  if (holder.form === 'empty') return less ? 'where it was empty' : 'empty instead';
  return `${seen(holder, level)} held ${less ? 'that much less' : 'instead'}`;
}

function shown(change: ChangeOf<'shown'>, t: SentenceFormat): string {
  const { level, old, now, from, holder } = change;
  const frames = (list: readonly Shown[]) => list.reduce((sum, one) => sum + one.frames, 0);
  const held = holder ? `, ${heldBy(holder, level, frames(now) > frames(old))}` : '';
  const end = `${inCycle(change)}${held}${follow(change.follows, t, level)}`;
  if (old.length === 0) {
    const place = `${t.row(from.now)} for ${time(frames(now), t)}`;
    if (now.every((one) => one.seen.form === 'empty')) return `${level}: empty from ${place}${end}`;
    const fresh = now.some((one) => one.fresh);
    return `${level}: ${listOf(now, naming(level))} ${fresh ? 'added' : 'shown again'} from ${place}${end}`;
  }
  if (now.length === 0) {
    const place = `on ${t.row(from.old)}, ${time(frames(old), t)}`;
    if (old.every((one) => one.seen.form === 'empty')) return `${level}: no longer empty ${was(place)}${end}`;
    const fresh = old.some((one) => one.fresh);
    return `${level}: ${listOf(old, naming(level))} ${fresh ? 'dropped' : 'not shown again'} ${was(place)}${end}`;
  }
  const length =
    frames(old) === frames(now) ? '' : ` for ${times({ old: frames(old), now: frames(now) }, t)}`;
  const [listNow, listOld] = listsOf(now, old, naming(level));
  return `${level}: ${listNow} instead of ${listOld} from ${t.row(from.now)}${length}${end}`;
}

const CHARTS: Readonly<Record<string, string>> = {
  even: 'evenly spaced',
  early: 'crowding the earlier key',
  late: 'crowding the later key',
  both: 'crowding both keys',
};

function chart(name: string, fractions: readonly number[]): string {
  return CHARTS[name] ?? `at ${fractions.map(share).join(' ')}`;
}

function cycle(change: ChangeOf<'cycle'>, t: SentenceFormat): string {
  const { level, what, from, times: count, frames, bounce } = change;
  const start = `${level}: ${seen(change.cycle, level)}`;
  const end = `, from ${t.row(from.now)}${follow(change.follows, t, level)}`;
  if (what === 'bounce')
    return `${start} ${bounce.now ? 'there and back' : 'one way only'} ${was(bounce.old ? 'there and back' : 'one way')}${end}`;
  if (what === 'times') return `${start} runs ${plural(count.now!, 'time')} ${was(count.old!)}${end}`;
  return `${start} lasts ${times(frames, t)}${end}`;
}

export const drawings = {
  exposure: (change, t) => {
    const { level, first, last, count, frames, from } = change;
    const what = block(first, last, level);
    const end = `, from ${t.row(from.now)}${inCycle(change)}${follow(change.follows, t, level)}`;
    if (count > 1) return `${level}: ${what} (${count} exposures) held ${times(frames, t)} each${end}`;
    return `${level}: ${what} held ${longer(frames.now - frames.old, t)}, ${times(frames, t)}${end}`;
  },
  moved: (change, t) => {
    const { level, first, last, from, by } = change;
    const where = `${t.row(from.now)} ${was(t.row(from.old))}${inCycle(change)}`;
    const one = seen(first, level) === seen(last, level);
    if (one && first.form === 'empty') return `${level}: empty ${later(by, t)}, from ${where}`;
    if (one && !change.toEnd) return `${level}: ${seen(first, level)} comes ${later(by, t)}, on ${where}`;
    const name =
      change.toEnd && !rises(first, last)
        ? `everything from ${seen(first, level)} on comes`
        : one
          ? `${seen(first, level)} comes`
          : `${block(first, last, level)} come`;
    return `${level}: ${name} ${later(by, t)}, from ${where}`;
  },
  shown,
  'in-betweens': ({ level, from, to, count, added, dropped, frame, holder, follows }, t) => {
    const more =
      added.length > 0
        ? `, new: ${added.map(({ drawing, cel }) => `${level}${cel} (${drawing})`).join(', ')}`
        : '';
    const less =
      dropped.length > 0
        ? `, gone: ${dropped.map(({ drawing, cel }) => `${level}${cel} (${drawing})`).join(', ')}`
        : '';
    const held = holder
      ? `; ${seen(holder, level)} held ${count.now > count.old ? 'less' : 'more'} for it`
      : '';
    return `${level}: ${count.now === 0 ? 'no in-between' : plural(count.now, 'in-between')} from key ${from} to key ${to} ${was(count.old)}, from ${t.row(frame)}${more}${less}${held}${follow(follows, t, level)}`;
  },
  chart: ({ level, from, to, chart: names, fractions }) =>
    `${level}: in-betweens from key ${from} to key ${to} ${chart(names.now, fractions.now)} ${was(chart(names.old, fractions.old))}`,
  places: ({ level, from, to, drawings }) => {
    const places = drawings.map(
      ({ drawing, cel, old, now }) => `${level}${cel} (${drawing}) at ${share(now)} ${was(share(old))}`,
    );
    return `${level}: on the way from key ${from} to key ${to} lies ${places.join(', ')}`;
  },
  breakdown: ({ level, drawing, cel, now }) =>
    `${level}: ${level}${cel} (${drawing}) is ${now ? 'a breakdown now' : 'no breakdown any more'}`,
  key: ({ level, old, now, frame }, t) => `${level}: key ${now} instead of key ${old}, from ${t.row(frame)}`,
  cycle,
  renumbered: ({ level, numbers }) => {
    const run = ([a, b]: readonly [number, number]) =>
      a === b ? `${level}${a}` : `${level}${a} to ${level}${b}`;
    const runs = numberRuns(numbers).map(
      ({ old, now }) => `${run(old)} ${old[0] === old[1] ? 'is' : 'are'} now ${run(now)}`,
    );
    return `${level}: numbers: ${runs.slice(0, 6).join(', ')}${runs.length > 6 ? ` … (${plural(numbers.length, 'drawing')})` : ''}`;
  },
  rows: ({ level, rows }, t) => `${level}: other drawings${rows ? ` on ${range(rows, t)}` : ''}`,
} satisfies Partial<ChangeSentences>;

// ---- dialogue, sound and notes

const WORDS = { voice: 'dialogue', sound: 'sound', music: 'music' } as const;
const speech = ({ words, speaker, text }: SpeechText, t: SentenceFormat, other?: string) =>
  `${WORDS[words]}${speaker ? ` ${speaker}` : ''} ${quoted(text, t, other)}`;
const MANNERS = { on: 'in picture', off: 'off', mono: 'inner voice' } as const;

export const words = {
  'speech-added': (change, t) => `${speech(change, t)} added: ${range(change.frames, t)}`,
  'speech-dropped': (change, t) => `${speech(change, t)} dropped ${was(range(change.frames, t))}`,
  'speech-time': (change, t) => timed(speech(change, t), change.frames, t),
  'speech-text': (change, t) =>
    `${speech(change, t, change.old)} reworded ${was(quoted(change.old, t, change.now))}`,
  'speech-speaker': (change, t) =>
    `${speech(change, t)}: said by ${change.now || 'nobody'} ${was(change.old || 'nobody')}`,
  'speech-manner': (change, t) => `${speech(change, t)}: ${MANNERS[change.now]} ${was(MANNERS[change.old])}`,
  'speech-rows': (change, t) => {
    const row = (frame: number | null) => (frame === null ? 'no row of its own' : t.row(frame));
    return `${speech(change, t)}: ${quoted(change.word, t)} on ${row(change.row.now)} ${was(row(change.row.old))}`;
  },
  'note-added': ({ frame, text }, t) => `note ${quoted(text, t)} added on ${t.row(frame)}`,
  'note-dropped': ({ frame, text }, t) => `note ${quoted(text, t)} dropped ${was(`on ${t.row(frame)}`)}`,
  'note-moved': ({ frame, text }, t) =>
    `note ${quoted(text, t)} ${later(frame.now - frame.old, t)}, on ${t.row(frame.now)} ${was(t.row(frame.old))}`,
  'note-text': ({ frame, old, now }, t) =>
    `note on ${t.row(frame)} reworded: ${quoted(now, t, old)} ${was(quoted(old, t, now))}`,
} satisfies Partial<ChangeSentences>;
