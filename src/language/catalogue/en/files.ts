import type { FileMessages } from '../files.js';
import { asGiven, type Texts } from '../texts.js';

export const files: Texts<FileMessages> = {
  'file-missing': {
    title: 'a file is not there',
    explanation:
      'A file or folder was named that does not exist. Where a file with nearly the same name stands in the same folder, the message offers it. The other cuts of the run are still done.',
    message: asGiven,
  },
  'file-unreadable': {
    title: 'a file cannot be read',
    explanation:
      'The file is there but its text cannot be had: the person who runs the command has no permission, or the disk gives an error.',
    message: asGiven,
  },
  'file-too-large': {
    title: 'a file is too large for a cut',
    explanation:
      'A cut is a page of typing. A text over 8 MB (a manifest over 256 kB) is nearly always another file that was named by mistake, so it is refused before it is read as a cut.',
    message: asGiven,
  },
  'wrong-encoding': {
    title: 'the text is in another encoding',
    explanation:
      'Cuts and manifests are UTF-8 text. The bytes at the place that is shown are no UTF-8, so the editor saved the file in an older encoding. Save it again as UTF-8; nothing else has to change.',
    message: asGiven,
  },
  'not-marked': {
    title: 'nothing is marked as changed',
    explanation:
      'The sheets were to mark what has changed in a cut since a revision, but the cut had errors then, so that there is nothing to compare with. The cut is printed without marks. Name a revision at which it was whole.',
    message: asGiven,
  },
  'not-text': {
    title: 'the file is no text',
    explanation:
      'The file holds NUL bytes, which no text has. It is a picture, an archive or a damaged file; look at what the editor saved.',
    message: asGiven,
  },
  'no-cuts': {
    title: 'nothing to do',
    explanation:
      'The folder or the manifest was searched and holds no cut. Cuts are files whose names end in .cut; a manifest lists them under cuts.',
    message: asGiven,
  },
  'pattern-empty': {
    title: 'a pattern of the manifest finds no cut',
    explanation:
      'One of the patterns under cuts fits no file of the episode, so it adds nothing. Perhaps a folder was renamed. In a pattern * stands for any characters of one name, ? for one, and ** for any folders.',
    message: asGiven,
  },
  'cut-twice': {
    title: 'two files say that they are the same cut',
    explanation:
      'Two files of one episode carry the same cut number. On paper nobody could tell them apart, and one of them is usually a copy whose number was not changed.',
    message: asGiven,
  },
  'episode-syntax': {
    title: 'the manifest cannot be read',
    explanation:
      'The manifest, episode.yaml, is written in YAML: one "key: value" a line. At the place that is shown it is no YAML any more. A text that holds a colon, or that starts with a sign such as * or @, needs quotes.',
    message: asGiven,
  },
  'episode-key': {
    title: 'the manifest has no such key',
    explanation:
      'Every key of the manifest is checked, so that a misspelt one is not silently without effect. The message gives the nearest key. A key may stand only once.',
    message: asGiven,
  },
  'episode-value': {
    title: 'a value of the manifest does not fit its key',
    explanation:
      'The key is known, but what stands behind it is not what it takes: another kind of value, a word that it does not know, or a number out of its range. The message says what would do.',
    message: asGiven,
  },
  'episode-outside': {
    title: 'the manifest reaches out of its folder',
    explanation:
      'An episode is its folder and what is below: a pattern under cuts may not lead out of it, neither with ../ nor by an absolute path nor by a link. So an episode can be copied whole, and reads no file that is not its own.',
    message: asGiven,
  },
  'artist-without-cut': {
    title: 'an artist is named for a cut that is not there',
    explanation:
      'The manifest gives an artist a cut whose number no cut of the episode has. The name would be printed nowhere; perhaps the number is a slip.',
    message: asGiven,
  },
  'use-missing': {
    title: 'a used file is not there',
    explanation:
      'The file that a use statement names cannot be read. Its path is taken from the folder of the file that says use.',
    message: asGiven,
  },
  'use-outside': {
    title: 'a used file lies outside the episode',
    explanation:
      'A cut may use files of its own folder, and files below the folder of its episode (where episode.yaml stands), and no others. So an episode can be copied whole, and a cut that came by mail reads nothing that is not its own.',
    message: asGiven,
  },
  'use-circle': {
    title: 'files use each other in a circle',
    explanation:
      'Following the use statements leads back to a file that is already being read. The message shows the chain; one of its links must go.',
    message: asGiven,
  },
  'reuse-unknown': {
    title: 'the reused level is not to be found',
    explanation:
      'The level takes its drawings from another cut of the episode, and that cut or its level cannot be had: it is not among the cuts of the manifest, has errors, or leads into a circle of levels that reuse each other. The numbers are then given as if the drawings were this cut’s own, and may not be those that stand on the paper.',
    message: asGiven,
  },
  'missing-glyph': {
    title: 'a character cannot be printed',
    explanation:
      'The font that is printed with has no shape for this character (an emoji, a control character, a rare sign). An empty box on the sheet would be read as something, so the cut is not printed; write it in other words.',
    message: asGiven,
  },
  'text-too-long': {
    title: 'a text that no sheet can hold',
    explanation:
      'A single text may have 4,000 characters, and all texts of a cut together 100,000. What is longer was pasted by mistake, or belongs on a page of its own beside the sheet.',
    message: asGiven,
  },
  'levels-too-many': {
    title: 'more levels than any sheet can hold',
    explanation: 'A cut may have 200 levels. A crowd of more is drawn in groups, several figures on a level.',
    message: asGiven,
  },
  'same-output': {
    title: 'two cuts would be written to one file',
    explanation:
      'Two cuts of the run would be written to a file of the same name, and the second would silently replace the first. Neither is written.',
    message: asGiven,
  },
  'output-is-input': {
    title: 'the output would replace a text',
    explanation:
      'The file to be written is one of the texts that are read. Printing over the only copy of a cut would lose it, so it is refused.',
    message: asGiven,
  },
  'output-unwritable': {
    title: 'the output cannot be written',
    explanation:
      'The folder may not be written to, something else stands in the way, or the disk is full. Missing folders are made. Outputs are written beside their final name and then renamed, so the last good file is still whole.',
    message: asGiven,
  },
  'unknown-command': {
    title: 'there is no such command',
    explanation: 'The first word is none of the commands. cutwright --help lists them.',
    message: asGiven,
  },
  'unknown-option': {
    title: 'the command has no such option',
    explanation: 'Each command has its own options; its --help shows them with examples.',
    message: asGiven,
  },
  'option-value': {
    title: 'an option got a value that it does not take',
    explanation:
      'The option is known, but its value is missing, is none of its words, is out of its range, or fits nothing that would be printed.',
    message: asGiven,
  },
  'wrong-arguments': {
    title: 'the command was given too little, too much or the wrong thing',
    explanation:
      'Something that the command needs is missing from the line, there is more on the line than it can use, or two things do not go together. The message says which.',
    message: asGiven,
  },
  'internal-fault': {
    title: 'the program itself failed',
    explanation:
      'This is a fault of the program and not of the text. The other cuts of the run are still done. Please report it with the cut; until it is mended, taking out the last change usually helps.',
    message: asGiven,
  },
};
