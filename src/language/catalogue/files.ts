import { entries } from './entry.js';

/** Faults of files, of the episode manifest and of the command line. */
export const files = entries({
  // ---- reading
  'file-missing': {
    severity: 'error',
    title: 'a file is not there',
    explanation:
      'A file or folder was named that does not exist. Where a file with nearly the same name stands in the same folder, the message offers it. The other cuts of the run are still done.',
    example: {
      kind: 'situation',
      failing: 'cutwright build c12.cut, where the folder holds c012.cut only',
      mended: 'cutwright build c012.cut',
    },
  },
  'file-unreadable': {
    severity: 'error',
    title: 'a file cannot be read',
    explanation:
      'The file is there but its text cannot be had: the person who runs the command has no permission, or the disk gives an error.',
    example: {
      kind: 'situation',
      failing: 'cutwright check c012.cut, where reading the file is not permitted',
      mended: 'give yourself permission to read it, then run the command again',
    },
  },
  'file-too-large': {
    severity: 'error',
    title: 'a file is too large for a cut',
    explanation:
      'A cut is a page of typing. A text over 8 MB (a manifest over 256 kB) is nearly always another file that was named by mistake, so it is refused before it is read as a cut.',
    example: {
      kind: 'situation',
      failing: 'cutwright check scan.cut, where scan.cut is a picture of 50 MB under a wrong name',
      mended: 'cutwright check c012.cut',
    },
  },
  'wrong-encoding': {
    severity: 'error',
    title: 'the text is in another encoding',
    explanation:
      'Cuts and manifests are UTF-8 text. The bytes at the place that is shown are no UTF-8, so the editor saved the file in an older encoding. Save it again as UTF-8; nothing else has to change.',
    example: {
      kind: 'situation',
      failing: 'a cut saved as Shift_JIS, Latin-1 or UTF-16',
      mended: 'the same cut saved as UTF-8',
    },
  },
  'not-marked': {
    severity: 'warning',
    title: 'nothing is marked as changed',
    explanation:
      'The sheets were to mark what has changed in a cut since a revision, but the cut had errors then, so that there is nothing to compare with. The cut is printed without marks. Name a revision at which it was whole.',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --marked-against HEAD~1, where the cut of HEAD~1 is too short',
      mended: 'cutwright build c012.cut --marked-against HEAD~2',
    },
  },
  'not-text': {
    severity: 'error',
    title: 'the file is no text',
    explanation:
      'The file holds NUL bytes, which no text has. It is a picture, an archive or a damaged file; look at what the editor saved.',
    example: {
      kind: 'situation',
      failing: 'cutwright check c012.cut, where the disk filled up and left NUL bytes in the file',
      mended: 'write the cut again, or take it from the last backup',
    },
  },
  'no-cuts': {
    severity: 'error',
    title: 'nothing to do',
    explanation:
      'The folder or the manifest was searched and holds no cut. Cuts are files whose names end in .cut; a manifest lists them under cuts.',
    example: {
      kind: 'situation',
      failing: 'cutwright build scenes/, where scenes/ holds pictures only',
      mended: 'cutwright build cuts/',
    },
  },
  'pattern-empty': {
    severity: 'warning',
    title: 'a pattern of the manifest finds no cut',
    explanation:
      'One of the patterns under cuts fits no file of the episode, so it adds nothing. Perhaps a folder was renamed. In a pattern * stands for any characters of one name, ? for one, and ** for any folders.',
    example: {
      kind: 'situation',
      failing: 'cuts: [ "cut/*.cut" ] in episode.yaml, where the folder is called cuts',
      mended: 'cuts: [ "cuts/*.cut" ]',
    },
  },
  'cut-twice': {
    severity: 'warning',
    title: 'two files say that they are the same cut',
    explanation:
      'Two files of one episode carry the same cut number. On paper nobody could tell them apart, and one of them is usually a copy whose number was not changed.',
    example: {
      kind: 'situation',
      failing: 'c012.cut and c013.cut both begin with: cut 12',
      mended: 'c013.cut begins with: cut 13',
    },
  },

  // ---- the manifest
  'episode-syntax': {
    severity: 'error',
    title: 'the manifest cannot be read',
    explanation:
      'The manifest, episode.yaml, is written in YAML: one "key: value" a line. At the place that is shown it is no YAML any more. A text that holds a colon, or that starts with a sign such as * or @, needs quotes.',
    example: {
      kind: 'situation',
      failing: 'title: Harbour: Lights',
      mended: 'title: "Harbour: Lights"',
    },
  },
  'episode-key': {
    severity: 'error',
    title: 'the manifest has no such key',
    explanation:
      'Every key of the manifest is checked, so that a misspelt one is not silently without effect. The message gives the nearest key. A key may stand only once.',
    example: { kind: 'situation', failing: 'papper: A4', mended: 'paper: A4' },
  },
  'episode-value': {
    severity: 'error',
    title: 'a value of the manifest does not fit its key',
    explanation:
      'The key is known, but what stands behind it is not what it takes: another kind of value, a word that it does not know, or a number out of its range. The message says what would do.',
    example: { kind: 'situation', failing: 'fps: fast', mended: 'fps: 24' },
  },
  'episode-outside': {
    severity: 'error',
    title: 'the manifest reaches out of its folder',
    explanation:
      'An episode is its folder and what is below: a pattern under cuts may not lead out of it, neither with ../ nor by an absolute path nor by a link. So an episode can be copied whole, and reads no file that is not its own.',
    example: {
      kind: 'situation',
      failing: 'cuts: [ "../other/*.cut" ]',
      mended: 'cuts: [ "cuts/*.cut" ]',
    },
  },
  'artist-without-cut': {
    severity: 'warning',
    title: 'an artist is named for a cut that is not there',
    explanation:
      'The manifest gives an artist a cut whose number no cut of the episode has. The name would be printed nowhere; perhaps the number is a slip.',
    example: {
      kind: 'situation',
      failing: 'artists: { M. Arai: [112] }, where the episode has the cuts 1 to 20',
      mended: 'artists: { M. Arai: [12] }',
    },
  },

  // ---- use
  'use-missing': {
    severity: 'error',
    title: 'a used file is not there',
    explanation:
      'The file that a use statement names cannot be read. Its path is taken from the folder of the file that says use.',
    example: {
      kind: 'text',
      failing: 'use "hous.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      mended: 'use "house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      files: { 'house.cut': 'phrase walk = 1--2--\n' },
    },
  },
  'use-outside': {
    severity: 'error',
    title: 'a used file lies outside the episode',
    explanation:
      'A cut may use files of its own folder, and files below the folder of its episode (where episode.yaml stands), and no others. So an episode can be copied whole, and a cut that came by mail reads nothing that is not its own.',
    example: {
      kind: 'text',
      failing: 'use "../../house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      mended: 'use "house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      files: { 'house.cut': 'phrase walk = 1--2--\n' },
    },
  },
  'use-circle': {
    severity: 'error',
    title: 'files use each other in a circle',
    explanation:
      'Following the use statements leads back to a file that is already being read. The message shows the chain; one of its links must go.',
    example: {
      kind: 'text',
      failing: 'use "house.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      mended: 'use "street.cut"\ncut 1\ntime 1+0\nA: walk..\n',
      files: {
        'house.cut': 'use "street.cut"\nuse "garden.cut"\n',
        'garden.cut': 'use "house.cut"\n',
        'street.cut': 'phrase walk = 1--2--\n',
      },
    },
  },

  'reuse-unknown': {
    severity: 'warning',
    title: 'the reused level is not to be found',
    explanation:
      'The level takes its drawings from another cut of the episode, and that cut or its level cannot be had: it is not among the cuts of the manifest, has errors, or leads into a circle of levels that reuse each other. The numbers are then given as if the drawings were this cut’s own, and may not be those that stand on the paper.',
    example: {
      kind: 'situation',
      failing: 'level C reuse 80/C, in an episode of the cuts 1 to 20',
      mended: 'level C reuse 8/C',
    },
  },

  // ---- printing
  'missing-glyph': {
    severity: 'error',
    title: 'a character cannot be printed',
    explanation:
      'The font that is printed with has no shape for this character (an emoji, a control character, a rare sign). An empty box on the sheet would be read as something, so the cut is not printed; write it in other words.',
    example: {
      kind: 'text',
      failing: 'cut 1\ntime 1+0\nmemo "Rain ☔🎬"\nA: 1..\n',
      mended: 'cut 1\ntime 1+0\nmemo "Rain"\nA: 1..\n',
    },
  },
  'text-too-long': {
    severity: 'error',
    title: 'a text that no sheet can hold',
    explanation:
      'A single text may have 4,000 characters, and all texts of a cut together 100,000. What is longer was pasted by mistake, or belongs on a page of its own beside the sheet.',
    example: {
      kind: 'situation',
      failing: 'memo "…", with a whole script pasted into the quotes',
      mended: 'memo "see script p. 12"',
    },
  },
  'levels-too-many': {
    severity: 'error',
    title: 'more levels than any sheet can hold',
    explanation: 'A cut may have 200 levels. A crowd of more is drawn in groups, several figures on a level.',
    example: {
      kind: 'situation',
      failing: 'a cut with the levels A1 to A300',
      mended: 'the same crowd on the levels A to H',
    },
  },
  'same-output': {
    severity: 'error',
    title: 'two cuts would be written to one file',
    explanation:
      'Two cuts of the run would be written to a file of the same name, and the second would silently replace the first. Neither is written.',
    example: {
      kind: 'situation',
      failing: 'cutwright build day/c001.cut night/c001.cut --output out/',
      mended: 'cutwright build day/c001.cut --output out/day/ and the same for night',
    },
  },
  'output-is-input': {
    severity: 'error',
    title: 'the output would replace a text',
    explanation:
      'The file to be written is one of the texts that are read. Printing over the only copy of a cut would lose it, so it is refused.',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --output c012.cut',
      mended: 'cutwright build c012.cut --output c012.pdf',
    },
  },
  'output-unwritable': {
    severity: 'error',
    title: 'the output cannot be written',
    explanation:
      'The folder may not be written to, something else stands in the way, or the disk is full. Missing folders are made. Outputs are written beside their final name and then renamed, so the last good file is still whole.',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --output /read-only/c012.pdf',
      mended: 'cutwright build c012.cut --output out/c012.pdf',
    },
  },

  // ---- the command line
  'unknown-command': {
    severity: 'error',
    title: 'there is no such command',
    explanation: 'The first word is none of the commands. cutwright --help lists them.',
    example: {
      kind: 'situation',
      failing: 'cutwright biuld c012.cut',
      mended: 'cutwright build c012.cut',
    },
  },
  'unknown-option': {
    severity: 'error',
    title: 'the command has no such option',
    explanation: 'Each command has its own options; its --help shows them with examples.',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --papper A4',
      mended: 'cutwright build c012.cut --paper A4',
    },
  },
  'option-value': {
    severity: 'error',
    title: 'an option got a value that it does not take',
    explanation:
      'The option is known, but its value is missing, is none of its words, is out of its range, or fits nothing that would be printed.',
    example: {
      kind: 'situation',
      failing: 'cutwright build c012.cut --paper A9',
      mended: 'cutwright build c012.cut --paper A4',
    },
  },
  'wrong-arguments': {
    severity: 'error',
    title: 'the command was given too little, too much or the wrong thing',
    explanation:
      'Something that the command needs is missing from the line, there is more on the line than it can use, or two things do not go together. The message says which.',
    example: { kind: 'situation', failing: 'cutwright build', mended: 'cutwright build c012.cut' },
  },
  'internal-fault': {
    severity: 'error',
    title: 'the program itself failed',
    explanation:
      'This is a fault of the program and not of the text. The other cuts of the run are still done. Please report it with the cut; until it is mended, taking out the last change usually helps.',
    example: {
      kind: 'situation',
      failing: 'a cut that makes the program fall over',
      mended: 'any other cut',
    },
  },
});
