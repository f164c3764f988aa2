import { figure, plural } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { MouthMessages } from '../mouth-codes.js';
import { meant, oneOf } from './terms-texts.js';

export const mouth: Texts<MouthMessages> = {
  'mouth-and-timeline': {
    title: 'a level with a timeline and a mouth',
    explanation:
      'The mouth statement makes the timeline of its level from what the speaker says, so the level cannot have another one. Take one of the two out, or give the mouth a level of its own.',
    message: ({ level }) => `Level ${level} has a timeline already, so it cannot be a mouth as well.`,
  },
  'mouth-drawings': {
    title: 'a mouth with too few or too many drawings',
    explanation:
      'A mouth has three drawings, closed, half open and open: `1 2 3`. Or it has one that is closed and one for each vowel: `1 a 2 i 3 u 4 e 5 o 6`. One drawing may stand for several.',
    message: {
      three: ({ level, count }) =>
        `The mouth of level ${level} has ${plural(count, 'drawing')}; it needs three: closed, half open and open.`,
      'no-vowel': ({ level, key }) =>
        `Drawing ${key} of the mouth on level ${level} needs its vowel before it: a, i, u, e or o.`,
      twice: ({ level, vowel }) => `The mouth of level ${level} has two drawings for \`${vowel}\`.`,
      missing: ({ level, vowels }) =>
        `The mouth of level ${level} has no drawing for ${vowels.length === 1 ? `\`${vowels[0]}\`` : oneOf(vowels.map((vowel) => `\`${vowel}\``))}.`,
    },
  },
  'mouth-vowel': {
    title: 'a mouth for something that is no vowel',
    explanation:
      'Before each drawing of a mouth but the first stands the vowel that it shows: a, i, u, e or o (or あ, い, う, え, お).',
    message: ({ name, guess }) => `\`${name}\` is no vowel${meant(guess, '; a mouth has a, i, u, e and o.')}`,
  },
  'lead-range': {
    title: 'a mouth that leads by too much',
    explanation:
      'A mouth leads its sound by one or two frames, so that it is open when the sound is heard. More than half a second is a slip.',
    message: ({ most }) => `A mouth leads its sound by ${most} frames at most.`,
  },
  'mouth-silent': {
    title: 'the mouth of somebody who does not speak',
    explanation:
      'A mouth follows the `voice` statements of its speaker, and there is none in this cut whose speaker is in the picture. The mouth stays closed. Names must be written alike in both statements.',
    message: {
      unseen: ({ speaker }) =>
        `“${speaker}” speaks in this cut only out of the picture or as an inner voice, so this mouth stays closed.`,
      'no-lines': ({ speaker, guess, speakers }) =>
        `“${speaker}” does not speak in this cut${
          guess !== null
            ? meant(guess)
            : speakers.length === 0
              ? '; nobody does.'
              : `; ${speakers.length === 1 ? 'the only speaker is' : 'its speakers are'} ${speakers.map((one) => `“${one}”`).join(', ')}.`
        }`,
    },
  },
  'mouth-unread': {
    title: 'a line for a mouth that cannot be read',
    explanation:
      'A mouth is made from the sounds of the words, and of some of these nobody can say how they are read. Write the reading behind them, as in `"行《い》く"`. Until then the mouth flaps: its drawings are mixed evenly while the line lasts. With `flaps` in the mouth statement that is what is wanted, and nothing is said.',
    message: ({ level }) =>
      `Some words of this line cannot be read, so the mouth on level ${level} only flaps; write their reading, as in \`行《い》く\`.`,
  },
  'line-too-fast': {
    title: 'a line that nobody can speak so fast',
    explanation:
      'People speak about six morae a second in Japanese and five syllables in English; over nine, or over seven, nobody follows. Give the line more rows, or fewer words. Nothing is said of lines whose words are tied to rows, of songs (♪), and of interjections.',
    message: ({ unit, count, time, rate, most, wanted }) =>
      `${count} ${UNITS[unit]} in ${time} are ${figure(rate, { decimals: 1 })} a second, and people speak ${most} at most; the line wants about ${wanted}.`,
  },
};

const UNITS = { mora: 'morae', syllable: 'syllables' } as const;
