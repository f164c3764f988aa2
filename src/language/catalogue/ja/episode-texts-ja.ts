import type { Texts } from '../catalogue-entry.js';
import type {
  CutListMessages,
  EpisodeMessages,
  HandoverMessages,
  PictureMessages,
  UnreadableScan,
} from '../episode-codes.js';
import { drawingList, neighbourName, notLent, reasonInJapanese } from './terms-texts-ja.js';

export const episode: Texts<EpisodeMessages> = {
  'overlap-differs': {
    title: '隣のカットと O.L の長さが違う',
    explanation:
      'O.L は2枚のシートから撮影するので、両方に同じ長さが必要です。今は合っていません。どちらが正しいか確かめ、両方のカットに書いてください。書き方は違ってもかまいません。毎秒24コマなら、24 と 1+0 は同じです。',
    message: ({ neighbour, there, here }) =>
      `この O.L は${here}コマですが、${neighbourName(neighbour)}では${there}コマです。`,
  },
  'overlap-fps': {
    title: 'O.L する2カットの毎秒コマ数が違う',
    explanation:
      'O.L は2つのカットを1コマずつ混ぜるので、毎秒のコマ数を同じにします。片方にだけ `fps` の行があります。',
    message: ({ neighbour, there, here }) =>
      `${neighbourName(neighbour)}は毎秒${there}コマ、このカットは毎秒${here}コマです。1コマずつ O.L できません。`,
  },
  'overlap-unanswered': {
    title: '隣のカットに O.L がない',
    explanation:
      'このカットは隣と O.L しますが、隣のテキストのその側に `overlap` がないので、隣のシートにのりしろがありません。隣とは、episode.yaml でこのカットの前か後にあるカットです。まだ書いていないカットなら、問題ありません。',
    message: ({ neighbour, way, length }) =>
      `${neighbourName(neighbour)}に、この O.L を受ける \`overlap ${way} ${length}\` がありません。`,
  },
  'overlap-missing': {
    title: '隣のカットからの O.L がない',
    explanation:
      '前か後のカットが、このカットとの O.L で終わる（または始まる）ことになっています。両方のシートに O.L の行が必要なので、このカットにも同じ行を書いてください。そうするとタイムラインには、のりしろのコマも入ります。',
    message: ({ cut, way, frames }) =>
      `カット${cut}は、このカットとの${frames}コマの O.L で${way === 'in' ? '終わりますが' : '始まりますが'}、このカットに \`overlap ${way}\` がありません。`,
  },
  'overlap-alone': {
    title: 'O.L する相手がない',
    explanation:
      '話数の最初のカットが O.L で始まるか、最後のカットが O.L で終わっています。その側にカットはありません。黒から、または黒へなら、フェードです。',
    message: ({ way }) =>
      `話数の${way === 'in' ? '最初' : '最後'}のカットなので、O.L する${way === 'in' ? '前' : '次'}のカットがありません。`,
  },
  'overlap-unchecked': {
    title: '隣のカットの O.L を確かめられない',
    explanation:
      '隣のカットに誤りがあって `overlap` が読めないので、長さを比べられません。先にそのカットを直してください。',
    message: ({ neighbour, why }) =>
      `${neighbourName(neighbour)}${why === 'unreadable' ? 'が読めない' : 'に誤りがある'}ので、O.L の長さが同じか確かめられません。`,
  },
  'reuse-circle': {
    title: '循環する兼用',
    explanation:
      '兼用が次々につながって元に戻るので、誰も絵を描きません。つながりはメッセージに出ています。絵を描くカットには `reuse` を書きません。',
    message: ({ links }) => `${notLent({ why: 'circle', links })}。`,
  },
  'reuse-nothing': {
    title: '1枚も兼用していないセル',
    explanation:
      'ほかのカットのセルを兼用することになっていますが、出る絵が1枚も向こうにありません。全部新しい絵になり、番号は向こうの続きになります。カットかセルの書き間違いかもしれません。',
    message: ({ level, here, cut, of, there }) =>
      `セル${level}の絵は ${drawingList(here)}、カット${cut}のセル${of}の絵は ${drawingList(there)} で、兼用する絵がありません。`,
  },
  'reuse-twice': {
    title: '1つのセルに2つのカットから追加',
    explanation:
      '2つのカットが3つ目のカットのセルを兼用して絵を足し、どちらも最後の番号の続きにしています。1つの番号に絵が2枚できます。後のカットは、前のカットのセルを兼用してください（3つ目の絵も全部入っています）。または `cels` の行で、相手の番号を空けて（`_`）書いてください。',
    message: ({ cut, as, cels, from, of }) => {
      const named = cels.slice(0, 6).map((cel) => `${of}${cel}`);
      return `カット${cut}も、カット${from}のセル${of}に ${named.join('、')}${cels.length > 6 ? ' …' : ''} を足しています。同じ番号の絵が2枚できます。\`${cut}/${as}\` を兼用するか、\`cels\` の行をその番号の後から始めてください。`;
    },
  },
};

