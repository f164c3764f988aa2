import type { StatementPage } from '../statement-pages.js';

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
      [
        'with B, with B,BG',
        'it is drawn to these levels, in register: a hand and the cup that it holds. Said over the columns of both and in the memo',
      ],
      [
        'masks B',
        'it is a mask: what of level B lies under its paint is not seen. Said over the columns of both and in the memo. Films and the live view cut it out of B once the mask has a scan',
      ],
      ['reuse 8/C', 'its drawings are those of level C of cut 8, with their names and numbers'],
      [
        'picture "bg012.png"',
        'the scan of its artwork, for `shoot` and the live view: beside the file in which it is written. `{number}` stands for the number of a drawing',
      ],
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
      {
        text: 'stack BG A B C\nlevel B with A\nlevel C masks A\nA "porter": 1--2..\nB "trunk": 1--2..\nC "counter": 1..\n',
        says: 'The trunk is drawn to the hands of the porter; the counter hides him.',
      },
    ],
    codes: [
      'part-twice',
      'level-to-itself',
      'size-zero',
      'reuse-self',
      'reuse-unknown',
      'reuse-number',
      'reuse-count',
      'reuse-circle',
      'reuse-nothing',
      'scan-name',
      'scan-outside',
      'artwork-edge',
      'artwork-long',
      'carried-level',
      'flashes',
      'flash-unmeasured',
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
    codes: ['cels-count', 'cels-twice', 'cels-ambiguous', 'cels-passage', 'unknown-level', 'statement-twice'],
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

const LASTING: StatementPage['parts'] = [
  [
    ':8, :1+0',
    'behind a drawing: how long it is exposed, frames or seconds and frames. Behind a `)` or a phrase: for how long it is played',
  ],
  ['..', 'behind a drawing, a `)` or a phrase: to the next `@` or the end of the cut'],
];

export const timelinePages: Readonly<Record<string, StatementPage>> = {
  timeline: {
    title: 'what a level shows',
    text: 'The name of a level, perhaps a title for its column, a colon, and what the level shows from frame 1 to the last. One timeline a level. It fills the sheet exactly: too short or too long is an error that says by how much.\n\nA drawing that says nothing is exposed for two frames. Under “key drawings” the sheet prints keys in rings, in-betweens as dashes, drawings shown again or reused as small rings; a line is a hold, a cross an empty level. Under “finished cels” it prints their numbers.',
    parts: [
      ['3, 3a', 'key drawing 3; 3a is a key put in later between 3 and 4'],
      ['-', 'an in-between: `1---2` has three of them'],
      ['=', 'a breakdown: the in-between that the key animator wants settled first'],
      [
        '1.2',
        'the second in-between after key 1, shown again on its own; `1>3.2` where key 1 leads to several keys',
      ],
      ['x', 'nothing: the level is empty'],
      ['1 direct 2', 'no in-betweens from key 1 to key 2, and that is meant; printed beside the hold'],
      ...LASTING,
      [
        'on 3',
        'from here on, or to the `)` of its group, 3 frames for each drawing that says nothing. Default: 2, or what `on` says for the cut',
      ],
      ['@2+13', 'the next item starts on that frame; the one before is held until then'],
      ['( … )*3', 'a cycle: three times. `( … ):3+0` for three seconds, `( … )..` to the end'],
      ['( … )<>*2', 'there and back twice, the ends not doubled; alone it is once'],
      ['walk, walk*4', 'a phrase, played like a group'],
      [
        '1{late}---2',
        'a chart on the key that a passage starts from: `even` (the default), `early`, `late`, `both`, or one fraction for each in-between, `{1/4 1/2 7/8}`',
      ],
    ],
    examples: [
      {
        text: 'A "Nao":   1:12 1--2-3:1+0 (4-5-)*3 6..\nB "scarf": x:24 (1--2--)..\n',
        says: 'Key 1 for half a second, two in-betweens on twos to key 2, one to key 3, which is held a second; a cycle three times; key 6 to the end.',
      },
      {
        text: 'A: 1:12 1--2 @2+1 on 1 ----3:8 on 2 -4..\n',
        time: '3+0',
        says: 'Key 2 is held through frame 48; from 49 four in-betweens on ones lead to key 3.',
      },
      {
        text: 'A "lantern": 1:12{both}---2 x:6 (3--=--4)<>..\n',
        time: '3+0',
        says: 'In-betweens crowded at both keys; six empty frames; then there and back to the end.',
      },
    ],
    codes: [
      'timeline-short',
      'timeline-long',
      'between-from',
      'between-to',
      'key-after-group',
      'two-counts',
      'way-back',
      'reference-missing',
      'reference-ambiguous',
      'at-backwards',
      'at-gap',
      'at-nothing',
      'at-past-end',
      'at-in-group',
      'after-open',
      'direct-misplaced',

      'open-in-group',
      'length-and-open',
      'length-mark',
      'length-zero',
      'repeat-zero',
      'times-sign',
      'unclosed-group',
      'group-empty',
      'group-begins-between',
      'bounce-ends',
      'nested-too-deep',
      'unknown-mark',
      'unknown-phrase',
      'level-outside',
      'level-empty',
      'drawing-never-seen',
      'one-frame-flash',
      'chart-drawn',
      'key-jump',
      'key-backwards',
      'unknown-chart',
      'chart-count',
      'chart-not-rising',
      'chart-outside',
      'chart-narrow',
      'chart-twice',
      'chart-unused',
      'cels-count',
      'missing-colon',
    ],
    see: ['on', 'phrase', 'mark', 'cels', 'stack'],
    subject: 'timeline.md',
  },
  phrase: {
    title: 'timing with a name',
    text: 'Timing that several levels or several cuts use: a walk, a blink. A level plays it by its name, like a group: `walk`, `walk*4`, `walk:3+0`, `walk..`, `swing<>`. It holds no drawings of its own: each level that plays it has its own drawings 1, 2 and so on.',
    parts: [
      ['walk', 'its name; any but `x` and `on`'],
      ['=', 'between the name and the items; among the items it is a breakdown'],
      [
        '1--2 direct 3 x:8 on 3 walk*2',
        'its items, as in a timeline: keys, in-betweens, `direct` for none of them, `x` for nothing, `on 3`, groups, charts, other phrases. `@` and an open end are for timelines',
      ],
    ],
    examples: [
      {
        text: 'phrase walk = 1--=--2--=--\nphrase blink = 1-2:3 1.1\nA "Pim":  walk*5\nB "eyes": 1:2+0 blink 1:1+0 blink 1..\n',
        says: 'Pim walks for five passes; her eyes blink twice.',
      },
      {
        text: 'phrase swing = 1--2\nA "rope": swing<>*3 3..\n',
        time: '2+0',
        says: 'Played there and back, three times.',
      },
    ],
    codes: [
      'phrase-circle',
      'phrase-unused',
      'unknown-phrase',
      'name-twice',
      'too-deep',
      'at-in-group',
      'open-in-group',
    ],
    see: ['timeline', 'use', 'on'],
    subject: 'sharing.md#phrases',
  },
};
