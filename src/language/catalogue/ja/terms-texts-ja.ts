/** What the things that messages speak of are called in Japanese. */

import { figure } from '../../../words/number-format.js';
import type { MoveKind } from '../../tree-camera.js';
import type { RowText, RowTexts } from '../catalogue-entry.js';
import type {
  Expected,
  FieldQuantity,
  Misplaced,
  Neighbour,
  NoKeyAfter,
  NoKeyBefore,
  NotLent,
  NumberBounds,
  Quantity,
  RowsFault,
  Takes,
  Wanted,
} from '../message-terms.js';

const expected: Readonly<Record<Expected, string>> = {
  'level-names': 'セルの名前',
  'cut-number': 'カット番号（12、12A など）',
  'message-code': '注意・ヒントのコード（strobing など）',
  time: '時間（5+0 など）',
  range: '範囲（1+6..2+20 など）',
  'range-dots': '範囲の `..`（1+6..2+20 など）',
  millimetres: 'ミリの数値',
  'place-comma': '位置のコンマ（130,0 など）',
  'quoted-words': '引用符で囲んだ言葉',
  'scene-number': 'シーン番号（3、3B など）',
  direction: '方向（left、right、up、down、または 30deg などの角度）',
  side: '方向（left、right、up、down）',
  way: '速さか距離（1.2mm/f、95mm など）',
  'scale-on-frame': '倍率とコマ（100%@1 など）',
  'field-on-frame': 'フレームとコマ（A@1 など）',
  'marked-number': '印の倍率か角度（(100%) や (30) など）',
  'marked-place': '位置（(0,0) など）',
  'marked-place-comma': '位置のコンマ（(0,0) など）',
  'turning-levels': '`level` と、回すセル',
  'sway-length': 'ひと揺れの長さ（every 1+12 など）',
  'in-or-out': '`in` か `out`',
  'field-size': 'フレームの大きさ（full、60%、8F、120mm など）',
  'field-place': 'フレームの中心の位置（40,-12、2N 3E など）',
  'cut-level': 'ほかのカットのセル（8/C など）',
  'drawing-name': '絵の名前（1、1.2 など）',
  'drawing-names': '絵の名前（1 1.1 1.2 2 など）',
  fraction: '分数（1/2 など）',
  chart: 'ツメの指定（{late}、{1/2 3/4} など）',
  'chart-end': 'ツメを閉じる `}`',
  'frame-count': 'コマ数',
  'repeat-count': '回数',
  'drawing-or-group-end': '絵か、グループを閉じる `)`',
  drawing: '絵',
  drawings: '絵（1、- など）',
  'phrase-equals': '名前と絵の間の `=`',
  'short-length': '長さ（3mm など）',
  angle: '角度（30 など）',
  'on-frame': 'コマを示す `@`',
  steps: 'ミリの目盛り（1 2 4 8*17 4 2 1 など）',
  'leg-arrow': '行き先の前の `>`',
  name: '名前',
  'phrase-name': 'フレーズの名前',
  key: '原画',
  between: '中割りの名前（1.2 など）',
  text: '引用符で囲んだ文字',
  'unclosed-text': '閉じていない文字',
  size: '寸法（560x200mm など）',
  rate: '速さ（1.2mm/f など）',
  length: '長さ（120mm など）',
  degrees: '角度（30deg など）',
  share: '割合（60% など）',
  'chart-field': 'フレーム（8F など）',
  'chart-step': 'フィールドチャートの歩数（2N など）',
  'chart-field-part': 'フレーム（8.5F など）',
  'chart-step-part': 'フィールドチャートの歩数（2.5N など）',
  'whole-seconds': '秒（12s など）',
  'part-seconds': '秒（12.48s など）',
  timecode: 'タイムコード（0:03:12:08 など）',
  'recording-time': '録音の中の時間（12.48s、0:03:12:08 など）',
  seconds: '秒+コマ（5+12 など）',
  feet: "フィート'コマ（8'04 など）",
  decimal: '数値（1.5 など）',
  'between-lettered': '中割りの名前（1.1a など）',
  'key-lettered': '原画（3a など）',
  whole: '整数',
  glued: '余計なものが付いた数値',
  dots: '多すぎるドット',
  unknown: '使えない文字',
};

export const misplaced: Readonly<Record<Misplaced, string>> = {
  length: '`:8` のような長さは、絵かグループの後、`..` の前に1回だけ書きます',
  repeat: '`*3` のような回数は、グループの `)` かフレーズ名の後に1回だけ書きます',
  bounce: '`<>` は、グループの `)` かフレーズ名の後、`*3` の前に書きます',
  chart: '{late} のようなツメは、原画のすぐ後に1回だけ書きます',
  open: '`..` は、絵かグループの後に1回だけ書きます',
  arrow: '`>` は、1>3.2 のように原画と中割りの間に書きます',
  offset: 'ずらすコマ数は、hit+6 のようにマーク名のすぐ後に書きます',
  comma: '絵と絵の間はコンマではなく空白です',
  'group-end': '閉じるグループがありません',
  seconds: '絵を出す長さは、3:1+0 のようにコロンで書きます',
  'comma-for-blank': '間はコンマではなく空白です',
};