export const cutList: Texts<CutListMessages> = {
  'list-cut-errors': {
    title: '誤りのあるカットが表にある',
    explanation:
      '表を欠かさないため、そのカットも読めた分だけ印を付けて載せます。数字は変わることがあり、印刷はしません。何が誤りかはここには出ません。`cutwright check` が行と一緒に出します。',
    message: ({ cut, errors, warnings, timed, file }) => {
      const count = [
        ...(errors > 0 ? [`誤りが${errors}件`] : []),
        ...(warnings > 0 ? [`注意が${warnings}件`] : []),
      ];
      return `カット${cut}に${count.join('、')}あります。${timed ? '数字は変わることがあります' : '尺も分かりません'}。内容は \`cutwright check ${file}\` で見られます。`;
    },
  },
  'list-over-budget': {
    title: '総尺が定尺を超える',
    explanation:
      '全カットの総尺（O.L は1回だけ数えます）が、episode.yaml の定尺を超えています。`list` は合計に出します。`--check` を付けると、スクリプト用に誤りになります。カットを短くするか、定尺を変えてください。',
    message: ({ running, over, budget, fps, untimed }) => {
      const length = (frames: number): string => `${Math.floor(frames / fps)}+${frames % fps}`;
      return `総尺は${untimed > 0 ? '少なくとも ' : ' '}${length(running)} で、定尺 ${length(budget)} を ${length(over)}（${over}コマ）超えています。`;
    },
  },
};

export const handover: Texts<HandoverMessages> = {
  'edit-speeds': {
    title: '毎秒コマ数の違うカットが1つの編集にある',
    explanation:
      '編集ではどのカットも同じ長さのコマで数えるので、毎秒24コマと12コマのカットを1つにできません。たいていは、消し忘れた `fps` の行です。または、毎秒コマ数ごとに書き出してください。',
    message: ({ cut, fps, first, firstFps }) =>
      `カット${cut}は毎秒${fps}コマ、カット${first}は毎秒${firstFps}コマです。1つの編集では同じにします。`,
  },
  'edit-overlap': {
    title: '編集にならない O.L',
    explanation:
      'O.L は続く2つのカットのもので、両方に同じ長さを書きます。前に `overlap out 24`、後に `overlap in 24` です。前の O.L と次の O.L の間には、そのカットだけが見える所も必要です。',
    message: {
      uneven: ({ before, out, after, into }) => {
        const has = (length: number | null, word: string): string =>
          length === null ? `\`overlap ${word}\` なし` : `\`overlap ${word} ${length}\``;
        return `カット${before}は${has(out, 'out')}、次のカット${after}は${has(into, 'in')}で、合いません。`;
      },
      crowded: ({ cut, over }) =>
        `カット${cut}の頭と尻の O.L が${over}コマ重なり、3つのカットが同時に見えてしまいます。`,
    },
  },
  'edit-list-limit': {
    title: '編集リストに入らない',
    explanation:
      'この編集リストは古い形式です。毎秒 24、25、30コマ、イベントは999個まで、O.L の長さは3桁、タイムコードは24時間までです。話数を分けて書き出すか、制限のない `--edit otio` を使ってください。',
    message: {
      speed: ({ cut, fps }) => `編集リストは毎秒 24、25、30コマですが、カット${cut}は毎秒${fps}コマです。`,
      events: ({ cut, cuts, most }) =>
        `編集リストは1カット1イベントで${most}個までですが、${cuts}カットあります。カット${cut}から入りません。`,
      overlap: ({ frames, most }) => `編集リストの O.L は${most}コマまでですが、ここでは${frames}コマです。`,
      timecode: ({ cut }) => `タイムコードは24時間までですが、カット${cut}で超えます。`,
    },
  },
  'edit-list-long': {
    title: '多くの編集機が読めない長さの O.L',
    explanation:
      '編集リストの O.L は3桁ですが、読む側の多くは255コマまでです。編集室に確かめるか、`--edit otio` で書き出してください。',
    message: ({ cut, frames, most }) =>
      `カット${cut}への O.L は${frames}コマです。編集リストを読む側の多くは${most}コマまでです。`,
  },
  'pixels-shape': {
    title: '画面とフレームの縦横比が違う',
    explanation:
      '標準フレームが完成画面になるので、254mm x 142.875mm と 1920x1080 のように縦横比を同じにします。違うと、縦と横で 1 mm のピクセル数が変わり、斜めの動きの角度も変わります。episode.yaml の `field` か `output` を直してください。',
    message: ({ cut, field, output, by }) =>
      `カット${cut}のフレームは ${field.widthMm} x ${field.heightMm} mm、画面は ${output.width} x ${output.height} ピクセルです。画面が ${Math.round(Math.abs(by))} ピクセル${by > 0 ? '高い' : '低い'}ので、ピクセルでの方向が紙と変わります。`,
  },
};

