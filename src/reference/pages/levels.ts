import type { StatementPage } from '../page.js';

export const levelPages: Readonly<Record<string, StatementPage>> = {
  stack: {
    title: 'the levels from the bottom to the top',
    text: 'All levels, background and overlays in their places. Without it the stack is `BG`, then the levels as they are written. With it, a level that it does not name is an error. The sheet prints the order in its memo and in the order of its columns.',
    parts: [['BG A BOOK1 B', 'names with blanks between, the lowest first']],
    examples: [
      { text: 'stack BG A BOOK1 B\nA: 1..\nB: (1--2--)..\n', says: 'BOOK1 lies between A and B.' },
      { text: 'stack BG2 BG1 A\nA: 1..\n', says: 'Two backgrounds, one over the other.' },
    ],
    codes: ['stack-twice', 'level-outside', 'unknown-level', 'statement-twice', 'levels-too-many'],
    see: ['level', 'timeline'],
    subject: 'levels.md#stack',
  },
  level: {
    title: 'a level’s artwork, and where its drawings come from',
    text: 'What a timeline does not say of a level. Needed only where one of these holds. The parts stand in any order, each once.',
    parts: [
      [
        'size 560x200mm',
        'width and height of the artwork, mm, cm or in. Default: the episode’s `artwork` paper',
      ],
      [
        'at 130,0',
        'where the artwork’s centre lies from the centre of the standard field: to the right, up. Default: 0,0',
      ],
      ['free', 'its edges may come into the picture; no warning'],
      ['carry', 'it is fixed to the camera throughout, in place, size and turn'],
      [
        'flash',
        'it is a flash of light each time that it appears: flashes are counted. A caution only; WCAG 2.3.1, ITU-R BT.1702 and the broadcaster’s own test decide',
      ],
      ['reuse 8/C', 'its drawings are those of level C of cut 8, with their names and numbers'],
    ],
    examples: [
      {
        text: 'stack BG A\nlevel BG size 560x200mm at 130,0\nlevel A free\nA: 1..\nfield B full at 180,0\npan full@1 > B@8+0 ease 12\n',
        time: '8+0',
        says: 'A wide background, its centre 130 mm to the right.',
      },
      {
        text: 'stack BG A BOOK1\nlevel BOOK1 free\nlevel A reuse 8/C\nA: 1--2..\n',
        says: 'A’s drawings come from cut 8; the edges of BOOK1 may show.',
      },
    ],
    codes: [
      'part-twice',
      'size-zero',
      'reuse-self',
      'reuse-unknown',
      'reuse-number',
      'reuse-count',
      'reuse-circle',
      'reuse-nothing',
      'artwork-edge',
      'artwork-long',
      'carried-level',
      'flashes',
      'level-empty',
      'name-twice',
      'glued-number',
    ],
    see: ['stack', 'timeline', 'cels', 'pan'],
    subject: 'levels.md#what-a-level-is',
  },
  cels: {
    title: 'the numbers that drawings on paper have',
    text: 'Once drawings exist, their numbers must not move: the first name in the line is number 1, the next number 2, and so on. A new drawing gets the highest number + 1. `cutwright number` writes and extends the line; nobody needs to type it.',
    parts: [
      ['A', 'the level'],
      ['2, 3a', 'a key'],
      ['1.2', 'the second in-between after key 1, on the way to the key behind it in the line'],
      ['1>3.2', 'the second on the way from 1 to 3, where another key stands behind it'],
      ['1.1a', 'an in-between put in later, after 1.1; `1.0a` before it'],
      ['_', 'a number that is not used'],
    ],
    examples: [
      {
        text: 'A: 1--2-3..\ncels A 1 1.1 1.2 2 2.1 3\n',
        time: '1+0',
        says: 'Six drawings on paper, numbers 1 to 6.',
      },
      {
        text: 'A: 1---2..\ncels A 1 1.1 1.2 2 1.1a\n',
        time: '1+0',
        says: 'A third in-between, put in later after 1.1, is number 5: the sheet shows 1 2 5 3 4.',
      },
    ],
    codes: ['cels-count', 'cels-twice', 'cels-ambiguous', 'cels-way', 'unknown-level', 'statement-twice'],
    see: ['numbering', 'timeline', 'level'],
    subject: 'cels.md#once-the-drawings-exist',
  },
  numbering: {
    title: 'how finished drawings are numbered',
    text: 'For this cut; the episode’s `numbering` says it for all. The numbers stand in the cel columns of the sheet.',
    parts: [
      ['sequence', '1, 2, 3 … in the order in which they are first shown. The default'],
      ['frame', 'by the frame on which they are first shown: on twos 1, 3, 5 …'],
    ],
    examples: [
      { text: 'numbering frame\nA: 1--2--3..\n', time: '1+0', says: 'The cel column says 1, 3, 5, 7 …' },
      {
        text: 'numbering sequence\nA: 1--2--3..\n',
        time: '1+0',
        says: 'For one cut of an episode that numbers by frames.',
      },
    ],
    codes: ['unknown-numbering', 'statement-twice'],
    see: ['cels'],
    subject: 'cels.md',
  },
  use: {
    title: 'reads phrases, fields and levels from another file',
    text: 'What several cuts share stands in a file of its own. The path is meant from the folder of the file that says it. It leads to the same folder, or to one below the folder of the `episode.yaml`, nowhere else. Files may use files. It prints nothing by itself.',
    parts: [
      ['"house.cut"', 'the file; its phrases, levels and fields are there as if they were written here'],
    ],
    examples: [
      {
        text: 'use "house.cut"\nA "Pim": walk*5\n',
        files: { 'house.cut': 'phrase walk = 1--=--2--=--\n' },
        says: 'With `phrase walk = 1--=--2--=--` in house.cut.',
      },
      {
        text: 'use "house.cut"\nA: 1..\nfix WINDOW\n',
        files: { 'house.cut': 'field WINDOW 98% at 2,1\n' },
        says: 'With `field WINDOW 98% at 2,1` in house.cut.',
      },
    ],
    codes: ['use-missing', 'use-outside', 'use-circle', 'name-twice'],
    see: ['phrase', 'field', 'level'],
    subject: 'sharing.md#files-that-several-cuts-use',
  },
};
