import type { Spacing } from '../shot/camera.js';
import type { Frames } from '../shot/shot.js';
import type {
  ChangeOf,
  Follow,
  LightSeen,
  MannerValue,
  MoveSeen,
  Point,
  Seen,
  Shown,
  Speech,
  Speed,
  Was,
} from './change.js';
import {
  figure,
  isLater,
  lasts,
  listOf,
  listsOf,
  type Naming,
  numberRuns,
  share,
  type Telling,
} from './telling.js';
import type { Sentences } from './words.js';

const plural = (count: number, word: string) => `${count} ${word}${count === 1 ? '' : 's'}`;
const was = (text: string | number) => `(was ${text})`;
const quoted = (text: string, t: Telling) => `“${t.brief(text)}”`;
const none = (text: string, t: Telling) => (text === '' ? 'none' : quoted(text, t));

/** `12 frames`, from a second on `1+12`. */
function time(frames: number, t: Telling): string {
  return t.long(frames) ? t.length(Math.abs(frames)) : plural(Math.abs(frames), 'frame');
}

/** `16 frames (was 12)`. */
function times({ old, now }: Was<number>, t: Telling): string {
  if (t.long(old) || t.long(now)) return `${t.length(now)} ${was(t.length(old))}`;
  return `${plural(now, 'frame')} ${was(old)}`;
}

const later = (by: number, t: Telling) => `${time(by, t)} ${by > 0 ? 'later' : 'earlier'}`;
const longer = (by: number, t: Telling) => `${time(by, t)} ${by > 0 ? 'longer' : 'shorter'}`;
const range = ({ from, to }: Frames, t: Telling) =>
  from === to ? t.row(from) : `${t.row(from)} to ${t.row(to)}`;

function seen(it: Seen, level: string): string {
  if (it.form === 'empty') return 'empty';
  if (it.form === 'cycle')
    return it.first === it.last ? `the cycle on ${it.first}` : `the cycle ${it.first}-${it.last}`;
  return it.kind === 'key' ? `key ${it.drawing}` : `${level}${it.cel} (${it.drawing})`;
}