const because = (reason: UnreadableScan): string => {
  switch (reason.why) {
    case 'machine':
      return reasonInJapanese(reason.reason);
    case 'format':
      return 'PNG、JPEG、WebP のどれでもありません';
    case 'broken':
      return '途中で切れているか、壊れています';
    case 'size':
      return `${reason.width} × ${reason.height} ピクセルです。1辺 ${reason.most}、全体で${reason.mostMillions / 100}億ピクセルまでです`;
  }
};

export const picture: Texts<PictureMessages> = {
  'scan-name': {
    title: '意味のない波括弧がスキャンの名前にある',
    explanation:
      'スキャンの名前では、`{cut}` がカット番号、`{level}` がセルの名前、`{number}` が動画番号になります。`{number:4}` は 0012 のように4桁です。ほかのものは波括弧に書けません。',
    message: ({ written, parts }) =>
      `スキャンの名前の \`${written}\` に意味はありません。使えるのは ${parts.map((part) => `\`{${part}}\``).join('、')} です。`,
  },
  'scan-outside': {
    title: 'スキャンが話数の外にある',
    explanation:
      '絵は、カットのフォルダーか、話数のフォルダー（episode.yaml のある所）の下に置きます。話数をまるごとコピーでき、届いたカットがよそのファイルを読むこともありません。',
    message: ({ path, inEpisode }) =>
      inEpisode
        ? `\`${path}\` は、このフォルダーにも話数のフォルダーの下にもありません。絵はそこに置きます。`
        : `\`${path}\` はこのフォルダーにありません。episode.yaml がないときは、絵をここに置きます。`,
  },
  'scan-unreadable': {
    title: '読めない絵',
    explanation:
      'ファイルはありますが、絵になりません。途中までコピーされたスキャンか、名前だけ画像の別のファイルか、大きすぎるものです。撮影では、絵の代わりに名前を出します。読めるのは PNG、JPEG、WebP です。',
    message: ({ file, reason, level, others }) =>
      `\`${file}\` が出せません：${because(reason)}${others > 0 ? `。セル${level}には、ほかにも${others}枚あります` : ''}。`,
  },
  'canvas-missing': {
    title: '絵を描くパッケージがない',
    explanation:
      '撮影と画像の書き出しには `@napi-rs/canvas`（MIT ライセンス）を使います。ふつうは npm が cutwright と一緒に入れますが、任意のパッケージを除く設定か、この機種用のものがないと入りません。ほかの機能はすべて使えます。',
    message: () => '絵を描くには `@napi-rs/canvas` が必要ですが、入っていません。',
  },
  'film-program-missing': {
    title: '動画ファイルを作るプログラムがない',
    explanation:
      '動画ファイルは、別のプログラムの ffmpeg で作ります。ないときは1コマ1枚の画像を書き出します。どの動画ソフトでもつなげられます。Debian と Ubuntu では `apt-get install ffmpeg` で入ります。',
    message: ({ film, folder }) =>
      `\`${film}\` には ffmpeg が必要ですが、入っていません。1コマ1枚の画像を \`${folder}\` に書きました。`,
  },
  'film-failed': {
    title: '動画ファイルを書けなかった',
    explanation:
      '動画ファイルを作るプログラム（ffmpeg）が失敗したか、ディスクがいっぱいです。書きかけは残っていません。前からある同じ名前のファイルは、そのままです。',
    message: ({ film, reason }) => `\`${film}\` を書けませんでした：${reasonInJapanese(reason)}。`,
  },
};
