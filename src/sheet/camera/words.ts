/** What camera column and memo call moves and light, in the two languages of a sheet. */

import type { LabelLanguage } from '../../shot/settings.js';

export interface CameraWords {
  readonly fix: string;
  readonly pan: string;
  /** A pan with levels that go along, and one written frame by frame. */
  readonly followPan: string;
  readonly graduatedPan: string;
  readonly pull: string;
  readonly follow: string;
  readonly slide: string;
  /** Before `T.U` and `T.B` of one level. */
  readonly level: string;
  readonly turn: string;
  readonly clockwise: string;
  readonly counterClockwise: string;
  readonly shake: string;
  readonly roll: string;
  readonly sideways: string;
  readonly exposure: string;
  readonly glow: string;
  /** Whatever else the compositor must do. */
  readonly effect: string;
  readonly loop: string;
  readonly fairing: string;
  readonly equalRatios: string;
  /** One frame, as in `3 mm/f`. */
  readonly frame: string;
  every(time: string): string;
  carry(levels: string): string;
  on(frames: number): string;
  ease(leave: number, arrive: number): string;
  curve(values: string): string;
  fromPage(page: number): string;
  /** Moves that have no room in the column. */
  noLane(moves: string): string;
  /** `what` is `O.L`, with or without its length. */
  overlap(what: string, way: 'in' | 'out', cut: string | null): string;
  atCutPoint(cutPoint: string, overlap: string): string;
}

const en: CameraWords = {
  fix: 'FIX',
  pan: 'PAN',
  followPan: 'follow PAN',
  graduatedPan: 'graduated PAN',
  pull: 'pull',
  follow: 'follow',
  slide: 'slide',
  level: 'layer ',
  turn: 'turn',
  clockwise: 'clockwise',
  counterClockwise: 'counter-clockwise',
  shake: 'shake',
  roll: 'sway',
  sideways: 'sideways',
  exposure: 'double exposure',
  glow: 'light through',
  effect: 'effect',
  loop: 'loop',
  fairing: 'fairing',
  equalRatios: 'equal ratios',
  frame: 'f',
  every: (time) => `every ${time}`,
  carry: (levels) => `with ${levels}`,
  on: (frames) => `on ${frames}s`,
  ease: (leave, arrive) => `ease ${leave}/${arrive}`,
  curve: (values) => `curve ${values}`,
  fromPage: (page) => `from p.${page}`,
  noLane: (moves) => `No room in the camera column: ${moves}`,
  overlap: (what, way, cut) =>
    `${what} with ${cut === null ? (way === 'in' ? 'the cut before' : 'the next cut') : `c${cut}`}`,
  atCutPoint: (cutPoint, overlap) => `${cutPoint}, ${overlap}`,
};

const ja: CameraWords = {
  fix: 'FIX',
  pan: 'PAN',
  followPan: '付けPAN',
  graduatedPan: '目盛りPAN',
  pull: '引き',
  follow: 'フォロー',
  slide: 'スライド',
  level: 'セル',
  turn: '回転',
  clockwise: '右回り',
  counterClockwise: '左回り',
  shake: '画面動',
  roll: 'ローリング',
  sideways: '横',
  exposure: 'WXP',
  glow: 'T光',
  effect: '特効',
  loop: 'ループ',
  fairing: 'フェアリング',
  equalRatios: '等比',
  frame: 'コマ',
  every: (time) => `周期 ${time}`,
  carry: (levels) => `${levels}付け`,
  on: (frames) => `${frames}コマ打ち`,
  ease: (leave, arrive) => `加減速 ${leave}/${arrive}`,
  curve: (values) => `カーブ ${values}`,
  fromPage: (page) => `${page}枚目から`,
  noLane: (moves) => `カメラ欄に入らないもの：${moves}`,
  overlap: (what, way, cut) =>
    `${cut === null ? (way === 'in' ? '前カット' : '次カット') : `c${cut}`}と${what}`,
  atCutPoint: (cutPoint, overlap) => `${cutPoint}、${overlap}`,
};

export const cameraWords = (language: LabelLanguage): CameraWords => (language === 'ja' ? ja : en);