function block(first: Seen, last: Seen, level: string): string {
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

function follow(it: Follow | null, t: Telling, level: string): string {
  if (!it) return '';
  const what = it.last ? `what follows up to ${seen(it.last, level)}` : 'what follows';
  return `; ${what} comes ${later(it.by, t)}`;
}

const inCycle = (it: { inCycle: boolean }) => (it.inCycle ? ', in each pass of the cycle' : '');

function shown(change: ChangeOf<'shown'>, t: Telling): string {
  const { level, old, now, from, holder } = change;
  const frames = (list: readonly Shown[]) => list.reduce((sum, one) => sum + one.frames, 0);
  const held = holder
    ? frames(now) > frames(old)
      ? `, ${seen(holder, level)} held that much less`
      : `, ${seen(holder, level)} held instead`
    : '';
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

function cycle(change: ChangeOf<'cycle'>, t: Telling): string {
  const { level, what, from, times: count, frames, bounce } = change;
  const start = `${level}: ${seen(change.cycle, level)}`;
  const end = `, from ${t.row(from.now)}${follow(change.follows, t, level)}`;
  if (what === 'bounce')
    return `${start} ${bounce.now ? 'there and back' : 'one way only'} ${was(bounce.old ? 'there and back' : 'one way')}${end}`;
  if (what === 'times') return `${start} runs ${plural(count.now!, 'time')} ${was(count.old!)}${end}`;
  return `${start} lasts ${times(frames, t)}${end}`;
}

const SENSE = { in: 'T.U', out: 'T.B' } as const;

function moveName({ move, levels, places, sense, quick }: MoveSeen): string {
  const route = places.join('→');
  const who = levels.join(',');
  switch (move) {
    case 'pan':
      return `PAN ${route}`;
    case 'truck':
      return `${quick ? 'Q.' : ''}${sense ? SENSE[sense] : 'T.U/T.B'} ${route}`;
    case 'levelTruck':
      return `${who} layer ${sense ? SENSE[sense] : 'T.U/T.B'} ${route}`;
    case 'slide':
      return `${who} slide ${route}`;
    case 'turn':
      return `${who} turn ${route}`;
    case 'roll':
      return `${who} sway`;
    case 'shake':
      return 'shake';
    default:
      return `${who} ${move}`;
  }
}

/** `, faster: largest step 1.53 mm/f (was 1.36)`; '' where the step stays. */
function speed({ largestStepMm: { old, now } }: Speed): string {
  if (Math.abs(old - now) < 0.005) return '';
  return `, ${now > old ? 'faster' : 'slower'}: largest step ${figure(now)} mm/f ${was(figure(old))}`;
}

function moveTime(change: ChangeOf<'move-time'>, t: Telling): string {
  const { frames, stops, places } = change;
  const by = isLater(frames);
  const name = moveName(change);
  const span = `${range(frames.now, t)} ${was(range(frames.old, t))}`;
  if (stops && by === 0) {
    const moved = stops.now.flatMap((frame, i) =>
      frame === stops.old[i]
        ? []
        : [`${places[i]} on ${t.row(Math.max(1, frame))} ${was(t.row(Math.max(1, stops.old[i]!)))}`],
    );
    return `${name}: ${moved.join(', ')}${speed(change)}`;
  }
  if (by !== null) return `${name} ${later(by, t)}: ${span}${speed(change)}`;
  if (frames.now.to === frames.old.to)
    return `${name} begins ${later(frames.now.from - frames.old.from, t)}: ${span}${speed(change)}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  const how = grown === 0 ? '' : ` ${longer(grown, t)}`;
  return `${name}${how}: ${span}${speed(change)}`;
}

function moveWay(change: ChangeOf<'move-way'>): string {
  const { distanceMm, rateMm } = change;
  const name = moveName(change);
  const way = `${figure(distanceMm.now)} mm ${was(`${figure(distanceMm.old)} mm`)}`;
  if (rateMm.old === null || rateMm.now === null) return `${name} ${way}${speed(change)}`;
  const how = rateMm.now > rateMm.old ? 'faster' : 'slower';
  return `${name} ${how}: ${figure(rateMm.now)} mm/f ${was(`${figure(rateMm.old)} mm/f`)}, ${way} in all`;
}

/** Which leg of several. */
const legOf = ({ leg, places }: ChangeOf<'move-spacing'>) =>
  places.length > 2 ? `, ${places[leg]}→${places[leg + 1]}` : '';

function spacing(it: Spacing): string {
  switch (it.form) {
    case 'linear':
      return 'even speed';
    case 'ease':
      return `ease ${it.leave}/${it.arrive}`;
    case 'curve':
      return `curve ${[it.x1, it.y1, it.x2, it.y2].map(figure).join(' ')}`;
    case 'steps':
      return 'graduations by hand';
    case 'fair':
      return `fairing ${it.mark} on frame ${it.frame} with ${figure(it.share * 100)}%`;
  }
}

function manner(name: string, value: MannerValue, t: Telling): string {
  switch (name) {
    case 'kind':
      return value === 'pan' ? 'PAN' : 'truck';
    case 'ticks':
      return value ? 'graduated frame by frame' : 'not graduated';
    case 'ratios':
      return value ? 'by equal ratios' : 'by equal widths';
    case 'quick':
      return value ? 'quick' : 'not quick';
    case 'on':
      return `on ${value}s`;
    case 'carry':
      return value === '' ? 'carrying no level' : `carrying ${value}`;
    case 'levels':
      return value === '' ? 'no level' : `level ${value}`;
    case 'sense':
      return value === 'cw' ? 'clockwise' : 'counter-clockwise';
    case 'sideways':
      return value ? 'sideways' : 'up and down';
    case 'loop':
      return value === null ? 'no loop' : `loop of ${value} mm`;
    case 'about':
      return value === null ? 'about the centre of the artwork' : `about ${value}`;
    case 'size':
      return `${String(value).replace('>', ' to ')} mm`;
    case 'period':
      return `every ${t.length(Number(value))}`;
    case 'length':
      return t.length(Number(value));
    case 'white':
      return value ? 'white' : 'black';
    case 'text':
      return quoted(String(value), t);
    case 'direction':
      return /^(left|right)$/.test(String(value)) ? `to the ${value}` : String(value);
    default:
      return String(value).replace('>', ' to ');
  }
}

function by({ xMm, yMm }: Point): string {
  const sides = [
    Math.abs(xMm) < 5e-3 ? '' : `${figure(Math.abs(xMm))} mm ${xMm > 0 ? 'right' : 'left'}`,
    Math.abs(yMm) < 5e-3 ? '' : `${figure(Math.abs(yMm))} mm ${yMm > 0 ? 'up' : 'down'}`,
  ].filter(Boolean);
  return sides.join(', ') || 'moved by a hair';
}

const at = ({ xMm, yMm }: Point) => `${figure(xMm)},${figure(yMm)}`;

function lightName({ light, way, white, levels, text }: LightSeen, t: Telling): string {
  const who = levels.join(',');
  switch (light) {
    case 'fade':
      return `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;
    case 'overlap':
      return way === 'in' ? 'O.L with the cut before' : 'O.L with the next cut';
    case 'expose':
      return `${who} double exposure`;
    case 'glow':
      return `${who} light through`;
    case 'effect':
      return `effect ${quoted(text, t)}${who ? ` on ${who}` : ''}`;
  }
}

const WORDS = { voice: 'dialogue', sound: 'sound', music: 'music' } as const;
const speech = ({ words, speaker, text }: Speech, t: Telling) =>
  `${WORDS[words]}${speaker ? ` ${speaker}` : ''} ${quoted(text, t)}`;
const MANNERS = { on: 'in picture', off: 'off', mono: 'inner voice' } as const;

const plain = (label: string) => (change: Was<string>) =>
  `${label} ${change.now || 'none'} ${was(change.old || 'none')}`;
const names = (list: readonly string[]) => list.join(', ') || 'nobody';
const size = (it: { widthMm: number; heightMm: number } | null) =>
  it ? `${figure(it.widthMm)} x ${figure(it.heightMm)} mm` : 'the usual sheet';

function timed(name: string, frames: Was<Frames>, t: Telling): string {
  const shift = isLater(frames);
  const span = `${range(frames.now, t)} ${was(range(frames.old, t))}`;
  if (shift !== null) return `${name} ${later(shift, t)}: ${span}`;
  if (frames.now.to === frames.old.to)
    return `${name} begins ${later(frames.now.from - frames.old.from, t)}: ${span}`;
  const grown = lasts(frames.now) - lasts(frames.old);
  return grown === 0 ? `${name}: ${span}` : `${name} ${longer(grown, t)}: ${span}`;
}

export const en: Sentences = {
  cut: ({ old, now }) => `cut ${now} ${was(old)}`,
  time: ({ old, now }, t) => `cut ${longer(now - old, t)}: ${t.length(now)} ${was(t.length(old))}`,
  handles: ({ old, now }, t) =>
    `handles: ${t.length(now.head)} before, ${t.length(now.tail)} after the cut ${was(`${t.length(old.head)}, ${t.length(old.tail)}`)}`,
  fps: ({ old, now }) => `${now} frames a second ${was(old)}`,
  'standard-field': ({ old, now }) => `standard field ${size(now)} ${was(size(old))}`,
  title: ({ old, now }, t) => `title ${none(now, t)} ${was(none(old, t))}`,
  scene: plain('scene'),
  take: plain('take'),
  artist: ({ old, now }) => `artist ${names(now)} ${was(names(old))}`,
  memo: ({ old, now }, t) => {
    if (old === null) return `memo added: ${quoted(now!, t)}`;
    return now === null
      ? `memo dropped: ${quoted(old, t)}`
      : `memo reworded: ${quoted(now, t)} ${was(quoted(old, t))}`;
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
  reuse: ({ level, old, now }) => {
    const from = (it: typeof now) => (it ? `cut ${it.cut}, level ${it.level}` : 'none');
    return `${level}: ${now ? `reuse of ${from(now)}` : 'no reuse'} ${was(from(old))}`;
  },
  'level-timed': ({ level, now }) =>
    now ? `${level}: has a timeline now` : `${level}: no timeline any more, simply there`,
  'level-emptied': ({ level }) => `${level}: empty throughout`,

  exposure: (change, t) => {
    const { level, first, last, count, frames, from } = change;
    const what = block(first, last, level);
    const end = `, from ${t.row(from.now)}${inCycle(change)}${follow(change.follows, t, level)}`;
    if (count > 1) return `${level}: ${what} (${count} exposures) held ${times(frames, t)} each${end}`;
    return `${level}: ${what} held ${longer(frames.now - frames.old, t)}, ${times(frames, t)}${end}`;
  },
  moved: (change, t) => {
    const { level, first, last, from } = change;
    const what = block(first, last, level);
    const many = what.includes(' to ') && first.form !== 'cycle';
    const verb = what === 'empty' ? '' : many ? ' come' : ' comes';
    return `${level}: ${what}${verb} ${later(change.by, t)}, ${many ? 'from' : 'on'} ${t.row(from.now)} ${was(t.row(from.old))}${inCycle(change)}`;
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

  'field-added': ({ field, ...it }) => `field ${field} added: ${figure(it.widthMm)} mm wide at ${at(it)}`,
  'field-dropped': ({ field }) => `field ${field} dropped`,
  'field-renamed': ({ field, old }) => `field ${old} is called ${field}`,
  'field-moved': ({ field, old, now, by: way }) => `field ${field} ${by(way)}: at ${at(now)} ${was(at(old))}`,
  'field-resized': ({ field, old, now, percent }) =>
    `field ${field} ${now > old ? 'larger' : 'smaller'}: ${figure(percent.now)}%, ${figure(now)} mm ${was(`${figure(percent.old)}%, ${figure(old)} mm`)}`,
  'field-turned': ({ field, old, now }) =>
    `field ${field} turned ${figure(Math.abs(now - old))}° ${now > old ? 'clockwise' : 'counter-clockwise'}: ${figure(now)}° ${was(`${figure(old)}°`)}`,
  fix: ({ old, now }) => `FIX on ${now} ${was(old)}`,
  'move-added': (change, t) => `${moveName(change)} added: ${range(change.frames, t)}`,
  'move-dropped': (change, t) => `${moveName(change)} dropped ${was(range(change.frames, t))}`,
  'move-time': moveTime,
  'move-way': moveWay,
  'move-route': (change, t) => {
    const { old, now } = change.frames;
    const times =
      old.from === now.from && old.to === now.to ? '' : `: ${range(now, t)} ${was(range(old, t))}`;
    return `${moveName(change)} ${was(change.old.join('→'))}${times}${speed(change)}`;
  },
  'mark-moved': (change) =>
    `${moveName(change)}: mark ${change.mark} ${by(change.by)}, at ${at(change.now)} ${was(at(change.old))}`,
  'move-spacing': (change) =>
    `${moveName(change)}${legOf(change)}: ${spacing(change.now)} ${was(spacing(change.old))}${speed(change)}`,
  'move-manner': (change, t) =>
    `${moveName(change)}: ${manner(change.manner, change.now, t)} ${was(manner(change.manner, change.old, t))}`,
  'light-added': (change, t) => `${lightName(change, t)} added: ${range(change.frames, t)}`,
  'light-dropped': (change, t) => `${lightName(change, t)} dropped ${was(range(change.frames, t))}`,
  'light-time': (change, t) => timed(lightName(change, t), change.frames, t),
  'light-manner': (change, t) => {
    const old = manner(change.manner, change.old, t);
    // What its name says is not said again.
    if (change.manner === 'text' || change.manner === 'levels') return `${lightName(change, t)} ${was(old)}`;
    return `${lightName(change, t)}: ${manner(change.manner, change.now, t)} ${was(old)}`;
  },

  'speech-added': (change, t) => `${speech(change, t)} added: ${range(change.frames, t)}`,
  'speech-dropped': (change, t) => `${speech(change, t)} dropped ${was(range(change.frames, t))}`,
  'speech-time': (change, t) => timed(speech(change, t), change.frames, t),
  'speech-text': (change, t) => `${speech(change, t)} reworded ${was(quoted(change.old, t))}`,
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
    `note on ${t.row(frame)} reworded: ${quoted(now, t)} ${was(quoted(old, t))}`,
};
