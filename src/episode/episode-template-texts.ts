/** The words of a new episode's files, by the language of whoever begins it. */

import type { UserLanguage } from '../language/user-language.js';

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

const ja: TemplateTexts = {
  manifest: 'この話数のすべてのカットに共通の設定。行頭の # を取ると、その行の値を変えられます。',
  says: {
    convention: () => 'シートの様式：japan（日本）か west（欧米）',
    labels: (words) => `用紙の言語：${words.join(' か ')}`,
    paper: () => 'A4 A3 B4（JIS） B5 letter legal tabloid C4 kaku2（角2）',
    fps: () => '毎秒コマ数',
    on: () => '長さを書かない絵のコマ数',
    numbering: () => '動画番号の付け方：sequence（連番）か frame（コマ番号）',
    rows: () => '1ページの行数：秒（フィート）で割り切れる数',
    field: () => '標準フレームの大きさ',
    fields: () => 'フレームの目盛りの数：12 か 16',
    artwork: () => 'セルを描く用紙の大きさ',
    lengths: (words) => `カメラの図と目盛りに印刷する単位：${words.join(' か ')}`,
    pegs: () => '原寸の印刷に描くタップ穴：flat-round-flat か none（なし）',
    output: () => '完成画面のピクセル数',
    scan: () => 'スキャンの解像度',
    drawings: () => 'スキャンの置き場所（カットの動きの確認に使う）',
    overlap: () => 'O.Lのカット尺の数え方：half（半分ずつ）か full（全部）',
    budget: () => '話数の尺：秒＋コマ',
    stages: () => 'カットが通る工程（レイアウト、原画、チェック、動画、仕上、撮影）',
    due: () => '工程の締切',
    rates: () => '工程の単価',
    artists: () => '誰がどのカットを描くか',
    cuts: () => '話の順に並ぶ：2 は 10 より前',
  },
  values: {
    rates: '{ finish: 250 円 per drawing }',
    artists: '{ "名前A": [1, 2], "名前B": [3] }',
  },
  house: `# いくつかのカットで共用するもの。カットからの読み込み方：use "../house.cut"
# 共用する動きを使うセルは、それぞれ自分の絵 1、2 … を持ちます。

phrase 歩き = 1--2--3--4--                # 2歩でひと回り：歩き.. は最後まで繰り返し、歩き*2 は2回
phrase まばたき = 1-2:3 1.1               # 3コマ閉じて、同じ中割りを通って開く
`,
  ignored: 'テキストから印刷したもの。',
  firstCut: '最初のカット',
};

export const templateTexts: Readonly<Record<UserLanguage, TemplateTexts>> = { en, ja };
