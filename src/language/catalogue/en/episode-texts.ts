import type { EpisodeMessages } from '../episode-codes.js';
import type { Texts } from '../text-types.js';
import { capital, drawingList, neighbourName, notLent } from './phrases.js';

export const episode: Texts<EpisodeMessages> = {
  'overlap-differs': {
    title: 'two cuts name different lengths for their dissolve',
    explanation:
      'A dissolve is shot from two sheets, and both must say how long it lasts. Here they do not agree, so no picture can be made of the two. Ask which length is meant, and write it in both cuts. The same frames may be written in several ways: at 24 frames a second 24 is 1+0.',
    message: ({ neighbour, there, here }) =>
      `This dissolve lasts for ${here} frames, but ${neighbourName(neighbour)} has ${there} for it.`,
  },
  'overlap-fps': {
    title: 'two cuts that dissolve run at different speeds',
    explanation:
      'In a dissolve the two cuts are mixed frame by frame, so both must have the same number of frames a second. One of the two has an fps line that the other has not.',
    message: ({ neighbour, there, here }) =>
      `${capital(neighbourName(neighbour))} runs at ${there} frames a second and this cut at ${here}: they cannot dissolve frame by frame.`,
  },
  'overlap-unanswered': {
    title: 'the next cut knows nothing of this dissolve',
    explanation:
      'This cut dissolves with its neighbour, whose text has no overlap on that side, so the other sheet lacks its rows. The neighbour is the cut before or after this one in the manifest; where the cut that is meant is not written yet, nothing is wrong.',
    message: ({ neighbour, way, length }) =>
      `${capital(neighbourName(neighbour))} has no \`overlap ${way} ${length}\` to go with this dissolve.`,
  },
  'overlap-missing': {
    title: 'the neighbouring cut dissolves with this one, which does not say so',
    explanation:
      'The cut before or after this one ends or begins in a dissolve with it. Both sheets need the rows of the dissolve, so this cut needs the same line from its side. Its timelines then count the rows of the handle, too.',
    message: ({ cut, way, frames }) =>
      `Cut ${cut} ${way === 'in' ? 'ends' : 'begins'} in a dissolve of ${frames} frames with this cut, which has no \`overlap ${way}\`.`,
  },
  'overlap-alone': {
    title: 'there is no cut to dissolve with',
    explanation:
      'The first cut of an episode begins in a dissolve, or the last one ends in one: there is no other cut on that side. From or to black it is a fade.',
    message: ({ way }) =>
      `This is the ${way === 'in' ? 'first' : 'last'} cut of the episode: there is no cut to dissolve ${way === 'in' ? 'from' : 'to'}.`,
  },
  'overlap-unchecked': {
    title: 'whether the neighbour agrees on the dissolve cannot be told',
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
