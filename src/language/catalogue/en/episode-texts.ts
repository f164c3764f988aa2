import { plural } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type {
  CutListMessages,
  EpisodeMessages,
  HandoverMessages,
  PictureMessages,
  UnreadableScan,
} from '../episode-codes.js';
import { capital, drawingList, neighbourName, notLent } from './terms-texts.js';

export const episode: Texts<EpisodeMessages> = {
  'overlap-differs': {
    title: 'two cuts name different lengths for their overlap',
    explanation:
      'An overlap is shot from two sheets, and both must say how long it lasts. Here they do not agree, so no picture can be made of the two. Ask which length is meant, and write it in both cuts. The same frames may be written in several ways: at 24 frames a second 24 is 1+0.',
    message: ({ neighbour, there, here }) =>
      `This overlap lasts for ${here} frames, but ${neighbourName(neighbour)} has ${there} for it.`,
  },
  'overlap-fps': {
    title: 'two cuts that overlap run at different speeds',
    explanation:
      'In an overlap the two cuts are mixed frame by frame, so both must have the same number of frames a second. One of the two has an fps line that the other has not.',
    message: ({ neighbour, there, here }) =>
      `${capital(neighbourName(neighbour))} runs at ${there} frames a second and this cut at ${here}: they cannot overlap frame by frame.`,
  },
  'overlap-unanswered': {
    title: 'the next cut knows nothing of this overlap',
    explanation:
      'This cut overlaps with its neighbour, whose text has no overlap on that side, so the other sheet lacks its rows. The neighbour is the cut before or after this one in the manifest; where the cut that is meant is not written yet, nothing is wrong.',
    message: ({ neighbour, way, length }) =>
      `${capital(neighbourName(neighbour))} has no \`overlap ${way} ${length}\` to go with this overlap.`,
  },
  'overlap-missing': {
    title: 'the neighbouring cut overlaps with this one, which does not say so',
    explanation:
      'The cut before or after this one ends or begins in an overlap with it. Both sheets need the rows of the overlap, so this cut needs the same line from its side. Its timelines then count the rows of the handle, too.',
    message: ({ cut, way, frames }) =>
      `Cut ${cut} ${way === 'in' ? 'ends' : 'begins'} in an overlap of ${frames} frames with this cut, which has no \`overlap ${way}\`.`,
  },
  'overlap-alone': {
    title: 'there is no cut to overlap with',
    explanation:
      'The first cut of an episode begins in an overlap, or the last one ends in one: there is no other cut on that side. From or to black it is a fade.',
    message: ({ way }) =>
      `This is the ${way === 'in' ? 'first' : 'last'} cut of the episode: there is no cut to overlap with.`,
  },
  'overlap-unchecked': {
    title: 'whether the neighbour agrees on the overlap cannot be told',
    explanation:
      'The neighbouring cut has errors that keep its overlap from being read, so the two lengths could not be compared. Mend that cut first.',
    message: ({ neighbour, why }) =>
      `Whether ${neighbourName(neighbour)} names the same length cannot be told: ${why === 'unreadable' ? 'it cannot be read' : 'there are errors in its text'}.`,
  },
  'reuse-circle': {
    title: 'levels reuse each other in a circle',
    explanation:
      'Each level takes its drawings from the next, and the last from the first, so nobody draws them. The message shows the chain; the cut for which the drawings are made has no reuse.',
    message: ({ links }) => `${capital(notLent({ why: 'circle', links }))}.`,
  },
  'reuse-nothing': {
    title: 'a level reuses nothing of the other one',
    explanation:
      'The level is said to reuse that of another cut, but none of the drawings that it shows is there, so all of them are new and are numbered on from the other cut’s. Perhaps the cut or the level is a slip.',
    message: ({ level, here, cut, of, there }) =>
      `Level ${level} shows ${here.length === 0 ? 'no drawing' : drawingList(here)}, and level ${of} of cut ${cut} has ${drawingList(there)}: nothing is reused.`,
  },
  'reuse-twice': {
    title: 'two cuts that add to one level',
    explanation:
      'Both cuts reuse the level of a third one and add drawings, and both number them on from its highest number: two drawings have one number. Let the later cut reuse the level of the earlier one, which has all drawings of the third as well; or say the numbers with a `cels` line that leaves the others unused (`_`).',
    message: ({ cut, as, cels, from, of }) => {
      const named = cels.slice(0, 6).map((cel) => `${of}${cel}`);
      return `Cut ${cut} adds ${named.join(', ')}${cels.length > 6 ? ' …' : ''} to level ${of} of cut ${from}, and so does this cut: two drawings have one number. Reuse \`${cut}/${as}\`, or let a \`cels\` line begin behind those numbers.`;
    },
  },
};

