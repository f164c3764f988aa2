/** The words of hovers in Japanese. */

import { moveNames } from '../language/catalogue/ja/terms-texts-ja.js';
import { feetAndFrames, rowName, secondsAndFrames } from '../shot/time-notation.js';
import { figure } from '../words/number-format.js';
import type { HoverWords } from './hover-words.js';

const frames = (count: number): string => `${count}コマ`;

const quoted = (title: string): string => (title === '' ? '' : `「${title}」`);

const CHARTS = { even: '均等', early: '先ヅメ', late: '後ヅメ', both: '両ヅメ' } as const;

/** Those of vowels are called as they are typed. */
const SHAPES: Readonly<Record<string, string>> = { closed: '閉じ口', half: '中開き', open: '開き口' };

export const JAPANESE_HOVERS: HoverWords = {
  lasting: (count, fps) => `${frames(count)}（${secondsAndFrames(count, fps)}）`,
  between: (from, to) => (from === to ? `${from}コマ目` : `${from}～${to}コマ目`),
  frameList: (places) => `${places.replaceAll('–', '～').replaceAll(', ', '、')}コマ目`,
  asLength: (count, fps) =>
    `${frames(count)} = ${secondsAndFrames(count, fps)} = 35 mm フィルムで ${feetAndFrames(count)}`,
  asPosition: (frame, fps) =>
    `${frame}コマ目：${rowName(frame, fps, false)} の行（フィートでは ${rowName(frame, 16, true)}）。ここまで ${JAPANESE_HOVERS.asLength(frame, fps)}`,
  listed: (parts, most = 6) =>
    parts.length > most
      ? `${parts.slice(0, most).join('、')} と、ほか${parts.length - most}`
      : parts.join('、'),
  mark: (name, offset) =>
    `マーク \`${name}\`${offset === 0 ? '' : ` ${offset > 0 ? '+' : '−'} ${Math.abs(offset)}`}：`,

  field: (name, size, percent) => `フレーム \`${name}\`：${size}、標準フレームの ${figure(percent)} %`,
  centre: (xMm, yMm) => `中心 ${figure(xMm)}, ${figure(yMm)} mm`,
  turned: (degrees) => `、${degrees > 0 ? '右' : '左'}回りに ${figure(Math.abs(degrees))}°`,
  chart: (fields, place) => `。${fields}フィールドチャートで \`${place}\``,
  move: (kind, stretch, length, steps) => `${moveNames[kind]}：${stretch}、${length}、${steps}ステップ`,
  gives: {
    width: '幅だけを動かす。中心はほかのカメラの動きによる',
    centre: '中心と回転だけを動かす。幅は T.U/T.B による',
  },
  way: (mm, speed) =>
    `距離 ${figure(mm)} mm${
      speed
        ? `、${speed.throughout ? 'ずっと' : '等速の所で'} ${figure(speed.mm, { decimals: 3 })} mm/コマ`
        : ''
    }`,
  largestStep: ({ mm, frame, percent, pixels }) =>
    `最大のステップ ${figure(mm)} mm${frame === null ? '' : `（${frame}コマ目）`}：フレームの幅の ${figure(percent)} %、${figure(pixels, { decimals: 1 })} ピクセル`,
  fromTo: (from, to) => `${from} から ${to} へ`,
  ofWidth: (mm) => `幅 ${figure(mm)} mm`,

  kinds: { key: '原画', breakdown: '中割り参考', inbetween: '中割り', empty: '空セル' },
  drawing: (level, names, kind, cels) => `**${level} ${names}**：${kind}、動画番号 ${cels}`,
  empty: (level) => `**${level}**：空セル`,
  here: (stretch, length, times) => `ここは ${stretch}：${length}${times > 1 ? `、${times}回` : ''}`,
  inAll: (length, first) => `全部で ${length}、最初は${first}コマ目`,
  passage: (from, to, inbetweens, shares, chart) =>
    `${from} → ${to}：中割り${inbetweens}枚、割合 ${shares}${chart === null ? '' : `（${CHARTS[chart]}）`}`,
  group: (phrase, stretch, length, passes, pass) =>
    `${phrase === null ? 'グループ' : `フレーズ \`${phrase}\``}：${stretch}、${length}、${
      passes === 1 ? '1回' : `${frames(pass)}のリピート ${figure(passes)}回`
    }`,
  phrase: (name, lengths) => `フレーズ \`${name}\`${lengths === '' ? '' : `：1回 ${lengths}`}`,
  level: (name, title) => `セル **${name}**${quoted(title)}`,
  drawn: ({ keys, breakdowns, inbetweens, reused }) => {
    const kinds = [
      `原画 ${keys}`,
      ...(breakdowns > 0 ? [`中割り参考 ${breakdowns}`] : []),
      `中割り ${inbetweens}`,
    ];
    return `動画枚数 ${keys + breakdowns + inbetweens}：${kinds.join('、')}${reused > 0 ? `。ほかに兼用 ${reused}` : ''}`;
  },
  seen: (length, of, empty) => `${of}のうち ${length} 見える${empty > 0 ? `。空セル ${frames(empty)}` : ''}`,
  reuses: (cut, level) => `カット${cut}のセル${level}の兼用`,
  unused: (numbers) => `欠番：${numbers}`,
  artwork: (needed, given, loopMm) =>
    `必要な用紙 ${needed}${given === null ? '' : `、今の用紙 ${given}`}${
      loopMm === null ? '' : `、${figure(loopMm)} mm のループ`
    }`,
  neverSeen: '一度も見えない',

  cut: (number, title) => `カット${number}${quoted(title)}`,
  noCut: (number) => `話数にカット${number}はありません。`,
  recording: (seconds, kilohertz, channels) =>
    `録音 ${figure(seconds)} 秒、${figure(kilohertz)} kHz、${
      channels === 1 ? 'モノラル' : channels === 2 ? 'ステレオ' : `${channels}チャンネル`
    }`,
  heard: (rows) => (rows ? `。${rows.from}～${rows.to}行目で聞こえる` : '。シートのどの行でも聞こえない'),
  line: (unit, count, wanted) => `${count}${unit === 'mora' ? 'モーラ' : '音節'}：セリフの目安は約 ${wanted}`,
  lineHas: (length, aSecond) => `。今は ${length}、1秒に ${figure(aSecond, { decimals: 1 })}`,
  mouth: ({ speaker, lines, flapping, drawings, on, lead }) => {
    const unread = flapping === 0 ? '' : flapping === lines ? '（口パク）' : `（うち口パク ${flapping}）`;
    return `「${speaker}」の口：セリフ ${lines}${unread}、絵${drawings}枚、${on}コマ打ち、${frames(lead)}先行`;
  },
  seenAs: (shape, key, seen) =>
    `${SHAPES[shape] ?? shape} ${key}：${seen ? `${seen.cel}、${seen.length}` : '見えない'}`,
};
