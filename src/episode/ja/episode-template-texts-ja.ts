import type { TemplateTexts } from '../episode-template-texts.js';

export const templateTextsJa: TemplateTexts = {
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
