/** Words of the camera's pages: chart, table, strip, overlay. */

import type { LabelLanguage } from '../../shot/settings.js';

export interface CameraWords {
  camera(n: number): string;
  table(n: number): string;
  strip(n: number): string;
  overlay(n: number): string;
  readonly scale: string;
  readonly standard: string;
  readonly fields: string;
  readonly moves: string;
  readonly artwork: string;
  readonly sheet: string;
  readonly least: string;
  readonly loop: string;
  readonly centre: string;
  readonly width: string;
  readonly turned: string;
  readonly unused: string;
  readonly fromFrame: string;
  readonly wayAll: string;
  readonly largestStep: string;
  readonly edgeShows: string;
  readonly trueSize: string;
  readonly join: string;
  /** What is left out of a strip that is too long. */
  tooLong(shown: string, all: string): string;
  tile(n: number, of: number): string;
  tooMany(shown: number): string;
  at(column: number, columns: number, row: number, rows: number): string;
  readonly columns: {
    readonly frame: string;
    readonly time: string;
    readonly width: string;
    readonly field: string;
    readonly turn: string;
    readonly step: string;
    readonly scale: string;
    readonly camera: string;
  };
  readonly units: string;
}

const english: CameraWords = {
  camera: (n) => `camera ${n}`,
  table: (n) => `moves ${n}`,
  strip: (n) => `strip ${n}`,
  overlay: (n) => `overlay ${n}`,
  scale: 'scale',
  standard: 'standard field',
  fields: 'Fields',
  moves: 'Moves',
  artwork: 'Artwork',
  sheet: 'sheet',
  least: 'smallest that will do',
  loop: 'loop',
  centre: 'centre',
  width: 'width',
  turned: 'turned',
  unused: 'not used',
  fromFrame: 'frames',
  wayAll: 'way',
  largestStep: 'largest step',
  edgeShows: 'edge shows on frame',
  trueSize: 'Print at 100 %. This rule is 100 mm long.',
  join: 'lay the next piece on up to the inner dashed line',
  tooLong: (shown, all) => `Shown here: ${shown} mm of ${all} mm. The rest is in the move table.`,
  tile: (n, of) => `piece ${n} of ${of}`,
  tooMany: (shown) => `Too large to print whole: these are the first ${shown} pages. See the camera chart.`,
  at: (column, columns, row, rows) => `column ${column} of ${columns}, row ${row} of ${rows}`,
  columns: {
    frame: 'frame',
    time: 'time',
    width: 'width',
    field: 'field',
    turn: 'turned',
    step: 'step',
    scale: 'scale %',
    camera: 'camera',
  },
  units: 'mm on the artwork from the centre of the standard field, x to the right, y up; degrees clockwise',
};

const japanese: CameraWords = {
  camera: (n) => `カメラ図 ${n}`,
  table: (n) => `移動表 ${n}`,
  strip: (n) => `目盛り ${n}`,
  overlay: (n) => `フレーム ${n}`,
  scale: '縮尺',
  standard: '標準フレーム',
  fields: 'フレーム',
  moves: 'カメラワーク',
  artwork: '用紙',
  sheet: '用紙',
  least: '必要寸法',
  loop: 'リピート',
  centre: '中心',
  width: '幅',
  turned: '回転',
  unused: '不使用',
  fromFrame: 'コマ',
  wayAll: '距離',
  largestStep: '最大',
  edgeShows: '端が見えるコマ',
  trueSize: '100％で印刷。この線は100 mm。',
  join: '次の紙を内側の破線まで重ねる',
  tooLong: (shown, all) => `${all} mm のうち ${shown} mm まで。残りは移動表を見る。`,
  tile: (n, of) => `${of}枚のうち ${n}`,
  tooMany: (shown) => `大きすぎるため ${shown}枚まで印刷。カメラ図を見る。`,
  at: (column, columns, row, rows) => `横 ${column}/${columns}　縦 ${row}/${rows}`,
  columns: {
    frame: 'コマ',
    time: '秒+コマ',
    width: '幅',
    field: 'F',
    turn: '回転',
    step: '1コマ',
    scale: '倍率 %',
    camera: 'カメラ',
  },
  units: '標準フレームの中心から mm、x は右、y は上が正、回転は時計回りの度',
};

export const cameraWords = (labels: LabelLanguage): CameraWords => (labels === 'ja' ? japanese : english);

/** Two decimals, never `-0.00`. */
export function decimals(value: number): string {
  const text = value.toFixed(2);
  return text === '-0.00' ? '0.00' : text;
}