export const noKeyBefore: Readonly<Record<NoKeyBefore, string>> = {
  start: '前に原画がありません',
  empty: '前が空セルです。`x` をまたぐ中割りはできません',
  between: '前のグループが中割りで終わっています。先に原画を書いてください',
  cut: '前のグループの最後の回が途中で切れています。先に原画を書いてください',
};

export const noKeyAfter: Readonly<Record<NoKeyAfter, string>> = {
  end: '後に原画がありません',
  empty: '後が空セルです。`x` をまたぐ中割りはできません',
  'group-empty': '後のグループが `x` で始まっています。`x` をまたぐ中割りはできません',
  'group-between': '後のグループが中割りで始まっています',
  'group-end': 'グループが、戻る先の原画で始まっていません',
};

export const moveNames: Readonly<Record<MoveKind, string>> = {
  pan: 'PAN',
  truck: 'T.U/T.B',
  pull: '引き',
  follow: 'フォロー',
  slide: 'スライド',
  levelTruck: 'セルの T.U/T.B',
  turn: '回転',
  shake: '画面動',
  sway: 'ローリング',
};

export const quantities: Readonly<Record<Quantity, string>> = {
  on: '`on`',
  'place-x': '右への位置（mm）',
  'place-y': '上への位置（mm）',
  'point-x': '中心点の右への位置（mm）',
  'point-y': '中心点の上への位置（mm）',
  scale: '倍率（1 が 100%）',
  turn: '回転（度）',
  direction: '方向（度）',
  way: '距離（mm）',
  swing: '画面動の幅（mm）',
  'last-swing': '最後の画面動の幅（mm）',
  loop: 'ループの長さ（mm）',
  sway: '揺れ幅（mm）',
  'sway-time': 'ひと揺れのコマ数',
};

export const fieldQuantities: Readonly<Record<FieldQuantity, string>> = {
  width: '幅（mm）',
  x: '右への位置（mm）',
  y: '上への位置（mm）',
  turn: '回転（度）',
};

export const bounds: Readonly<Record<NumberBounds, string>> = {
  length: '100 m まで',
  size: '0 より大きく 100 m まで',
  scale: '1% から 10000% まで',
  degrees: '1000回転まで',
  frames: '1コマ以上',
};

// ---- pieces that several Japanese sentences are made of

/** The end of a sentence that says there is no such thing; `otherwise`: what stands there where nothing is like it. */
export const meant = (guess: string | null, otherwise = '。'): string =>
  guess === null ? otherwise : `。\`${guess}\` のことですか？`;

/** A statement by its first word, '' for a timeline. */
export const statementName = (word: string): string => (word === '' ? 'タイムライン' : `\`${word}\` の行`);

/** What could stand at one place. */
export const anyOf = (wanted: readonly Wanted[]): string =>
  wanted
    .map((one) => (Object.hasOwn(expected, one) ? expected[one as keyof typeof expected] : one))
    .join('、または');

/** What leads back to itself. */
export const around = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(' → ');

/** `120コマ`, or `96+12コマ（のりしろ込み）`: the frames of a cut and the rows that dissolves add. */
export const sheetRows = (time: number, rows: number): string =>
  rows === time ? `${rows}コマ` : `${time}+${rows - time}コマ（のりしろ込み）`;

export const neighbourName = ({ cut, file }: Neighbour): string =>
  cut === '' ? `\`${file}\`` : `カット${cut}`;

/** Words that may be typed: `A4`、`A3`、`B4`; of two `A` か `B`. */
export const oneOf = (words: readonly string[]): string => {
  const typed = words.map((word) => `\`${word}\``);
  return typed.join(typed.length === 2 ? ' か ' : '、');
};

/** At most six drawings of a level. */
export const drawingList = (drawings: readonly string[]): string =>
  drawings.length === 0 ? '絵なし' : `${drawings.slice(0, 6).join('、')}${drawings.length > 6 ? ' …' : ''}`;

/** U+0007 and so on. */
export const codePoint = (character: number): string =>
  `U+${character.toString(16).toUpperCase().padStart(4, '0')}`;

/** As a whole sentence without its full stop. */
export function notLent(reason: NotLent): string {
  switch (reason.why) {
    case 'circle':
      return `兼用が一周しています（${reason.links.join(' → ')}）`;
    case 'no-cut':
      return `この話数にカット${reason.cut}はありません`;
    case 'too-far':
      return `兼用が${reason.most}カットを超えて続いています`;
    case 'errors':
      return `カット${reason.cut}に誤りがあります`;
    case 'not-lent-either':
      return `カット${reason.cut}のセル${reason.level}も、見つからないセルの兼用です`;
    case 'no-level': {
      const offer = reason.guess === null ? '' : `（${reason.guess} のことですか？）`;
      return `カット${reason.cut}にセル${reason.level}はありません${offer}`;
    }
  }
}

const UNITS = { feet: 'フィート', seconds: '秒' } as const;

export function rowsFault({ unit, rows, most, near, paper }: RowsFault): string {
  return `1枚の行数は${rows}行（1${UNITS[unit]}）の倍数で、${paper} では${rows}行から${most}行までです。${near}行なら入ります`;
}

