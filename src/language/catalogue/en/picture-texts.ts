import type { PictureMessages } from '../picture-codes.js';
import type { Texts } from '../text-types.js';

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
};
