import { plural } from '../../../words/number-format.js';
import type { HandoverMessages } from '../handover-codes.js';
import type { Texts } from '../text-types.js';

export const handover: Texts<HandoverMessages> = {
  'edit-speeds': {
    title: 'cuts of different speeds in one edit',
    explanation:
      'An edit counts all its cuts in frames of one length, so cuts of 24 and of 12 frames a second cannot stand in one. Usually an fps statement was left over in one cut; or export the cuts of each speed by themselves.',
    message: ({ cut, fps, first, firstFps }) =>
      `Cut ${cut} runs at ${fps} frames a second, cut ${first} at ${firstFps}: one edit has one speed.`,
  },
  'edit-dissolve': {
    title: 'dissolves that make no edit',
    explanation:
      'A dissolve belongs to two cuts that follow each other, and both must name the same length: overlap out 24 in the first, overlap in 24 in the second. And a cut must be there alone, or at least for a moment, between the dissolve before it and the one after it.',
    message: {
      uneven: ({ before, out, after, into }) => {
        const has = (length: number | null, word: string): string =>
          length === null ? `no \`overlap ${word}\`` : `\`overlap ${word} ${length}\``;
        return `Cut ${before} has ${has(out, 'out')}, but cut ${after}, which follows, has ${has(into, 'in')}.`;
      },
      crowded: ({ cut, over }) =>
        `The dissolves at both ends of cut ${cut} run into each other by ${plural(over, 'frame')}: three cuts would be seen at once.`,
    },
  },
  'edit-list-limit': {
    title: 'more than an edit list can hold',
    explanation:
      'The CMX 3600 edit list is an old format: it counts 24, 25 or 30 frames a second, numbers 999 events, gives dissolves three digits, and its timecode ends at 24 hours. Export the episode in parts, or with --edit otio, which has none of these limits.',
    message: {
      speed: ({ cut, fps }) =>
        `An edit list counts 24, 25 or 30 frames a second, but cut ${cut} runs at ${fps}.`,
      events: ({ cut, cuts, most }) =>
        `An edit list has ${most} events at most, one a cut, but these are ${cuts} cuts: cut ${cut} is the first that finds no place.`,
      dissolve: ({ frames, most }) =>
        `An edit list has dissolves of ${most} frames at most, but this one lasts for ${plural(frames, 'frame')}.`,
      timecode: ({ cut }) => `Timecode ends at 24 hours, and cut ${cut} would run past that.`,
    },
  },
  'edit-list-long': {
    title: 'a dissolve that many readers of edit lists do not know',
    explanation:
      'The list gives a dissolve three digits, but many machines and programs that read such lists take 255 frames at most. Ask the cutting room, or export with --edit otio.',
    message: ({ cut, frames, most }) =>
      `The dissolve into cut ${cut} lasts for ${plural(frames, 'frame')}; many readers of edit lists know dissolves of ${most} frames at most.`,
  },
  'pixels-shape': {
    title: 'pixels of a picture that is not shaped as the field',
    explanation:
      'The standard field becomes the finished picture, so both need one shape, as 254mm x 142.875mm and 1920x1080. Otherwise a millimetre is not as many pixels up as it is across, and what moves at an angle moves at another one. Mend `field` or `output` in episode.yaml.',
    message: ({ cut, field, output, by }) =>
      `In cut ${cut} the field is ${field.widthMm} x ${field.heightMm} mm, the picture ${output.width} x ${output.height} pixels: ${Math.round(Math.abs(by))} pixels too ${by > 0 ? 'tall' : 'flat'} for it, so that directions in pixels are not those on paper.`,
  },
};
