import { figure } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { FileMessages } from '../files-codes.js';
import { capital, codePoint, meant, notLent, taken } from './terms-texts.js';

/** The YAML reader's commonest errors in plain words; the others as it says them. */
function plainYaml(code: string, message: string): string {
  switch (code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
      return 'A value that holds a colon needs quotes, and a list of keys a line of its own.';
    case 'TAB_AS_INDENT':
      return 'A tab stands in the indentation; YAML takes blanks only.';
    case 'MULTIPLE_DOCS':
      return 'A manifest is one document; take this line of dashes out.';
    case 'MISSING_CHAR':
      return message.includes('quote')
        ? 'A text in quotes is not closed.'
        : message.startsWith('Implicit')
          ? KEY_AND_VALUE
          : `Something that was opened is not closed: ${lower(message)}.`;
    case 'MULTILINE_IMPLICIT_KEY':
      return KEY_AND_VALUE;
    case 'BAD_INDENT':
      return 'A list or a group is not closed: `]` or `}` is missing, or this line begins too far to the left.';
    case 'UNEXPECTED_TOKEN':
      return 'The value has ended before this; text with quotes in it goes into quotes as a whole.';
    case 'RESOURCE_EXHAUSTION':
      return 'The manifest is nested too deeply to be read.';
    default:
      return `This is no YAML: ${lower(message)}.`;
  }
}

const KEY_AND_VALUE = 'Between a key and its value stand a half-width colon and a blank: `fps: 24`.';

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** A character with its code point; one that would not show, or would spoil the line, by its code point alone. */
function characterName(character: string): string {
  const code = codePoint(character.codePointAt(0)!);
  if (character === '\t') return `A tab (${code})`;
  return /[\p{C}\p{M}\p{Z}]/u.test(character) ? `The character ${code}` : `\`${character}\` (${code})`;
}

function fileSize(bytes: number): string {
  const mega = bytes / (1024 * 1024);
  return mega >= 1 ? `${figure(mega, { decimals: 1 })} MB` : `${Math.ceil(bytes / 1024)} kB`;
}

