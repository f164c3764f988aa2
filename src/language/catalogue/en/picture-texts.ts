import { plural } from '../../../words/number-format.js';
import type { PictureMessages, UnreadableScan } from '../picture-codes.js';
import type { Texts } from '../text-types.js';

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
