import { figure } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { SoundFormatName, WaveTrouble } from '../message-terms.js';
import type { TrackMessages } from '../track-codes.js';
import { meant, reasonInJapanese } from './terms-texts-ja.js';

const FORMATS: Readonly<Record<SoundFormatName, string>> = {
  mp3: 'MP3',
  flac: 'FLAC',
  ogg: 'Ogg',
  aiff: 'AIFF',
  m4a: 'M4A',
  caf: 'CAF',
  au: 'AU',
  wave64: 'Wave64',
  'big-endian-wave': 'バイト順が逆の WAV（RIFX）',
  avi: '動画ファイル（AVI）',
  midi: 'MIDI',
};

export const track: Texts<TrackMessages> = {
  'track-missing': {
    title: '録音がない',
    explanation:
      '`track` の行に書いたファイルが読めません。パスはカットのフォルダーから書きます。シートは波形なしで印刷します。',
    message: {
      missing: ({ file, guess }) => `ファイル \`${file}\` がありません${meant(guess)}`,
      unreadable: ({ file, reason }) => `\`${file}\` が読めません：${reasonInJapanese(reason)}。`,
    },
  },
  'track-outside': {
    title: '録音が話数の外にある',
    explanation:
      'カットが読める録音は、自分のフォルダーとその下、話数のフォルダー（episode.yaml のある所）の下だけです。話数をまるごとコピーでき、届いたカットがよそのファイルを読むこともありません。',
    message: ({ path, inEpisode }) =>
      `\`${path}\` は、このフォルダー${inEpisode ? 'にも話数のフォルダー' : ''}の下にもないので、読みません。`,
  },
  'track-unreadable': {
    title: '録音が読めない',
    explanation:
      '録音は WAV ファイルです。8、16、24、32ビット、または浮動小数点の32、64ビット、サンプリング周波数は自由、モノラルかステレオ、長いものは RF64 です。ほかの録音は WAV で保存し直してください。シートは波形なしで印刷します。',
    message: (given) => `\`${given.file}\` ${trouble(given)}。`,
  },
  'track-damaged': {
    title: '欠けている録音',
    explanation:
      'ヘッダーの長さより先にファイルが終わっているか、数値でないサンプルがあります。読める所を使い、残りは無音とみなします。コピーか保存をやり直してください。',
    message: {
      'cut-off': ({ file, seconds, promisedSeconds }) =>
        `\`${file}\` が途中で切れています。${inSeconds(promisedSeconds)}のうち${inSeconds(seconds)}しかありません。`,
      'not-numbers': ({ file, count }) =>
        `\`${file}\` のこの範囲に、数値でないサンプルが${count}個あります。そこは無音とみなします。`,
    },
  },
  'track-past-end': {
    title: 'カットの後に始まる録音',
    explanation: '`@` の後の行から録音が聞こえますが、シートの最後の行を越えています。',
    message: ({ frame, rows }) => `録音は${frame}行目から始まりますが、シートは${rows}行です。`,
  },
  'timecode-range': {
    title: 'ありえないタイムコード',
    explanation:
      'タイムコードは時、分、秒、コマです。分と秒は 59 まで、コマは毎秒のコマ数より1つ少ない数までです。',
    message: ({ fps }) =>
      `このタイムコードはありません。分と秒は 59 まで、毎秒${fps}コマならコマは ${fps - 1} までです。`,
  },
  'track-start': {
    title: '始める所より短い録音',
    explanation:
      '`from` の後は、録音の頭から数えた時間です。録音の方が短くなっています。録音にタイムコードが付いているなら、頭のタイムコードを引いてください。',
    message: ({ seconds, startSeconds }) =>
      `録音は${inSeconds(seconds)}なので、${inSeconds(startSeconds)}からは何も聞こえません。`,
  },
  'track-length': {
    title: '録音とカットの長さが違う',
    explanation:
      '録音がシートの最後の行より前に終わるか、後まで続きます。尺を直したか、別のカットの録音かもしれません。`from` を書いたときは、録音が長くてもかまいません。',
    message: {
      short: ({ rows, last }) =>
        last > 0
          ? `録音は${last}行目で終わり、シートより${rows}行短いです。`
          : '録音がシートの最初の行で終わっています。',
      long: ({ rows }) => `録音がシートの最後の行の後も${rows}コマ続きます。`,
    },
  },
  'track-silent': {
    title: '何も聞こえない',
    explanation:
      'シートのどの行でも、録音がフルスケールの −50 dB より小さいです。マイクが切れていたか、別のファイルか、始める所が違います。',
    message: () => '録音は、シートのどの行でも無音です。',
  },
  'voice-unheard': {
    title: '録音が無音の所のセリフ',
    explanation:
      '`voice` の行ではセリフがありますが、録音は半秒以上無音です。行がずれている（`cutwright listen` で探せます）か、間をおいて話しています。間があるなら、2つのセリフに分けてください。',
    message: ({ from, to, whole }) =>
      whole
        ? 'このセリフの行では、何も聞こえません。'
        : `このセリフの${from}～${to}行目では、録音が無音です。`,
  },
  'sound-unwritten': {
    title: '何も書かれていない所の音',
    explanation:
      '録音には半秒以上の音がありますが、セリフも SE も音楽も書かれていません。セリフが抜けているのかもしれません。`cutwright listen --lines` で範囲の候補が出ます。',
    message: ({ stretches }) => {
      const all = stretches.slice(0, 3).map(({ from, to }) => `${from}～${to}`);
      const more = stretches.length - all.length;
      return `${all.join('、')}行目${more > 0 ? `ほか${more}か所` : ''}に音がありますが、何も書かれていません。`;
    },
  },
  'nothing-to-hear': {
    title: '聞くものがない',
    explanation:
      '`listen` は、カットの `track` の行の録音を読み、`voice` の行のセリフを探します。その行がないか、ファイルが読めないか、セリフが書かれていません。`--lines` ならセリフがなくても使えます。',
    message: {
      'no-track': () => 'このカットに録音がありません。`track "sound/c012.wav"` のように書いてください。',
      'no-recording': () => '録音が読めないので、何も聞けません。',
      'no-voices': () =>
        'このカットに `voice` の行がありません。`--lines` なら、誰かが話している所を探せます。',
    },
  },
  'line-missing': {
    title: '録音にないセリフ',
    explanation:
      'この順番で、このセリフらしく聞こえる所が録音にないので、何も書きませんでした。カットされたか、言葉が変わったか、書いた順と話す順が違います。',
    message: ({ speaker }) =>
      `${speaker === '' ? 'この' : `「${speaker}」のこの`}セリフが録音の中に見つかりません。`,
  },
  'line-doubtful': {
    title: '別の所かもしれないセリフ',
    explanation:
      'セリフは見つかりましたが、ほかの言葉との差がわずかです。聞いて確かめてください。言葉を手で行に結べば、それが残ります。',
    message: ({ from, to, speaker }) =>
      `${speaker === '' ? 'この' : `「${speaker}」のこの`}セリフが${from}～${to}行目かどうか、はっきりしません。`,
  },
  'line-unread': {
    title: '読み方の分からない言葉',
    explanation:
      'かなはそのまま、漢字は 行《い》く のように後の《 》のルビで読みます。ルビがないと読み方が決まりません。日本語の中の数字も、かなかルビで書きます。ルビは印刷されません。',
    message: ({ found }) =>
      `\`${found}\` の読み方が分かりません。\`${found}《かな》\` のようにルビを書いてください。`,
  },
};

function trouble(given: WaveTrouble): string {
  switch (given.fault) {
    case 'empty':
      return 'は空です';
    case 'other-format':
      return `は WAV ではなく、${FORMATS[given.format]} です`;
    case 'unknown-format':
      return 'は WAV ファイルではありません';
    case 'cut-off':
      return 'は最初のサンプルの前で切れています';
    case 'no-samples':
      return 'にはサンプルがありません';
    case 'no-rate':
      return 'のサンプリング周波数が 0 です';
    case 'no-channels':
      return 'のチャンネル数が 0 です';
    case 'coded':
      return `は ${given.bits}ビットの圧縮された形式（${given.tag}）で、読めません。圧縮しないで保存してください`;
    case 'damaged':
      return 'のヘッダーが壊れています';
  }
}

const inSeconds = (seconds: number): string => `${figure(seconds)}秒`;
