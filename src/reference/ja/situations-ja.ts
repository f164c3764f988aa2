import type { ReferenceWords } from '../reference-language.js';

/** Examples of messages that are told in words: what happened, and what mends it. */
export const situations: ReferenceWords['situations'] = {
  'file-missing': ['`cutwright build c12.cut`。フォルダーにあるのは c012.cut', '`cutwright build c012.cut`'],
  'file-unreadable': [
    '`cutwright check c012.cut`。このファイルを読む権限がない',
    '読む権限を付けて、もう一度実行する',
  ],
  'file-too-large': [
    '`cutwright check scan.cut`。scan.cut は名前の違う 50 MB の画像',
    '`cutwright check c012.cut`',
  ],
  'wrong-encoding': ['Shift_JIS、Latin-1、UTF-16 で保存したカット', '同じカットを UTF-8 で保存する'],
  'not-marked': [
    '`cutwright build c012.cut --marked-against HEAD~1`。HEAD~1 のカットは長さが足りない',
    '`cutwright build c012.cut --marked-against HEAD~2`',
  ],
  'not-text': [
    '`cutwright check c012.cut`。ディスクがいっぱいになり、ファイルに NUL バイトが残った',
    'カットを書き直すか、バックアップから戻す',
  ],
  'no-cuts': ['`cutwright build scenes/`。scenes/ には画像しかない', '`cutwright build cuts/`'],
  'pattern-empty': [
    'episode.yaml に `cuts: [ "cut/*.cut" ]`。フォルダーの名前は `cuts`',
    '`cuts: [ "cuts/*.cut" ]`',
  ],
  'cut-twice': ['c012.cut も c013.cut も `cut 12` で始まる', 'c013.cut を `cut 13` で始める'],
  'artist-without-cut': [
    '`artists: { M. Arai: [112] }`。話数のカットは 1 から 20',
    '`artists: { M. Arai: [12] }`',
  ],
  'reuse-unknown': ['`level C reuse 80/C`。話数のカットは 1 から 20', '`level C reuse 8/C`'],
  'text-too-long': ['`memo "…"` の中に脚本を丸ごと貼り付けた', '`memo "脚本 12ページを見る"`'],
  'levels-too-many': ['セル A1 から A300 までのカット', '同じ群衆をセル A から H に描く'],
  'cut-too-large': ['10分でセルが100のカット、または1万個のメモ', 'いくつかのカットに分ける'],
  'same-output': [
    '`cutwright build day/c001.cut night/c001.cut --output out/`',
    '`cutwright build day/c001.cut --output out/day/`。`night` も同じようにする',
  ],
  'internal-fault': ['プログラムの不具合が出るカット', 'ほかのカット'],
  'edit-speeds': [
    '`cutwright export cuts/ --edit otio`。1つのカットに `fps 12` がある',
    '`fps 12` の行を消す',
  ],
  'edit-overlap': [
    '`cutwright export cuts/ --edit edl`。カット1は `overlap out 12`、カット2は `overlap in 8`',
    'どちらも 12 にする',
  ],
  'edit-list-long': [
    '`cutwright export cuts/ --edit edl`。300コマの O.L がある',
    '`cutwright export cuts/ --edit otio`',
  ],
  'pixels-shape': [
    '`cutwright export c012.cut --pixels`。episode.yaml に `output: 1440x1080`',
    '`output: 1920x1080` にする',
  ],
  'edit-list-limit': [
    '`cutwright export cuts/ --edit edl`。毎秒12コマのカット',
    '`cutwright export cuts/ --edit otio`',
  ],
  'reading-stopped': ['読めない行が千を超えるテキスト', '初めの行を直すか、正しいファイルを指定する'],
  'reuse-number': [
    'カット9に `level C reuse 8/C` と `cels C 1 2`。カット8のセルCの2番は絵 1.1',
    '`cels` の行を消すか、`cels C 1 1.1 2` のように相手の番号で始める',
  ],
  'reuse-count': [
    'カット9に `level C reuse 8/C` と `1---2`。カット8のセルCは `1--2`',
    'カット9も `1--2` にする',
  ],
  'overlap-differs': [
    'カット12の最後に `overlap out 24`、カット13の最初に `overlap in 12`',
    'カット12に `overlap out 24`、カット13に `overlap in 24`',
  ],
  'overlap-fps': [
    'カット12に `fps 12` と `overlap out 24`。カット13は毎秒24コマで `overlap in 24`',
    'どちらのカットからも `fps` の行を消す',
  ],
  'overlap-unanswered': [
    'カット12に `overlap out 24`。カット13に `overlap` がない',
    'カット12に `overlap out 24`、カット13に `overlap in 24`',
  ],
  'overlap-missing': [
    'カット13に `overlap` がない。カット12は `overlap out 24`',
    'カット13に `overlap in 24` と書く',
  ],
  'overlap-alone': ['話数の最初のカットに `overlap in 24`', '`fade in 1..24`'],
  'overlap-unchecked': [
    'カット12に `overlap out 24`。カット13は `overlap in` だけ',
    'カット13に `overlap in 24` と書く',
  ],
  'reuse-circle': [
    'カット9に `level C reuse 8/C`、カット8に `level C reuse 9/C`',
    'カット9だけに `level C reuse 8/C`',
  ],
  'reuse-nothing': [
    '`level C reuse 8/C` と `C: 5--6..`。カット8のセルCは `1--2`',
    '`level C reuse 8/C` と `C: 1--2..`',
  ],
  'reuse-twice': [
    'カット9に `level C reuse 8/C` と新しい原画。カット10にも `level C reuse 8/C` と別の原画',
    'カット10に `level C reuse 9/C`',
  ],
  'number-two-counts': [
    '`cutwright number c012.cut`。セルAに `1--2`、後で `1---2`',
    'どちらも `1--2` にするか、後の方を `1---2a` にする',
  ],
  'would-overwrite': [
    '`cutwright new episode harbour`。harbour/episode.yaml がもうある',
    '`cutwright new episode harbour-2`',
  ],
  'number-taken': ['`cutwright new cut 12`。カット12がもうある', '`cutwright new cut 12A`'],
  'watch-impossible': [
    '`cutwright watch c012.cut`。同じフォルダーで別の `cutwright watch` が動いている',
    '先の方を Ctrl-C で終えるか、先の方で c012.cut も指定する',
  ],
  'table-faulty': [
    '`cutwright new cut 13 --from-csv grid.csv`。3コマ目がない',
    'grid.csv に3コマ目の行を書く',
  ],
  'draft-unlike': [
    '`cutwright new cut 13 --from-csv grid.csv`。中割り参考 1.1 の前に原画1がない',
    'grid.csv に前後の原画を書く',
  ],
  'list-cut-errors': ['`cutwright list`。c004.cut は `A: 1--` で、次の原画がない', '`A: 1--2..`'],
  'list-over-budget': [
    '`cutwright list --check`。`budget: 120+0` で、総尺は 121+12',
    '`budget: 122+0` にする',
  ],
  'progress-faulty': [
    'progress.csv に `12,key,done,19.3.27,L. Quoy` の行',
    '`12,key,done,2027-03-19,L. Quoy`',
  ],
  'progress-cut': ['progress.csv にカット112の行。話数のカットは 1 から 20', 'カット12の行にする'],
  'progress-twice': [
    'progress.csv に、カット12の `key` が `done` の行が2つ',
    'どちらかを消すか、間に `retake` の行を書く',
  ],
  'progress-order': [
    'progress.csv で、カット12の `in-between` が `done` なのに `key` の行がない',
    '`layout`、`key`、`check`、`in-between` の行を書く',
  ],
  'progress-open': [
    '`cutwright progress 12 key done`。表計算ソフトが progress.csv を開いている',
    '表計算ソフトを閉じる',
  ],
  'scan-unreadable': ['`cutwright shoot c012.cut`。A1.png が途中で切れている', '絵をスキャンし直す'],
  'canvas-missing': [
    '`cutwright shoot c012.cut`。インストールの時に @napi-rs/canvas を除いた',
    '`npm install @napi-rs/canvas` の後で、もう一度',
  ],
  'film-program-missing': ['`cutwright shoot c012.cut --output c012.mp4`。ffmpeg がない', 'ffmpeg を入れる'],
  'film-failed': ['`cutwright shoot c012.cut --output c012.mp4`。ディスクがいっぱい', 'ディスクを空ける'],
  'track-missing': [
    '`track "sound/c12.wav"`。フォルダー `sound` にあるのは c012.wav',
    '`track "sound/c012.wav"`',
  ],
  'track-unreadable': ['`track "sound/c012.wav"`。中身は名前の違う MP3', 'WAV で保存し直す'],
  'track-damaged': [
    '`track "sound/c012.wav"`。ファイルが途中までしかコピーされていない',
    'ファイル全体をコピーする',
  ],
  'track-start': ['`track "sound/c012.wav" from 60s`。録音は1秒', '`track "sound/c012.wav"`'],
  'track-length': ['`time 5+0`。録音は1秒', '`time 1+0`'],
  'track-silent': ['`track "sound/c012.wav"`。マイクの切れていた録音', '正しい録音にする'],
  'voice-unheard': [
    '`voice "ナオ" 1+1..2+0 "待って！"`。話しているのは3秒目だけ',
    '`voice "ナオ" 2+1..3+0 "待って！"`',
  ],
  'sound-unwritten': ['3秒目に誰かが話しているが、セリフの行がない', '`voice "ナオ" 2+1..3+0 "待って！"`'],
  'nothing-to-hear': [
    '`cutwright listen c012.cut`。カットに `track` の行がない',
    '`track "sound/c012.wav"` の行を足す',
  ],
  'line-missing': [
    '`cutwright listen c012.cut`。セリフが録音から切られている',
    '`voice` の行を消すか、正しい録音にする',
  ],
  'line-doubtful': [
    '`cutwright listen c012.cut`。セリフが書いたのと違う言葉で話されている',
    '話されている言葉を書く',
  ],
  'line-unread': ['`cutwright listen c012.cut`。セリフが「海へ行く」', '「海《うみ》へ行《い》く」と書く'],
};