export const files: Texts<FileMessages> = {
  'file-missing': {
    title: 'a file is not there',
    explanation:
      'A file or folder was named that does not exist. Where a file with nearly the same name stands in the same folder, the message offers it. The other cuts of the run are still done.',
    message: {
      missing: ({ file, guess }) => `There is no file \`${file}\`${meant(guess)}`,
      nothing: ({ guess }) => `There is no such file or folder${meant(guess)}`,
      folder: ({ folder }) =>
        `\`${folder}\` is a folder; its cuts are \`${folder.replace(/\/$/, '')}/*.cut\`.`,
    },
  },
  'file-unreadable': {
    title: 'a file cannot be read',
    explanation:
      'The file is there but its text cannot be had: the person who runs the command has no permission, or the disk gives an error.',
    message: {
      unreadable: ({ file, reason }) => `\`${file}\` cannot be read: ${reason}.`,
      folder: ({ folder, reason }) => `The folder \`${folder}\` cannot be read: ${reason}.`,
    },
  },
  'file-too-large': {
    title: 'a file is too large for a cut',
    explanation:
      'A cut is a page of typing. A text over 2 MB (a manifest over 256 kB) is nearly always another file that was named by mistake, so it is refused before it is read as a cut.',
    message: ({ file, bytes }) =>
      `${file === null ? 'The file' : `\`${file}\``} is larger than ${fileSize(bytes)}, too much for a text.`,
  },
  'wrong-encoding': {
    title: 'the text is in another encoding',
    explanation:
      'Cuts and manifests are UTF-8 text. The bytes at the place that is shown are no UTF-8, so the editor saved the file in an older encoding. Save it again as UTF-8; nothing else has to change.',
    message: {
      other: ({ encoding }) => `The file is ${encoding} text; save it as UTF-8.`,
      byte: ({ place, byte }) =>
        `Byte ${place} of the file (0x${byte.toString(16).toUpperCase().padStart(2, '0')}) is not UTF-8; save the file as UTF-8.`,
    },
  },
  'not-marked': {
    title: 'nothing is marked as changed',
    explanation:
      'The sheets were to mark what has changed in a cut since a revision, but the cut had errors then, so that there is nothing to compare with. The cut is printed without marks. Name a revision at which it was whole.',
    message: ({ cut, against }) => `Cut ${cut} had errors at ${against}: nothing is marked on its sheets.`,
  },
  'not-text': {
    title: 'the file is no text',
    explanation:
      'The file holds NUL bytes, which no text has. It is a picture, an archive or a damaged file; look at what the editor saved.',
    message: ({ count }) =>
      `${count === 1 ? 'A NUL byte stands' : `The first of ${count} NUL bytes stands`} here: this is no text, or a damaged one.`,
  },
  'no-cuts': {
    title: 'nothing to do',
    explanation:
      'The folder or the manifest was searched and holds no cut. Cuts are files whose names end in .cut; a manifest lists them under cuts.',
    message: {
      folder: () => 'The folder holds no file whose name ends in .cut.',
      'manifest-list': () => 'The manifest lists no cut.',
      'manifest-folder': () => 'The folder of the manifest holds no file whose name ends in .cut.',
      shared: (parameters) =>
        `This file only holds what other cuts use; there is nothing to ${parameters.for}.`,
    },
  },
  'pattern-empty': {
    title: 'a pattern of the manifest finds no cut',
    explanation:
      'One of the patterns under cuts fits no file of the episode, so it adds nothing. Perhaps a folder was renamed. In a pattern * stands for any characters of one name, ? for one, and ** for any folders.',
    message: ({ pattern }) => `\`${pattern}\` fits no file.`,
  },
  'cut-twice': {
    title: 'two files say that they are the same cut',
    explanation:
      'Two files of one episode carry the same cut number. On paper nobody could tell them apart, and one of them is usually a copy whose number was not changed.',
    message: ({ cut, file, compared }) =>
      `Cut ${cut} is already the number of \`${file}\`${compared ? '; only that one is compared' : ''}.`,
  },
  'episode-syntax': {
    title: 'the manifest cannot be read',
    explanation:
      'The manifest, episode.yaml, is written in YAML: one "key: value" a line. At the place that is shown it is no YAML any more. A text that holds a colon, or that starts with a sign such as * or @, needs quotes.',
    message: {
      yaml: ({ code, message }) => plainYaml(code, message),
      'no-colon': ({ written }) =>
        `Between a key and its value stand a half-width colon and a blank: \`${written}\`.`,
      'too-deep': () => 'The manifest is nested too deeply to be read.',
      'no-keys': () => 'A manifest is a list of keys, one a line, such as `fps: 24`.',
      'no-anchor': ({ name }) => `No value before this is called \`&${name}\`.`,
    },
  },
  'episode-key': {
    title: 'the manifest has no such key',
    explanation:
      'Every key of the manifest is checked, so that a misspelt one is not silently without effect. The message gives the nearest key. A key may stand only once.',
    message: {
      unknown: ({ key, guess }) =>
        `The manifest has no key ${key === null ? 'like this' : `\`${key}\``}${meant(guess)}`,
      twice: ({ key }) => `The key \`${key}\` stands twice.`,
    },
  },
  'episode-value': {
    title: 'a value of the manifest does not fit its key',
    explanation:
      'The key is known, but what stands behind it is not what it takes: another kind of value, a word that it does not know, or a number out of its range. The message says what would do.',
    message: {
      nothing: ({ key }) => `\`${key}\` has no value; give it one or leave the line out.`,
      artists: () => '`artists` takes names with the cuts that they draw, such as `{ M. Arai: [12, 13] }`.',
      'artist-name': () => 'An artist needs a name.',
      words: () => 'This takes words; put them in quotes.',
      other: ({ found, takes }) => `${found === null ? 'This' : `\`${found}\``} is not ${taken(takes)}.`,
      twice: ({ found }) => `\`${found}\` stands here already.`,
      stage: ({ found, stages, orCut, guess }) =>
        guess === null
          ? `\`${found}\` is no stage${orCut ? ' and no cut' : ''}; the stages are ${stages.join(', ')}.`
          : `\`${found}\` is no stage${meant(guess)}`,
      comma: ({ written }) =>
        `An amount has no comma, and its decimals stand behind a point: \`${written}\`.`,
      guess: ({ found, guess }) => `There is no \`${found}\` here; did you mean \`${guess}\`?`,
    },
  },
  'episode-outside': {
    title: 'the manifest reaches out of its folder',
    explanation:
      'An episode is its folder and what is below: a pattern under cuts may not lead out of it, neither with ../ nor by an absolute path nor by a link. So an episode can be copied whole, and reads no file that is not its own.',
    message: ({ path }) => `\`${path}\` lies outside the episode's folder.`,
  },
  'artist-without-cut': {
    title: 'an artist is named for a cut that is not there',
    explanation:
      'The manifest gives an artist a cut whose number no cut of the episode has. The name would be printed nowhere; perhaps the number is a slip.',
    message: ({ cut }) => `The episode has no cut ${cut}.`,
  },
  'use-missing': {
    title: 'a used file is not there',
    explanation:
      'The file that a use statement names cannot be read. Its path is taken from the folder of the file that says use.',
    message: {
      'too-many': ({ most }) => `More than ${most} files are used; this one is not read.`,
      missing: ({ file, guess }) => `There is no file \`${file}\`${meant(guess)}`,
      unreadable: ({ file, reason }) => `\`${file}\` cannot be read: ${reason}.`,
    },
  },
  'use-outside': {
    title: 'a used file lies outside the episode',
    explanation:
      'A cut may use files of its own folder, and files below the folder of its episode (where episode.yaml stands), and no others. So an episode can be copied whole, and a cut that came by mail reads nothing that is not its own.',
    message: ({ path, inEpisode }) =>
      inEpisode
        ? `\`${path}\` is not in this folder and not below the folder of the episode: a cut may use no other files.`
        : `\`${path}\` is not in this folder, and without an episode.yaml a cut may use files of its own folder only.`,
  },
  'use-circle': {
    title: 'files use each other in a circle',
    explanation:
      'Following the use statements leads back to a file that is already being read. The message shows the chain; one of its links must go.',
    message: ({ files }) =>
      files.length === 2
        ? 'The file uses itself.'
        : `The files use each other in a circle: ${files.join(' → ')}.`,
  },
  'same-unknown': {
    title: 'a cut that it should line up with is not there',
    explanation:
      '`same` names another cut of the episode whose picture this one takes up again. Whoever draws it looks that cut up, so it has to be there.',
    message: {
      itself: ({ cut }) => `Cut ${cut} is this cut; \`same\` names the other one.`,
      'no-cut': ({ cut }) => `The episode has no cut ${cut} to line up with.`,
    },
  },
  'reuse-unknown': {
    title: 'the reused level is not to be found',
    explanation:
      'The level takes its drawings from another cut of the episode, and that cut or its level cannot be had: it is not among the cuts of the manifest, has errors, or leads into a circle of levels that reuse each other. The numbers are then given as if the drawings were this cut’s own, and may not be those that stand on the paper.',
    message: {
      'not-lent': ({ reason, cut, level }) =>
        `${capital(notLent(reason))}, so the numbers of \`${cut}/${level}\` are not known here.`,
      'no-timeline': ({ cut, level }) =>
        `Level ${level} of cut ${cut} has no timeline, so it has no drawings that could be shown here.`,
    },
  },
  'missing-glyph': {
    title: 'a character cannot be printed',
    explanation:
      'The font that is printed with has no shape for this character (an emoji, a control character, a rare sign). An empty box on the sheet would be read as something, so the cut is not printed; write it in other words. Names of drawings and levels count too. A line break can stand only in memos, notes, dialogue and sounds.',
    message: ({ character }) =>
      character === '\n'
        ? 'A title or a name stands on one line, so it cannot have a line break.'
        : `${characterName(character)} is not in the font and cannot be printed.`,
  },
  'text-too-long': {
    title: 'a text that no sheet can hold',
    explanation:
      'A single text may have 4,000 characters, and all texts of a cut together 100,000. What is longer was pasted by mistake, or belongs on a page of its own beside the sheet.',
    message: {
      one: ({ characters, most }) =>
        `A text of ${characters} characters finds no room on a sheet; it may have ${most}.`,
      all: ({ most }) =>
        `Here the texts of the cut come to more than ${most} characters, more than sheets can hold.`,
    },
  },
  'levels-too-many': {
    title: 'more levels than any sheet can hold',
    explanation: 'A cut may have 200 levels. A crowd of more is drawn in groups, several figures on a level.',
    message: ({ count, most }) => `The cut has ${count} levels; it may have ${most}.`,
  },
  'cut-too-large': {
    title: 'a cut that is too large to be computed',
    explanation:
      'A cut may have 10,000 statements of one kind, 100,000 items in its timelines, 10,000 legs in a move, and levels times rows up to 300,000; all its moves together may last 300,000 frames. A statement may have 150,000 characters, a text 300,000 words and signs. What is larger was typed or generated by mistake, so it is refused before anything is computed. Otherwise, divide the cut.',
    message: {
      statement: ({ characters, most }) =>
        `A statement of ${figure(characters)} characters is too long to be read; it may have ${figure(most)}.`,
      pieces: ({ most }) =>
        `Here the text comes to more than ${figure(most)} words and signs; the rest is not read.`,
      statements: ({ kind, most }) =>
        `A cut may have ${figure(most)} statements of one kind; this is one more of \`${kind}\`.`,
      items: ({ count, most }) =>
        `Here the timelines come to ${figure(count)} items; a cut may have ${figure(most)}.`,
      legs: ({ count, most }) => `The move has ${figure(count)} legs; it may have ${figure(most)}.`,
      'level-frames': ({ levels, rows, most }) =>
        `${levels} levels on ${figure(rows)} rows come to ${figure(levels * rows)} cells; a cut may have ${figure(most)}.`,
      'move-frames': ({ most }) =>
        `Here the moves of the cut come to more than ${figure(most)} frames, counted once for each level.`,
      'held-frames': ({ most }) =>
        `Here moves times rows of the sheet come to more than ${figure(most)}, too much to be computed.`,
    },
  },
  'same-output': {
    title: 'two cuts would be written to one file',
    explanation:
      'Two cuts of the run would be written to a file of the same name, and the second would silently replace the first. Neither is written.',
    message: ({ other, output }) => `This cut and \`${other}\` would both be written to \`${output}\`.`,
  },
  'output-is-input': {
    title: 'the output would replace a text',
    explanation:
      'The file to be written is one of the texts that are read. Printing over the only copy of a cut would lose it, so it is refused.',
    message: {
      read: ({ output }) => `\`${output}\` is read by this run; it is not written over.`,
      named: ({ output }) => `\`${output}\` has the name of a text; it is not written over.`,
    },
  },
  'output-unwritable': {
    title: 'the output cannot be written',
    explanation:
      'The folder may not be written to, something else stands in the way, or the disk is full. Missing folders are made. Outputs are written beside their final name and then renamed, so the last good file is still whole.',
    message: ({ output, reason }) =>
      `${output === null ? 'Standard output' : `\`${output}\``} cannot be written: ${reason ?? 'it was saved meanwhile'}.`,
  },
};
