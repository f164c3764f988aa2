import { figure, significant } from '../../../words/number-format.js';
import type { CameraMessages } from '../camera-codes.js';
import type { Texts } from '../catalogue-entry.js';
import {
  bounds,
  fieldQuantities,
  frameList,
  meant,
  moveNames,
  paperMm,
  percent,
  quantities,
} from './terms-texts-ja.js';

const SIDES = { left: '左', right: '右', top: '上', bottom: '下' } as const;
const COMPASS = { north: '北（N）', south: '南（S）', east: '東（E）', west: '西（W）' } as const;

const turned = (deg: number): string =>
  deg === 0 ? '0°' : `${deg > 0 ? '右回り' : '左回り'}に ${figure(Math.abs(deg))}°`;

export const camera: Texts<CameraMessages> = {
  'unknown-field': {
    title: '存在しないフレーム',
    explanation:
      '動きか `fix` に書いたフレームが、このファイルにも読み込むファイルにも `field` で書かれていません。標準フレームの `full` はいつでも使えます。',
    message: ({ name, guess }) =>
      `フレーム \`${name}\` はありません${meant(guess, '。`field` で大きさと位置を書いてください。')}`,
  },
  'field-full': {
    title: '標準フレームの名前を別の意味に使っている',
    explanation: '`full` はどのカットでも標準フレームのことです。ほかのフレームの名前にはできません。',
    message: () => '`full` は標準フレームの名前です。このフレームには別の名前を付けてください。',
  },
  'field-measures': {
    title: '%とフィールドチャートの目の混在',
    explanation:
      'フレームの大きさを標準フレームの%で書く所と、フィールドチャートの目で書く所があります。8F は 8% ではありません。1つのカットで混ぜると読み違えます。',
    message: ({ field, other, percent: inPercent }) => {
      const [here, there] = inPercent ? ['%', 'チャートの目'] : ['チャートの目', '%'];
      return `フレーム \`${field}\` は${here}、フレーム \`${other}\` は${there}で書かれています。どちらもそのつもりですか？`;
    },
  },
  'level-repeated': {
    title: '同じセルが2回',
    explanation: '何回書いても、動くのは1回です。別のセルのつもりだったのかもしれません。',
    message: ({ level }) => `セル \`${level}\` が2回書かれています。1回で足ります。`,
  },
  'option-misplaced': {
    title: 'この動きには使えない言葉',
    explanation:
      '動きごとに使える言葉が決まっています。`carry` は PAN と T.U/T.B、`loop` は引き、`log` は T.U/T.B、`about` はセルの T.U/T.B と回転、`sideways` は画面動とローリングです。消すか、別の動きのつもりでないか確かめてください。',
    message: ({ option, move }) => `\`${option}\` は${moveNames[move]}には使えません。`,
  },
  'spacing-twice': {
    title: '目盛りの割り方が2つ',
    explanation:
      '加減速、カーブ、手書きの目盛り、フェアリングは、どれも動きの割り方です。1つの区間に1つだけ書きます。',
    message: () => 'この区間に割り方が2つあります。どちらか消してください。',
  },
  'fairing-misplaced': {
    title: 'クイックでない動きのフェアリング',
    explanation:
      'フェアリングの印は、クイックT.U/T.B のクッションが始まる所です。ほかの動きの加減速は `ease` で書きます。',
    message: () =>
      'フェアリングはクイック（`truck quick … fair …`）にだけ使えます。ほかの動きは `ease` で減速します。',
  },
  'quick-without-fairing': {
    title: 'フェアリングのないクイック',
    explanation:
      'クイックは同じ速さで大部分を進み、クッションで止まります。何コマ目からクッションか、そこまでにどれだけ進むかがないと撮影できません。',
    message: () =>
      'クイックにはフェアリングが必要です。コマと、そこまでに進む割合を `fair イ@9 58%` のように書いてください。',
  },
  'turn-sense': {
    title: '回る向きがない',
    explanation:
      '0度から90度へは、右回りでも左回りでも行けます。`cw`（右回り）か `ccw`（左回り）を書きます。',
    message: () => '回る向きを書いてください。`cw`（右回り）か `ccw`（左回り）です。',
  },
  'exposure-range': {
    title: '100%を超える露出',
    explanation: '露出は光の割合で、0% から 100% までです。',
    message: ({ exposure }) => `露出は 0% から 100% までですが、${exposure}% になっています。`,
  },
  'overlap-short': {
    title: '1コマの O.L',
    explanation: 'O.L は片方のカットだけで始まり、もう片方だけで終わるので、2コマ以上必要です。',
    message: () => 'O.L は2コマ以上です。片方だけのコマで始まり、もう片方だけのコマで終わります。',
  },
  'overlap-long': {
    title: 'シートより長い O.L',
    explanation:
      'O.L はシートの最後か最初の行で行いますが、シートの方が短いです。カットを延ばすか、O.L を短くしてください。',
    message: {
      cut: () => 'O.L は、カットの上限の10分を超えられません。',
      sheet: ({ frames, rows }) => `O.L は${frames}コマですが、シート全体で${rows}コマしかありません。`,
    },
  },
  'number-senseless': {
    title: 'ありえないカメラの数値',
    explanation:
      '幅のないフレーム、0倍のセル、0コマの揺れ、何キロもの距離など、これでは撮影できません。書き間違いと思われます。',
    message: {
      field: ({ quantity, field, value, bounds: allowed }) =>
        `フレーム ${field} の${fieldQuantities[quantity]}が ${significant(value, 6)} です。${bounds[allowed]}にしてください。`,
      move: ({ quantity, value, bounds: allowed }) =>
        `${quantities[quantity]}が ${significant(value, 6)} です。${bounds[allowed]}にしてください。`,
    },
  },
  'size-vanishes': {
    title: '0まで縮む大きさ',
    explanation:
      'カーブは終わりを行き過ぎて戻ることがあります。ここでは行き過ぎが大きく、フレームかセルの大きさがなくなるコマがあります。カーブの2番目の数値を 1 に近づけるか、終わりのフレームを大きくしてください。',
    message: ({ level, frame }, _, row) =>
      `${row(frame)}で${level === null ? 'フレーム' : `セル${level}`}の大きさがなくなります。カーブの行き過ぎが大きすぎます。`,
  },
  'move-backwards': {
    title: '出発より前に着く動き',
    explanation: '動きのコマは前へ進み、1つの区間は1コマ以上です。',
    message: ({ start, end }, _, row) =>
      `この区間は${row(start)}に出て${row(end)}に着くことになっています。1コマ以上にしてください。`,
  },
  'move-past-end': {
    title: '尻を越える動き',
    explanation:
      '動き（またはフェード、露出）が、シートにないコマで終わります。このままでは終わりを撮影できません。尺を直したら、コマも直すか、マークで書いてください。',
    message: ({ light, end, rows }, _, row) =>
      `この${light ? '指定' : '動き'}は${row(end)}で終わり、シートの最後（${rows}コマ）を越えます。`,
  },
  'moves-overlap': {
    title: '同じものの動きが重なる',
    explanation:
      'カメラの動きは一度に1つです。セルの位置、倍率、回転、揺れもそれぞれ1つです。続けて動かすことはできます。`@` で書いたコマからは次の動きが出られ、範囲 `a..b` はその間のコマを使います。足し合わせられるのは引きとスライドだけです。',
    message: ({ move, level, from, to }, _, row) =>
      `${level === null ? 'カメラの動き' : `セル${level}の${moveNames[move]}`}が2つ、${row(from, to)}で重なっています。`,
  },
  'move-jumps': {
    title: '前と違う所から始まる動き',
    explanation:
      '動きは、前の同じ種類の動きが終わった所から始めます。そうしないと画面が飛びます。その時のフレーム、位置、倍率、回転から始めてください。',
    message: {
      camera: ({ frame, field, widthMm, xMm, yMm, turnDeg }, _, row) =>
        `${row(frame)}でカメラが飛びます。この動きはフレーム ${field} から始まりますが、カメラは幅 ${figure(widthMm)} mm、位置 ${figure(xMm)}, ${figure(yMm)}${turnDeg === 0 ? '' : `、回転 ${figure(turnDeg)}°`} にあります。`,
      level: ({ frame, level, of, starts, is }, _, row) => {
        const written = (value: number) => (of === 'scale' ? percent(value) : `${figure(value)}°`);
        return `${row(frame)}でセル${level}が飛びます。この動きは ${written(starts)} から始まりますが、セル${level}は ${written(is)} です。`;
      },
      slide: ({ frame, level, starts, ended }, _, row) =>
        `${row(frame)}でセル${level}が飛びます。このスライドは ${figure(starts.x)}, ${figure(starts.y)} から始まりますが、前のスライドは ${figure(ended.x)}, ${figure(ended.y)} で終わっています。`,
    },
  },
  'quick-long': {
    title: '長すぎるクイック',
    explanation:
      'クイックは1秒前後です（一般的な目安）。2秒を超えるなら、ふつうの T.U/T.B か、コマの書き間違いです。',
    message: ({ frames, fps }) =>
      `このクイックは${frames}コマです。ふつうは1秒前後、長くても2秒（${2 * fps}コマ）です（一般的な目安）。`,
  },
  'ease-long': {
    title: '動きより長い加減速',
    explanation:
      '加速と減速のコマ数の合計は、動きのステップ数に収まる必要があります。`A@1 > B@24` は23ステップ、範囲 1..24 は24ステップです。',
    message: ({ leave, arrive, steps }) =>
      leave < 0 || arrive < 0
        ? `${Math.min(leave, arrive)}コマの加減速はありません。なしなら 0 です。`
        : `加減速が ${leave}+${arrive}コマですが、この区間は${steps}ステップです。合計を${steps}までにしてください。`,
  },
  'curve-range': {
    title: '範囲を外れたカーブ',
    explanation:
      'カーブの1番目と3番目の数値は時間の割合で、0 から 1 までです（CSS Easing と同じ）。外れると1つのコマで2か所にいることになります。2番目と4番目は距離の割合で、-10 から 10 まで行き過ぎてもかまいません。',
    message: ({ x1, y1, x2, y2 }) =>
      `カーブが ${x1} ${y1} ${x2} ${y2} です。1番目と3番目は時間の割合で 0 から 1（CSS Easing の cubic-bezier）、ほかは -10 から 10 までです。`,
  },
  'steps-without-distance': {
    title: '距離のない動きの目盛り',
    explanation:
      'ミリの目盛りは、1コマごとにどれだけ進むか、カメラの T.U/T.B なら画面の幅がどれだけ変わるかです。セルの倍率や回転にはどちらもありません。加減速かカーブを使ってください。',
    message: () =>
      'ミリの目盛りは、場所から場所へ動くもの（PAN、引き、フォロー、スライド）とカメラの T.U/T.B に使います。セルの倍率や回転には使えません。',
  },
  'steps-count': {
    title: '目盛りとステップの数が違う',
    explanation:
      '目盛りは1ステップに1つです。止まっているコマから着くコマまでを数えます。`A@1 > B@5` は4ステップ、範囲 1..4 も4ステップです。',
    message: ({ graduations, steps, start, end }, _, row) =>
      `${row(start)}から${row(end)}までは${steps}ステップですが、目盛りは${graduations}個です。`,
  },
  'steps-by-ratios': {
    title: '手書きの目盛りと等比',
    explanation:
      'T.U/T.B の `steps` は1コマごとの幅の変化、`log` は幅を等比で変えることです。両方は使えません。手書きの部分とそうでない部分があるときは、2つの `truck` に分けてください。',
    message: () => '`steps` が各コマの幅を決めているので、`log` は使えません。',
  },
  'steps-sum': {
    title: '合計の合わない目盛り',
    explanation:
      '手書きの目盛りの合計は、距離の全長と 0.05 mm 以内で一致させます。T.U/T.B では2つのフレームの幅の差です。目盛りか、行き先を直してください。',
    message: ({ of, sumMm, wayMm, withinMm }) =>
      `目盛りの合計は ${figure(sumMm)} mm、${of === 'way' ? '距離' : '幅の差'}は ${figure(wayMm)} mm です。差を ${withinMm} mm 以内にしてください。`,
  },
  'fairing-share': {
    title: '0%か100%のフェアリング',
    explanation: 'フェアリングの印では、途中まで進み、残りがあります。0% より大きく 100% より小さくします。',
    message: ({ mark, share }) =>
      `フェアリング ${mark} までに ${percent(share)} 進むことになっています。0% と 100% の間にしてください。`,
  },
  'fairing-outside': {
    title: '動きの外のフェアリング',
    explanation: 'クッションはフェアリングの印から始まるので、印は動きの出発と到着の間に置きます。',
    message: ({ mark, frame, first, last }, _, row) => {
      const must =
        last < first
          ? '動きの途中に置くものですが、この動きは次のコマで着きます。コマを増やすか、印を消してください'
          : `動きの途中の${first === last ? first : `${first}～${last}`}コマ目に置いてください`;
      return `フェアリング ${mark} が${row(frame)}にあります。${must}。`;
    },
  },
  'fairing-slow': {
    title: '途中から速くなるクッション',
    explanation:
      'クッションは、印での速さから一定に減速します。印までの進みが等速より少ないと、後で速くなってしまいます。印を前にするか、印までの進みを増やしてください。',
    message: ({ mark, share, frame, latest, least }, _, row) =>
      `${row(frame)}で ${percent(share)} では、フェアリング ${mark} の後の方が速くなります。${latest === null ? '' : `印を${row(latest)}以前にするか、`}進みを ${least}% 以上にしてください。`,
  },
  'fairing-short': {
    title: '早く止まりすぎるクッション',
    explanation:
      '残りに対して印での速さが大きく、クッションの半分のコマまでに 99.5% が終わります。残りは止まって見えます。印までの進みを減らすか、印を後にするか、動きを早く終わらせてください。',
    message: ({ mark, still, frames }, _, row) =>
      `${mark} からのクッション（${frames}コマ）は、半分より前の${row(still)}で 99.5% 終わります。残りは止まって見えます。`,
  },
  'place-passed': {
    title: 'コマのない通過点',
    explanation:
      '通過点には `@` で着くコマを書きます。コマなしで通れるのは、なめらかな1本の曲線（`curved`）だけです。そのときは1つの `ease` が全体にかかります。',
    message: () => 'この通過点にはコマがありません。`@` でコマを書くか、`curved` で1本の曲線にしてください。',
  },
  'curve-straight': {
    title: '2点だけの曲線',
    explanation: '曲線は3つ目のフレームか印に向かって曲がります。2点だけの動きは直線です。',
    message: () => '2点だけの動きは直線です。`curved` には3つ目の点が要ります。',
  },
  'carry-width': {
    title: '幅だけを決める T.U/T.B の `carry`',
    explanation:
      'PAN かフォローと T.U/T.B が同時に動くときは、T.U/T.B が画面の幅を、もう一方が中心を決めます。セルは中心と一緒に動くので、`carry` は `pan` の方に書きます。',
    message: ({ partner }) =>
      `ここでは${moveNames[partner]}が中心を決め、T.U/T.B は幅だけを決めます。\`carry\` は \`pan\` に書いてください。`,
  },
  'field-missed': {
    title: '2つの動きが着かないフレーム',
    explanation:
      'PAN かフォローと T.U/T.B が同時に動くときは、T.U/T.B が画面の幅を、もう一方が中心を決めます。両方が終わったコマで、カメラは書かれたフレームに立つはずです。両方を同じフレームで終えるか、T.U/T.B には中心の同じフレームを、PAN には大きさの同じフレームを使ってください。',
    message: {
      width: ({ field, frame, partner, widthMm, wantedMm }, _, row) =>
        `${row(frame)}で画面の幅は ${figure(widthMm)} mm です。フレーム \`${field}\` の ${figure(wantedMm)} mm ではありません。幅は${moveNames[partner]}が決めます。`,
      centre: ({ field, frame, partner, at, wanted }, _, row) =>
        `${row(frame)}でカメラの中心は ${figure(at.x)}, ${figure(at.y)} です。フレーム \`${field}\` の ${figure(wanted.x)}, ${figure(wanted.y)} ではありません。中心は${moveNames[partner]}が決めます。`,
      turn: ({ field, frame, partner, turnDeg, wantedDeg }, _, row) =>
        `${row(frame)}でカメラの回転は${turned(turnDeg)}です。フレーム \`${field}\` は${turned(wantedDeg)}です。回転は${moveNames[partner]}が決めます。`,
    },
  },
  'pan-sizes': {
    title: '大きさの違うフレームへの PAN',
    explanation: 'PAN ではフレームの大きさが変わりません。変わるなら T.U/T.B です。',
    message: ({ from, fromMm, to, toMm }) =>
      `フレーム ${from} の幅は ${figure(fromMm)} mm、${to} は ${figure(toMm)} mm です。大きさが違うなら T.U/T.B（\`truck\`）です。`,
  },
  'truck-one-size': {
    title: '同じ大きさのフレームへの T.U/T.B',
    explanation: 'T.U/T.B ではフレームの大きさが変わります。変わらないなら PAN です。',
    message: ({ from, to, widthMm }) =>
      `フレーム ${from} と ${to} の幅はどちらも ${figure(widthMm)} mm です。大きさが同じなら PAN（\`pan\`）です。`,
  },
  'speed-jumps': {
    title: '通過点での速さの飛び',
    explanation:
      '2つの区間が、違う速さか向きでつながり、角が見えます。両方に加減速を付けて止めるか、コマを変えて速さを合わせてください。速い方の4分の1という基準は、このプログラムのものです。',
    message: ({ frame, field, before, after }, _, row) =>
      `${row(frame)}の${field === null ? '印' : ` ${field} `}の通過で速さが飛びます。前は ${figure(before)} mm/コマ、後は ${figure(after)} mm/コマです。`,
  },
  'carried-level': {
    title: 'カメラに固定したセルの付けPAN・フォロー',
    explanation:
      '`level B carry` は、カットの間ずっとセルをカメラに固定します。フォローや動きの `carry` にも入れると、2回動くことになります。',
    message: ({ level }) =>
      `セル${level}はカメラに固定されています（\`level ${level} carry\`）。この動きに付けることはできません。`,
  },
  'pulls-along': {
    title: '同じ向きの引きが2つ',
    explanation:
      'セルの引きは足し合わせます。同じ線に沿っていれば、速さを足した1つの引きと同じで、その方が撮影しやすくなります。',
    message: ({ level }) =>
      `セル${level}が同じ線に沿って同時に2回引かれ、速さが足されます。1つの引きで書けます。`,
  },
  'sway-unrest': {
    title: '戻らずに終わるローリング',
    explanation:
      'ローリングの最後のコマの次で、セルは元の位置にあります。戻りきる前に終わると飛びます。半周期の整数倍で終わらせてください。',
    message: ({ offMm, frame, levels, frames }, _, row) =>
      `最後の${row(frame)}でまだ ${figure(offMm)} mm ずれているので、セル${levels.join('、')}が飛んで戻ります。${figure(frames)}コマ（半周期の整数倍）なら元の位置で終わります。`,
  },
  'field-off-chart': {
    title: 'フィールドチャートからはみ出すフレーム',
    explanation:
      'フィールドチャートでは、東西の歩数とフレームの目の合計がチャートの目の数までです。南北も同じです。はみ出すと、チャートの外が写ります。',
    message: ({ field, lines, reaches }) =>
      `フレーム ${field} が ${lines} フィールドのチャートからはみ出します。歩数とフレームの合計が${reaches.map((one) => `${COMPASS[one.side]}へ ${figure(one.lines)}`).join('、')}で、端は ${lines} です。`,
  },
  'scan-enlarged': {
    title: 'スキャンが拡大される小さなフレーム',
    explanation:
      '絵は話数の解像度（`scan`）でスキャンし、完成画面のピクセル数（`output`）に合わせます。フレームが小さいと、スキャンのピクセルが画面より少なくなり、線がぼけます。細かくスキャンするか、大きく描いてください。',
    message: ({ level, share, frame, dpi, enough, pixels }, _, row) => {
      const what =
        level === null
          ? `${row(frame)}のフレームは標準の ${percent(share)} です`
          : `${row(frame)}のセル${level}は、標準の ${percent(share)} のフレームと同じ範囲しか写りません`;
      return `${what}。${dpi} dpi のスキャンでは ${percent(enough)} より小さいと、${pixels} ピクセルにするため拡大されます。`;
    },
  },
  strobing: {
    title: 'ストロボの出やすい速さ',
    explanation:
      '画面が1コマにフレーム幅の 1/120 から 1/48 動くと、ストロボ（ちらつき）が出やすくなります。12インチのフレームで 0.1 インチを超える速さで、0.25 インチからは速いPANなので大丈夫です（手描きアニメーションの経験則）。カメラとセルの動きを合わせ、画面で一番速い点で調べます。PANを伴う T.U では画面の端です。遅くするか速くするか、ぼかしてください。',
    message: ({ frames, edge, mm, fraction }, _, row) =>
      `${frameList(frames, row)}で、画面${edge ? 'の端' : ''}が最大 ${figure(mm)} mm/コマ（フレーム幅の 1/${fraction}）動きます。1/120 から 1/48 の間はストロボ（ちらつき）が出やすい速さです。`,
  },
  judder: {
    title: '7秒より速い画面1つ分の移動',
    explanation:
      'フレーム幅1つ分を7秒より短く動くと、がたついて見えることがあります（カメラメーカーの PAN の目安）。見せ方と絵によるので、ヒントだけです。',
    message: ({ frames, seconds, least }, _, row) =>
      `${frameList(frames, row)}で、画面1つ分を ${figure(seconds)} 秒で動きます。${least} 秒より短いと、がたついて見えることがあります（カメラメーカーの PAN の目安）。`,
  },
  'artwork-edge': {
    title: '用紙の端が画面に入る',
    explanation:
      'カメラに用紙の外が写るコマがあります。いつから、どれだけ写るか、どの大きさなら足りるかがメッセージに出ています。切り抜きなど、端が見えてよいセルは `free` を付けてください。',
    message: ({ level, side, frame, byMm, worstFrame, worstMm, needed }, _, row) => {
      const worst = worstFrame === frame ? '' : `（最大は${row(worstFrame)}の ${paperMm(worstMm)} mm）`;
      return `${row(frame)}から、セル${level}の${SIDES[side]}端が ${paperMm(byMm)} mm 画面に入ります${worst}。用紙が ${paperMm(needed.width)} x ${paperMm(needed.height)} mm、中心が ${figure(needed.x)}, ${figure(needed.y)} なら足ります。`;
    },
  },
  'artwork-long': {
    title: '5 m を超える用紙',
    explanation:
      'この動きには、1枚では描けない長さの用紙が必要です（5 m はこのプログラムの基準）。ループにするか、速さの書き間違いがないか確かめてください。',
    message: ({ level, lengthMm }) =>
      `セル${level}に ${figure(lengthMm / 1000)} m の用紙が必要です。\`loop\` の書き忘れか、速さの書き間違いではありませんか？`,
  },
  'loop-short': {
    title: '短すぎるループ',
    explanation:
      'ループは、フレームに写る長さ以上にします。短いと同じ絵が同時に2つ写ります。用紙もループ以上の長さが必要です。短いとすき間があきます。',
    message: {
      field: ({ level, loopMm, neededMm }) =>
        `セル${level}のループは ${figure(loopMm)} mm ですが、フレームには ${paperMm(neededMm)} mm 写ります。同じ絵が同時に2つ見えます。`,
      artwork: ({ level, loopMm, paintedMm }) =>
        `セル${level}のループは ${figure(loopMm)} mm ですが、用紙は ${figure(paintedMm)} mm しかありません。すき間があきます。`,
    },
  },
  'loop-askew': {
    title: '斜めに引くループ',
    explanation: 'ループは用紙の横か縦につながるので、そのどちらかの向きにしか引けません。',
    message: ({ level }) =>
      `ループは用紙の横か縦につながりますが、この引きはセル${level}を斜めに動かします。`,
  },
  'loop-two': {
    title: '1つのセルにループが2つ',
    explanation: 'セルは1回だけ描きます。どの引きにも同じループを書くか、どれにも書かないでください。',
    message: ({ level, here, there }) => {
      const way = ({ mm, axis }: typeof here) => `${axis === 'x' ? '横' : '縦'} ${figure(mm)} mm`;
      return `セル${level}のループは1つですが、この引きでは${way(here)}、別の引きでは${way(there)}です。`;
    },
  },
  'iris-outside': {
    title: '中心が画面の外のアイリス',
    explanation:
      'アイリスの中心は、画面の中央から右へ、上へ、標準フレームの mm で数えます。円はそこから開き、そこへ閉じるので、画面の中にあるはずです。',
    message: ({ xMm, yMm }) => `アイリスの中心 ${figure(xMm)},${figure(yMm)} が画面の外です。`,
  },
  'fade-short': {
    title: '1コマのフェード、ワイプ、アイリス',
    explanation: 'フェード、ワイプ、アイリスは、片方の端が 0%、もう片方が 100% なので、2コマ以上必要です。',
    message: () => '2コマ以上必要です。片方の端が 0%、もう片方が 100% です。',
  },
  'light-overlaps': {
    title: 'フェードや O.L、露出の重なり',
    explanation:
      'フェード、ワイプ、アイリス、O.L は画面全体の見え方なので、同時には1つだけです。1つのセルの露出も同じです。',
    message: ({ levels, from, to }, _, row) =>
      `${levels === null ? '画面全体のフェード、ワイプ、アイリス、O.L のどれか' : `セル${levels.join('、')}の露出`}が2つ、${row(from, to)}で重なっています。`,
  },
  flashes: {
    title: '1秒に3回を超える点滅',
    explanation:
      'どの1秒にも3回を超える点滅は、光過敏性の人に発作を起こすことがあります（WCAG 2.3.1、ITU-R BT.1702）。点滅は明暗の往復なので、白だけでなく黒への変化も数えます。数えるのはフェード、露出、透過光、`flash` を付けたセルが出る回数です。回数だけで、明るさ、面積、色は測っていません。判定は放送局の検査によります。',
    message: ({ count, from, to }, _, row) =>
      `${row(from, to)}の1秒間に${count}回点滅します。どの1秒にも3回を超える点滅は、発作を起こすことがあります（WCAG 2.3.1、ITU-R BT.1702）。`,
  },
  'flash-unmeasured': {
    title: '画面の検査が必要な点滅',
    explanation:
      '点滅する光は発作を起こすことがあります。テキストから分かるのは時間だけで、画面での明るさ、大きさ、赤みは分からないので、安全とは言えません。シートに注意書きを印刷します。完成画面は放送局・配信元の検査を受けてください。',
    message: ({ count }) =>
      `ここに点滅する光があります${count > 0 ? `（一番速い1秒に${count}回）` : ''}。安全かどうかは、完成画面を放送局が検査しないと分かりません。`,
  },
};
