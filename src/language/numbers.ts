/** Faults of single tokens: numbers with something glued on, dots too many, blanks inside a time, characters of no use. */

import type { IToken } from 'chevrotain';
import { type Fault, insert, placeOf, quoted, replace } from './fault.js';
import type { Candidate } from './mend.js';
import type { Range } from './normal.js';
import { nearest } from './suggest.js';
import { Dots, Glued, Integer, Plus, Unknown } from './tokens.js';

const UNITS = ['mm', 'cm', 'in', 'deg'];

/** What characters that look like signs of the language were probably meant as. */
const LOOKALIKES = new Map([
  ['[', '('],
  [']', ')'],
  ['〔', '('],
  ['〕', ')'],
  ['〜', '..'],
  ['～', '..'],
  ['~', '..'],
  ['…', '..'],
  ['‥', '..'],
  ['→', '>'],
  ['✕', 'x'],
  ['✖', 'x'],
  ['╳', 'x'],
  ['☓', 'x'],
  ['‐', '-'],
  ['‑', '-'],
  ['‒', '-'],
  ['―', '-'],
  ['─', '-'],
  ['′', "'"],
  ['‘', "'"],
]);

/** The fault of the token at `at`, if the token itself is what is wrong. */
export function faultyToken(tokens: readonly IToken[], at: number, typed: string): Fault | null {
  const token = tokens[at]!;
  switch (token.tokenType) {
    case Glued:
      return glued(token, tokens[at + 1], typed);
    case Dots:
      return dots(placeOf(token), '..');
    case Plus:
    case Unknown:
      return spaced(tokens, at) ?? (token.tokenType === Unknown ? unknown(tokens, at, typed) : null);
    default:
      return null;
  }
}

function dots(place: Range, instead: string): Fault {
  return {
    code: 'stray-dot',
    place,
    message: 'There are too many dots here: a range and a hold have two.',
    candidates: [replace(place, instead, 'write two dots')],
  };
}

/** `5 + 0` and `8 '04`, as the sheet prints them. */
function spaced(tokens: readonly IToken[], at: number): Fault | null {
  const [before, sign, after] = [tokens[at - 1], tokens[at]!, tokens[at + 1]];
  if (sign.image !== '+' && sign.image !== "'") return null;
  if (before?.tokenType !== Integer || after?.tokenType !== Integer) return null;
  return together(before, after, `${before.image}${sign.image}${after.image}`);
}

function together(first: IToken, last: IToken, time: string): Fault {
  const place = { start: first.startOffset, end: placeOf(last).end };
  const units = time.includes('+') ? 'Seconds and frames' : 'Feet and frames';
  return {
    code: 'spaced-time',
    place,
    message: `${units} are written with no blanks between: ${time}.`,
    candidates: [replace(place, time, 'leave the blanks out')],
  };
}

function glued(token: IToken, next: IToken | undefined, typed: string): Fault {
  const { image } = token;
  const place = placeOf(token);
  if (image.startsWith('x')) {
    return {
      code: 'times-sign',
      place,
      message: `A group is repeated with a star: *${image.slice(1)}.`,
      candidates: [replace(place, `*${image.slice(1)}`, 'write a star')],
    };
  }
  if (/\d{10}/.test(image)) {
    return {
      code: 'number-too-large',
      place,
      message: `${quoted(token, typed)} is too large a number.`,
      candidates: [],
    };
  }
  if (/^\d+'$/.test(image)) {
    if (next?.tokenType === Integer) return together(token, next, `${image}${next.image}`);
    return {
      code: 'glued-number',
      place,
      message: `${quoted(token, typed)} has feet but no frames.`,
      candidates: [replace(place, `${image}00`, 'add no frames')],
    };
  }
  if (image.startsWith('.')) {
    return {
      code: 'stray-dot',
      place,
      message: `A number does not start with a dot: 0${image}.`,
      candidates: [replace(place, `0${image}`, 'write the nought')],
    };
  }
  if (/\.{3}/.test(image)) return dots(place, image.replace(/\.{3,}/g, '..'));
  return {
    code: 'glued-number',
    place,
    message: `${quoted(token, typed)} is neither a number nor a name: something is glued to the number.`,
    candidates: ungluing(image, place),
  };
}

function ungluing(image: string, place: Range): Candidate[] {
  const [, number = '', rest = ''] = /^([\d.+']*\d)(.*)$/su.exec(image) ?? [];
  const unit = nearest(rest, UNITS);
  const found: Candidate[] = [];
  if (unit) found.push(replace(place, number + unit, `write ${number}${unit}`));
  if (/^\p{L}{2,}/u.test(rest)) found.push(insert(place.start + number.length, ' ', 'leave a blank between'));
  if (rest !== rest.toLowerCase()) found.push(replace(place, image.toLowerCase(), 'write a small letter'));
  return found;
}

function unknown(tokens: readonly IToken[], at: number, typed: string): Fault {
  const token = tokens[at]!;
  const place = placeOf(token);
  if (token.image === '.') {
    return {
      code: 'stray-dot',
      place,
      message:
        'A single dot means nothing here: a number has a digit on both sides of its dot, a hold has two dots.',
      candidates: [replace(place, '..', 'write two dots'), replace(place, '', 'leave it out')],
    };
  }
  const meant = LOOKALIKES.get(typed.slice(place.start, place.end));
  const candidates = meant ? [replace(place, meant, `write \`${meant}\``)] : [];
  return {
    code: 'unknown-character',
    place,
    message: `${quoted(token, typed)} means nothing outside a text.`,
    mended: `${quoted(token, typed)} means nothing outside a text${meant ? `; did you mean \`${meant}\`?` : ''}`,
    candidates: [...candidates, replace(place, '', 'leave it out')],
  };
}
