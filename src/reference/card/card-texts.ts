/** What the card says in words, but for the titles of pages. What is typed is the same in every language. */

/** Timelines that are drawn. */
export const STRIPS = [
  '1:4 2..',
  '1---2',
  '1-=-2',
  'on 1 1----2..',
  '1:4 x:2 2..',
  '1-2 1.1 1..',
  '1-1a-2',
  '1 @7 2..',
  '(1-2-)..',
  '(1-2)<>..',
] as const;

/** What is typed on rows that are no statement's example, by the section in which they stand. */
export const TYPED = {
  times: ['37', '5+12', "8'04", '1+1..5+0', 'hit, hit+6, hit-3'],
  charts: ['1{late}---2', '1{1/4 1/2 7/8}---2'],
  levels: ['free, carry, flash, reuse 8/C, picture "bg.png"'],
  camera: ['truck quick A@1 > B@19 fair キ@7 62%', 'truck level A 100%@1 > 140%@3+0'],
  behind: [
    'ease 6 12',
    'curve 0.42 0 0.58 1',
    'steps 1 2 4*3 2 1',
    'graduated',
    'on 2',
    'carry A,B',
    'log',
    'about 10,20',
    'loop 310mm',
    'curved',
    'sideways',
  ],
  typing: ['# waits', 'mm, cm, in'],
} as const;

export type Typed = (typeof TYPED)[keyof typeof TYPED][number];

/** The sections in the order of the card. */
export type CardPart =
  | 'times'
  | 'cut'
  | 'charts'
  | 'levels'
  | 'words'
  | 'camera'
  | 'behind'
  | 'light'
  | 'typing'
  | 'commands';

export interface CardTexts {
  /** The title of the file. */
  readonly document: string;
  readonly title: string;
  /** What stands before the timelines that are drawn. */
  readonly about: string;
  readonly sections: Readonly<Record<CardPart, string>>;
  readonly strips: Readonly<Record<(typeof STRIPS)[number], string>>;
  readonly meanings: Readonly<Record<Typed, string>>;
  /** A line that begins with a blank, and what it does. */
  readonly indented: readonly [line: string, meaning: string];
}

export const ENGLISH_CARD: CardTexts = {
  document: 'The cut language',
  title: 'cutwright: the cut language',
  about: 'A "title": what level A shows, from frame 1 to the last',
  sections: {
    times: 'Times',
    cut: 'The cut',
    charts: 'Charts',
    levels: 'Levels',
    words: 'Words',
    camera: 'Camera',
    behind: 'Behind a move',
    light: 'Light',
    typing: 'Typing',
    commands: 'Commands: cutwright …',
  },
  strips: {
    '1:4 2..': 'key 1 for 4 frames, key 2 to the end',
    '1---2': '- is one in-between; on twos if nothing is said',
    '1-=-2': '= is a breakdown',
    'on 1 1----2..': 'on ones from here on',
    '1:4 x:2 2..': 'x: nothing is shown',
    '1-2 1.1 1..': '1.1: the in-between shown again',
    '1-1a-2': '1a: a key put in later',
    '1 @7 2..': '2 starts on frame 7',
    '(1-2-)..': 'a cycle; also )*3 and ):3+0',
    '(1-2)<>..': 'there and back; also <>*2',
  },
  meanings: {
    '37': 'frames, or frame 37; the first row is frame 1',
    '5+12': 'seconds and frames; as a place row 12 of the sixth second',
    "8'04": 'feet and frames of 35 mm film, 16 a foot',
    '1+1..5+0': 'a range, both included; 1+1.. goes to the end',
    'hit, hit+6, hit-3': 'a mark, and frames from it',
    '1{late}---2': 'in-betweens crowd the later key; early, both, even',
    '1{1/4 1/2 7/8}---2': 'one share of the way for each',
    'free, carry, flash, reuse 8/C, picture "bg.png"':
      'also said of a level: edges may show, fixed to the camera, a flash, drawings of cut 8, its scan',
    'truck quick A@1 > B@19 fair キ@7 62%': 'constant speed to the mark, then the fairing',
    'truck level A 100%@1 > 140%@3+0': 'the size of levels',
    'ease 6 12': 'soft start over 6 frames, soft stop over 12',
    'curve 0.42 0 0.58 1': 'a cubic Bézier, as CSS Easing has it',
    'steps 1 2 4*3 2 1': 'graduations by hand, mm',
    graduated: 'numbered graduations, frame by frame',
    'on 2': 'sampled on twos',
    'carry A,B': 'these levels go with the camera (pan, truck)',
    log: 'by equal ratios (truck)',
    'about 10,20': 'the point that stays (truck level, turn)',
    'loop 310mm': 'artwork painted as a loop (pull)',
    curved: 'one smooth way through all places (pan, slide)',
    sideways: 'to the right first (shake, sway)',
    '# waits': 'a comment, to the end of the line',
    'mm, cm, in': 'units of length; mm if nothing is said',
  },
  indented: ['indented line', 'goes on with the statement above'],
};
