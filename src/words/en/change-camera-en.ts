/** Fields, moves and light. */

import type {
  ChangeOf,
  LightManner,
  LightSeen,
  MannerValue,
  MoveSpeed,
  Spacing,
} from '../../compare/change.js';
import { type ChangeSentences, isLater, lasts, type SentenceFormat } from '../change-sentences.js';
import { figure, repeated } from '../number-format.js';
import { at, by, later, longer, quoted, range, timed, was } from './change-levels-en.js';
import type { EnglishTerms } from './forms-en.js';

/** `, faster: largest step 1.53 mm/f (was 1.36)`; '' where the step stays. */
function speed({ largestStepMm: { old, now } }: MoveSpeed): string {
  if (Math.abs(old - now) < 0.005) return '';
  return `, ${now > old ? 'faster' : 'slower'}: largest step ${figure(now)} mm/f ${was(figure(old))}`;
}

function moveTime(change: ChangeOf<'move-time'>, t: SentenceFormat): string {
  const { frames, stops, places } = change;
  const by = isLater(frames);
  const name = t.move(change);
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

function moveWay(change: ChangeOf<'move-way'>, t: SentenceFormat): string {
  const { distanceMm, rateMm } = change;
  const name = t.move(change);
  const way = `${figure(distanceMm.now)} mm ${was(`${figure(distanceMm.old)} mm`)}`;
  if (rateMm.old === null || rateMm.now === null) return `${name} ${way}${speed(change)}`;
  const how = rateMm.now > rateMm.old ? 'faster' : 'slower';
  return `${name} ${how}: ${figure(rateMm.now)} mm/f ${was(`${figure(rateMm.old)} mm/f`)}, ${way} in all`;
}

/** Which leg of several. */
const legOf = ({ leg, places }: ChangeOf<'move-spacing'>) =>
  places.length > 2 ? `, ${places[leg]}→${places[leg + 1]}` : '';

function spacing(it: Spacing, t: SentenceFormat): string {
  switch (it.form) {
    case 'linear':
      return 'even speed';
    case 'ease':
      return `ease ${it.leave}/${it.arrive}`;
    case 'curve':
      return `curve ${[it.x1, it.y1, it.x2, it.y2].map((one) => figure(one)).join(' ')}`;
    case 'steps':
      return `graduations by hand ${repeated(it.mm)}`;
    case 'fair':
      return `fairing ${it.mark} on ${t.row(it.frame)} with ${figure(it.share * 100)}%`;
  }
}

function moveManner(change: ChangeOf<'move-manner'>, value: MannerValue, t: SentenceFormat): string {
  switch (change.manner) {
    case 'kind':
      return value === 'pan' ? 'PAN' : 'truck';
    case 'graduated':
      return value ? 'graduated frame by frame' : 'not graduated';
    case 'gives':
      return value === null ? 'centre and width' : `gives the ${value}`;
    case 'on':
      return `on ${value}s`;
    case 'levels':
      return levels(value);
    default:
      return t.parameter(change, value);
  }
}

const levels = (value: MannerValue): string => (value === '' ? 'no level' : `level ${value}`);

function lightManner(name: LightManner, value: MannerValue, t: SentenceFormat): string {
  switch (name) {
    case 'levels':
      return levels(value);
    case 'length':
      return t.length(Number(value));
    case 'towards':
      return { left: 'to the left', right: 'to the right', up: 'up', down: 'down' }[String(value)] ?? '';
    case 'centre':
      return `centre ${String(value)}`;
    case 'white':
      return value ? 'white' : 'black';
    case 'text':
      return quoted(String(value), t);
    case 'shares':
      return String(value).replace('>', ' to ');
  }
}

function lightName(
  { light, way, white, levels, text }: LightSeen,
  t: SentenceFormat,
  { cut }: EnglishTerms,
): string {
  const who = levels.join(',');
  switch (light) {
    case 'fade':
      return `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;
    case 'wipe':
      return `wipe ${way}`;
    case 'iris':
      return `iris ${way}`;
    case 'overlap':
      return way === 'in' ? `O.L with the ${cut} before` : `O.L with the next ${cut}`;
    case 'expose':
      return `${who} double exposure`;
    case 'glow':
      return `${who} glow`;
    case 'effect':
      return `effect ${quoted(text, t)}${who ? ` on ${who}` : ''}`;
  }
}

export const cameraIn = (terms: EnglishTerms) =>
  ({
    'field-added': ({ field, ...it }) => `field ${field} added: ${figure(it.widthMm)} mm wide at ${at(it)}`,
    'field-dropped': ({ field }) => `field ${field} dropped`,
    'field-renamed': ({ field, old }) => `field ${old} is called ${field}`,
    'field-moved': ({ field, old, now, by: way }) =>
      `field ${field} ${by(way)}: at ${at(now)} ${was(at(old))}`,
    'field-resized': ({ field, old, now, percent }) =>
      `field ${field} ${now > old ? 'larger' : 'smaller'}: ${figure(percent.now)}%, ${figure(now)} mm ${was(`${figure(percent.old)}%, ${figure(old)} mm`)}`,
    'field-turned': ({ field, old, now }) =>
      `field ${field} turned ${figure(Math.abs(now - old))}° ${now > old ? 'clockwise' : 'counter-clockwise'}: ${figure(now)}° ${was(`${figure(old)}°`)}`,
    fix: ({ old, now }) => `FIX on ${now} ${was(old)}`,
    'move-added': (change, t) => `${t.move(change)} added: ${range(change.frames, t)}`,
    'move-dropped': (change, t) => `${t.move(change)} dropped ${was(range(change.frames, t))}`,
    'move-time': moveTime,
    'move-way': moveWay,
    'move-route': (change, t) => {
      const { old, now } = change.frames;
      const times =
        old.from === now.from && old.to === now.to ? '' : `: ${range(now, t)} ${was(range(old, t))}`;
      return `${t.move(change)} ${was(change.old.join('→'))}${times}${speed(change)}`;
    },
    'mark-moved': (change, t) =>
      `${t.move(change)}: mark ${change.mark} ${by(change.by)}, at ${at(change.now)} ${was(at(change.old))}`,
    'move-spacing': (change, t) =>
      `${t.move(change)}${legOf(change)}: ${spacing(change.now, t)} ${was(spacing(change.old, t))}${speed(change)}`,
    'move-manner': (change, t) =>
      `${t.move(change)}: ${moveManner(change, change.now, t)} ${was(moveManner(change, change.old, t))}`,
    'light-added': (change, t) => `${lightName(change, t, terms)} added: ${range(change.frames, t)}`,
    'light-dropped': (change, t) => `${lightName(change, t, terms)} dropped ${was(range(change.frames, t))}`,
    'light-time': (change, t) => timed(lightName(change, t, terms), change.frames, t),
    'light-manner': (change, t) => {
      const old = lightManner(change.manner, change.old, t);
      // What its name says is not said again.
      if (change.manner === 'text' || change.manner === 'levels')
        return `${lightName(change, t, terms)} ${was(old)}`;
      return `${lightName(change, t, terms)}: ${lightManner(change.manner, change.now, t)} ${was(old)}`;
    },
  }) satisfies Partial<ChangeSentences>;
