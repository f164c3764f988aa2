/** The words of a new episode's files, by the language of whoever begins it. */

import type { UserLanguage } from '../language/user-language.js';
import { templateTextsJa as ja } from './ja/episode-template-texts-ja.js';

export interface TemplateTexts {
  /** The head of the manifest. */
  readonly manifest: string;
  /** Behind a key of the manifest; `words` are those that it takes. */
  readonly says: Readonly<Record<string, (words: readonly string[]) => string>>;
  /** Values that are words of somebody, by their key. */
  readonly values: Readonly<Record<'rates' | 'artists', string>>;
  /** The file of what cuts share. */
  readonly house: string;
  readonly ignored: string;
  readonly firstCut: string;
}

const en: TemplateTexts = {
  manifest: 'What holds for every cut of the episode. Take the # off a line to change what it says.',
  says: {
    convention: () => 'whose form of sheet: japan or west',
    labels: (words) => `language of the printed form: ${words.join(' or ')}`,
    paper: () => 'A4 A3 B4 (JIS) B5 letter legal tabloid C4 kaku2',
    fps: () => 'frames a second',
    on: () => 'frames that a drawing is exposed for, where nothing is said',
    numbering: () => 'of finished drawings: sequence, or frame',
    rows: () => 'rows a page: whole seconds, or whole feet',
    field: () => 'the standard field',
    fields: () => 'lines of its chart: 12 or 16',
    artwork: () => 'paper that levels are drawn on',
    lengths: (words) => `printed on charts and strips: ${words.join(' or ')}`,
    pegs: () => 'drawn on the true-size prints: flat-round-flat or none',
    output: () => 'pixels of the finished picture',
    scan: () => 'at which artwork is scanned',
    drawings: () => 'where scans lie, to see cuts move',
    overlap: () => 'of two cuts at an overlap: half, or full',
    budget: () => 'running time allowed: seconds + frames',
    stages: () => 'what each cut goes through',
    due: () => 'until when a stage is to be done',
    rates: () => 'what is paid for a stage',
    artists: () => 'who draws which cuts',
    cuts: () => 'in story order: 2 before 10',
  },
  values: {
    rates: '{ finish: 2.50 EUR per drawing }',
    artists: '{ "A. Name": [1, 2], "B. Name": [3] }',
  },
  house: `# What several cuts of the episode share. A cut reads it with: use "../house.cut"
# Each level that plays a phrase has its own drawings 1, 2, ...

phrase walk = 1--2--3--4--                # a cycle on two steps: walk.. goes on, walk*2 twice
phrase blink = 1-2:3 1.1                  # shut for 3 frames, open again over the same in-between
`,
  ignored: 'Printed from the texts.',
  firstCut: 'First cut',
};

export const templateTexts: Readonly<Record<UserLanguage, TemplateTexts>> = { en, ja };
