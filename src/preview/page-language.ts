/** The live view's page in the user's language: its texts are exchanged when it is served, and its script is told by the page's `lang`. */

import type { UserLanguage } from '../language/user-language.js';

/** What the page says in English, and in Japanese. A text that is not here (signs, keys) is the same in both. */
export const PAGE_TEXTS: Readonly<Record<string, string>> = {
  Cuts: 'カット',
  'Copy the place': '場所をコピーする',
  'Filter cuts (/)': 'カットを絞り込む (/)',
  'Fit a page to the window, and back to true size (f)': '1枚を画面に収める、原寸に戻す (f)',
  'No cut fits': '合うカットがありません',
  Frame: 'コマ',
  Player: '再生',
  Playing: '再生の操作',
  Problems: '誤り・注意',
  Speed: '速さ',
  'What is played': '再生する範囲',
  'A frame back (,)': '1コマ戻る (,)',
  'A frame on (.)': '1コマ進む (.)',
  'Again and again (l)': '繰り返す (l)',
  'Fit the width (0)': '幅に合わせる (0)',
  'Keys (?)': 'キーの一覧 (?)',
  'Larger (+)': '大きく (+)',
  'Smaller (-)': '小さく (-)',
  'Play (space)': '再生 (スペース)',
  'Play all rows (Esc)': '全部の行を再生 (Esc)',
  'Play from this row ([)': 'この行から再生 ([)',
  'Play to this row (])': 'この行まで再生 (])',
  'See it move (space)': '動かして見る (スペース)',
  'Speed (s)': '速さ (s)',
  'The whole episode (e)': '話数全体 (e)',
  'a frame back, on; in the player also ← →': '1コマ戻る、進む。再生中は ← → も',
  'all rows': '全部の行',
  back: '戻る',
  copy: 'コピー',
  episode: '話数',
  'fit the width': '幅に合わせる',
  'filter the cuts': 'カットを絞り込む',
  fit: '幅',
  'fit a page to the window; again: true size': '1枚を画面に収める。もう一度で原寸',
  'from here': 'ここから',
  'larger, smaller': '大きく、小さく',
  'let go of the marked rows': '印の付いた行を戻す',
  'loop, speed': '繰り返し、速さ',
  loop: '繰り返し',
  move: '動き',
  'next, previous cut': '次、前のカット',
  'next, previous page': '次、前のページ',
  on: '進む',
  'play from this row, to this row; or draw over rows': 'この行から、この行まで再生。行をなぞってもよい',
  page: '全体',
  play: '再生',
  'print these pages': 'このページを印刷する',
  'put the player away': '再生をしまう',
  'see it move: play, stop': '動かして見る：再生、停止',
  'speed 1': '速さ 1',
  'speed ½': '速さ ½',
  'speed ¼': '速さ ¼',
  'the place in the text of the marked row; or press on a row':
    '印の付いた行のテキストでの場所。行を押してもよい',
  'the whole episode, or the cut': '話数全体、またはカット',
  'to here': 'ここまで',
  'true size': '原寸',
};

/** The page's HTML with its texts in the language. */
export function pageInLanguage(html: string, language: UserLanguage): string {
  if (language === 'en') return html;
  const exchanged = (text: string): string => PAGE_TEXTS[text] ?? text;
  return html
    .replace('<html lang="en">', `<html lang="${language}">`)
    .replace(/ (title|aria-label|placeholder)="([^"]+)"/g, (_, name, text) => ` ${name}="${exchanged(text)}"`)
    .replace(/>([^<>\n]+)</g, (_, text) => `>${exchanged(text)}<`);
}