/** What a key of the manifest takes, as a noun. */
export function taken(takes: Takes): string {
  switch (takes.value) {
    case 'size':
      return `幅と高さ（\`254mm x 142.875mm\` など。どちらも ${takes.least} から ${takes.most} mm）`;
    case 'pixels':
      return '幅と高さのピクセル数（`1920x1080` など。どちらも 16 から 32768）';
    case 'dpi':
      return '解像度（`200dpi` など。10 から 10000）';
    case 'running-time':
      return '総尺（`1320+0` など、秒+コマ。1コマから10時間まで）';
    case 'whole':
      return `${takes.least} から ${takes.most} までの整数`;
    case 'rows':
      return `行数（${rowsFault(takes.fault)}）`;
    case 'cuts':
      return 'ファイル名かパターン（`cuts/*.cut` など）、またはその一覧';
    case 'cuts-of-artist':
      return '担当するカット（`[12, 13]` など）';
    case 'stages':
      return '工程の並び（`[layout, key, in-between, finish]` など）';
    case 'stage':
      return '工程の名前（`layout` など。文字で始まる1語）';
    case 'due':
      return '工程かカットとその日付（`{ key: 2027-03-19, key 12: 2027-03-26 }` など）';
    case 'day':
      return '日付（`2027-03-19` など、年から）';
    case 'rates':
      return '工程と単価（`{ key: 900 yen per key }` など）';
    case 'rate':
      return `単価（\`230 yen per drawing\` など。金額、通貨、\`per\`、${oneOf(takes.units)}）`;
    case 'choice':
      return oneOf(takes.words);
  }
}

/** `12.5%` of a share; one decimal at most. */
export const percent = (of: number): string => `${figure(of * 100, { decimals: 1 })}%`;

/** Rounded up, so that a piece of paper cut to it is never too small, and an edge never shows by 0 mm. */
export const paperMm = (mm: number): string => figure(Math.ceil(mm * 100 - 1e-6) / 100);

/** Rows of the sheet, and frames where nobody knows the sheet. */
export const rows: RowTexts = {
  plain: (from, to) => (to === undefined ? `${from}コマ目` : `${from}～${to}コマ目`),
  named: (rows, from, to) => `${rows}（${to === undefined ? from : `${from}～${to}`}コマ目）`,
  until: '～',
};

/** `3コマ目`, `3～7、12コマ目ほか`. */
export function frameList(frames: readonly number[], row: RowText): string {
  const runs: [number, number][] = [];
  for (const frame of frames) {
    const run = runs[runs.length - 1];
    if (run && frame === run[1] + 1) run[1] = frame;
    else runs.push([frame, frame]);
  }
  const more = runs.length > 4 ? 'ほか' : '';
  const named = runs.slice(0, 4).map(([a, b]) => (a === b ? row(a) : row(a, b)));
  // As the sheet names them, or in short where that is the same.
  if (named.some((one) => one.endsWith('）'))) return `${named.join('、')}${more}`;
  const texts = runs.slice(0, 4).map(([a, b]) => (a === b ? `${a}` : `${a}～${b}`));
  return `${texts.join('、')}コマ目${more}`;
}

/** Why the system refused: phrases that `Host` gives, which stand in parameters as they come. */
const REASONS: Readonly<Record<string, string>> = {
  'no such file': 'ファイルがありません',
  'is a folder': 'フォルダーです',
  'a part of the path is not a folder': 'パスの途中がフォルダーではありません',
  'permission denied': '権限がありません',
  'the disk can only be read': '読み取り専用のディスクです',
  'the disk is full': 'ディスクがいっぱいです',
  'the share of the disk is used up': 'ディスクの割り当てを使い切っています',
  'too large for the disk': 'ディスクに入らない大きさです',
  'the name is too long': '名前が長すぎます',
  'its links lead round in a circle': 'リンクが一周しています',
  'too many files are open': '開いているファイルが多すぎます',
  'in use by another program': 'ほかのプログラムが使っています',
  'the disk does not answer': 'ディスクが応答しません',
  'the name holds a character that no file name may hold': 'ファイル名に使えない文字があります',
  'is larger than 8 MB': '8 MB を超えています',
  'is no file': 'ファイルではありません',
  'others claim it at the same time': 'ほかも同時に使おうとしています',
  'a revision cannot be changed': '前の版は変えられません',
  'git is not installed': 'git が入っていません',
  'git gave an answer that cannot be read': 'git の答えが読めません',
  'the folder is in no git work tree': 'git の作業フォルダーではありません',
};

/** A reason as a sentence without its full stop; one that is not known stands as the system gave it. */
export function reasonInJapanese(reason: string): string {
  const revision = /^git knows no revision (`.*`)$/.exec(reason)?.[1];
  if (revision !== undefined) return `git に ${revision} という版はありません`;
  const git = /^git (?:says|failed): (.*)$/s.exec(reason)?.[1];
  if (git !== undefined) return `git が失敗しました（\`${git}\`）`;
  return REASONS[reason] ?? `\`${reason}\``;
}