export const cutList: Texts<CutListMessages> = {
  'list-cut-errors': {
    title: 'a cut of the list has errors',
    explanation:
      'The cut stays in the list, marked, with what could be read of it, so that the list is whole; but its figures may change, and it is not printed. What is wrong is not repeated here: cutwright check says it, with the lines.',
    message: ({ cut, errors, warnings, timed, file }) => {
      const count = [
        ...(errors > 0 ? [plural(errors, 'error')] : []),
        ...(warnings > 0 ? [plural(warnings, 'warning')] : []),
      ];
      return `Cut ${cut} has ${count.join(' and ')}, so ${timed ? 'its figures may change' : 'not even its time is known'}; \`cutwright check ${file}\` says what is wrong.`;
    },
  },
  'list-over-budget': {
    title: 'the cuts run longer than the budget',
    explanation:
      'The running time of all cuts of the episode, overlaps counted once, is over the budget that the manifest allows. list says so in its totals; with --check it is an error, for scripts. Shorten cuts, or change the budget.',
    message: ({ running, over, budget, fps, untimed }) => {
      const length = (frames: number): string => `${Math.floor(frames / fps)}+${frames % fps}`;
      return `The cuts run ${untimed > 0 ? 'at least ' : ''}${length(running)}, which is ${length(over)} (${plural(over, 'frame')}) over the budget of ${length(budget)}.`;
    },
  },
};

export const handover: Texts<HandoverMessages> = {
  'edit-speeds': {
    title: 'cuts of different speeds in one edit',
    explanation:
      'An edit counts all its cuts in frames of one length, so cuts of 24 and of 12 frames a second cannot stand in one. Usually an fps statement was left over in one cut; or export the cuts of each speed by themselves.',
    message: ({ cut, fps, first, firstFps }) =>
      `Cut ${cut} runs at ${fps} frames a second, cut ${first} at ${firstFps}: one edit has one speed.`,
  },
  'edit-overlap': {
    title: 'overlaps that make no edit',
    explanation:
      'An overlap belongs to two cuts that follow each other, and both must name the same length: overlap out 24 in the first, overlap in 24 in the second. And a cut must be there alone, or at least for a moment, between the overlap before it and the one after it.',
    message: {
      uneven: ({ before, out, after, into }) => {
        const has = (length: number | null, word: string): string =>
          length === null ? `no \`overlap ${word}\`` : `\`overlap ${word} ${length}\``;
        return `Cut ${before} has ${has(out, 'out')}, but cut ${after}, which follows, has ${has(into, 'in')}.`;
      },
      crowded: ({ cut, over }) =>
        `The overlaps at both ends of cut ${cut} run into each other by ${plural(over, 'frame')}: three cuts would be seen at once.`,
    },
  },
  'edit-list-limit': {
    title: 'more than an edit list can hold',
    explanation:
      'An edit decision list is an old format: it counts 24, 25 or 30 frames a second, numbers 999 events, gives overlaps three digits, and its timecode ends at 24 hours. Export the episode in parts, or with --edit otio, which has none of these limits.',
    message: {
      speed: ({ cut, fps }) =>
        `An edit list counts 24, 25 or 30 frames a second, but cut ${cut} runs at ${fps}.`,
      events: ({ cut, cuts, most }) =>
        `An edit list has ${most} events at most, one a cut, but these are ${cuts} cuts: cut ${cut} is the first that finds no place.`,
      overlap: ({ frames, most }) =>
        `An edit list has overlaps of ${most} frames at most, but this one lasts for ${plural(frames, 'frame')}.`,
      timecode: ({ cut }) => `Timecode ends at 24 hours, and cut ${cut} would run past that.`,
    },
  },
  'edit-list-long': {
    title: 'an overlap that many readers of edit lists do not know',
    explanation:
      'The list gives an overlap three digits, but many machines and programs that read such lists take 255 frames at most. Ask the cutting room, or export with --edit otio.',
    message: ({ cut, frames, most }) =>
      `The overlap into cut ${cut} lasts for ${plural(frames, 'frame')}; many readers of edit lists know overlaps of ${most} frames at most.`,
  },
  'pixels-shape': {
    title: 'pixels of a picture that is not shaped as the field',
    explanation:
      'The standard field becomes the finished picture, so both need one shape, as 254mm x 142.875mm and 1920x1080. Otherwise a millimetre is not as many pixels up as it is across, and what moves at an angle moves at another one. Mend `field` or `output` in episode.yaml.',
    message: ({ cut, field, output, by }) =>
      `In cut ${cut} the field is ${field.widthMm} x ${field.heightMm} mm, the picture ${output.width} x ${output.height} pixels: ${Math.round(Math.abs(by))} pixels too ${by > 0 ? 'tall' : 'flat'} for it, so that directions in pixels are not those on paper.`,
  },
};

