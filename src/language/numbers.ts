/** Faults of single tokens: numbers with something glued on, dots too many, blanks inside a time, characters of no use. */

import type { IToken } from 'chevrotain';
import { type Fault, insert, placeOf, quoted, replace } from './fault.js';
import { tokenize } from './lexer.js';
import type { Candidate } from './mend.js';
import type { Range } from './normal.js';
import { nearest } from './suggest.js';
import {
  Degrees,
  Dots,
  Feet,
  Glued,
  Integer,
  Length,
  Percent,
  Rate,
  Seconds,
  SizeText,
  Unknown,
} from './tokens.js';

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
    case Unknown:
      return spaced(tokens, at) ?? unknown(tokens, at, typed);
    default:
      return spaced(tokens, at);
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

const UNITED = new Map([
  [Seconds, 'Seconds and frames'],
  [Feet, 'Feet and frames'],
  ...[SizeText, Rate, Length, Degrees, Percent].map((kind) => [kind, 'A number and its unit'] as const),
]);

/** `5 + 0` as the sheet prints it, `8 '04`, `560 x 200 mm`: one number once the blanks are gone. */
function spaced(tokens: readonly IToken[], at: number): Fault | null {
  for (const first of [at - 1, at]) {
    for (let last = Math.min(first + 3, tokens.length - 1); first >= 0 && last > first; last--) {
      const images = tokens.slice(first, last + 1).map(({ image }) => image);
      if (/\d \d/.test(images.join(' '))) continue;
      const joined = images.join('');
      const whole = tokenize(joined, 0, joined.length);
      const what = whole.length === 1 ? UNITED.get(whole[0]!.tokenType) : undefined;
      if (what) return together(tokens[first]!, tokens[last]!, joined, what);
    }
  }
  return null;
}

function together(first: IToken, last: IToken, joined: string, what: string): Fault {
  const place = { start: first.startOffset, end: placeOf(last).end };
  return {
    code: 'spaced-number',
    place,
    message: `${what} are written with no blanks between: ${joined}.`,
    candidates: [replace(place, joined, 'leave the blanks out')],
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
    if (next?.tokenType === Integer) return together(token, next, `${image}${next.image}`, 'Feet and frames');
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
  const [, number = '', rest = ''] = /^(.*\d)(\D*)$/su.exec(image) ?? [];
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
  const alike = (one: IToken): string | undefined =>
    LOOKALIKES.get(typed.slice(one.startOffset, one.endOffset! + 1));
  const meant = alike(token);
  const candidates: Candidate[] = [replace(place, '', 'leave it out')];
  if (meant) {
    // `[1--2]` is mended as a whole: one bracket alone would only move the fault.
    const edits = tokens.flatMap((one) => {
      const text = one.tokenType === Unknown ? alike(one) : undefined;
      return text ? [{ ...placeOf(one), text }] : [];
    });
    candidates.unshift({ title: `write \`${edits.map(({ text }) => text).join('` and `')}\``, edits });
  }
  const message = `${quoted(token, typed)} means nothing outside a text`;
  return {
    code: 'unknown-character',
    place,
    message: `${message}.`,
    ...(meant ? { mended: `${message}; did you mean \`${meant}\`?` } : {}),
    candidates,
  };
}