const because = (reason: UnreadableScan): string => {
  switch (reason.why) {
    case 'machine':
      return reason.reason;
    case 'format':
      return 'it is no PNG, JPEG or WebP';
    case 'broken':
      return 'it is cut off or damaged';
    case 'size':
      return `it is ${reason.width} × ${reason.height} pixels; ${reason.most} on a side and ${reason.mostMillions} million in all are the most`;
  }
};

export const picture: Texts<PictureMessages> = {
  'scan-name': {
    title: 'braces in the name of a scan that mean nothing',
    explanation:
      'In the names of drawings, {cut} stands for the number of the cut, {level} for the name of the level and {number} for the number of the drawing; {number:4} writes it with four digits, 0012. Nothing else stands in braces.',
    message: ({ written, parts }) =>
      `\`${written}\` means nothing in the name of a scan; write ${parts.map((part) => `\`{${part}}\``).join(', ')}.`,
  },
  'scan-outside': {
    title: 'a scan lies outside the episode',
    explanation:
      'Drawings lie in the folder of the cut, or below the folder of its episode (where episode.yaml stands), and nowhere else. So an episode can be copied whole, and a cut that came by mail reads nothing that is not its own.',
    message: ({ path, inEpisode }) =>
      inEpisode
        ? `\`${path}\` is not in this folder and not below the folder of the episode: drawings lie nowhere else.`
        : `\`${path}\` is not in this folder, and without an episode.yaml drawings lie nowhere else.`,
  },
  'scan-unreadable': {
    title: 'a drawing that cannot be read',
    explanation:
      'The file is there, but no picture comes out of it: a scan that was not copied to its end, a file of another kind under the name of a picture, or one larger than any drawing is. Its name stands in the film in place of the drawing. Read are PNG, JPEG and WebP.',
    message: ({ file, reason, level, others }) =>
      `\`${file}\` cannot be shown: ${because(reason)}${others > 0 ? `. The same goes for ${plural(others, 'more drawing')} of level ${level}` : ''}.`,
  },
  'canvas-missing': {
    title: 'the package that paints is not installed',
    explanation:
      'Films and pictures are painted by @napi-rs/canvas (MIT licence). npm installs it with cutwright, unless it is told to leave out optional packages, or there is none for this kind of machine. Everything else works without it.',
    message: () => 'Painting needs the package `@napi-rs/canvas`, which is not installed.',
  },
  'film-program-missing': {
    title: 'no program that makes films',
    explanation:
      'A film is written by ffmpeg, a separate program. Where it is not found, the pictures are written, one a frame, and any program that makes films can join them. On Debian and Ubuntu: apt-get install ffmpeg.',
    message: ({ film, folder }) =>
      `\`${film}\` needs ffmpeg, which is not installed: the pictures are in \`${folder}\`, one a frame.`,
  },
  'film-failed': {
    title: 'the film was not written',
    explanation:
      'The program that makes the film (ffmpeg) gave up, or the disk is full. Nothing half written is left, and a film of that name from before is as it was.',
    message: ({ film, reason }) => `\`${film}\` was not written: ${reason}.`,
  },
};
