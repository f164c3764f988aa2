/**
 * What people of the trade type, in English and Japanese, for things that have another word in the language. One table for messages,
 * `explain`, completion and search. Sources: common practice.
 */

export interface TradeWord {
  /** As typed. Case, blanks, dots, hyphens and slashes between letters make no difference: `T.U`, `tu`, `t/u`. */
  readonly typed: readonly string[];
  /** What it is called here: a word, or how it is written. */
  readonly here: string;
  /** Where `explain` finds it: a statement, a word inside one, or a message. */
  readonly page: string;
  readonly as: TradeWordUse;
  /** What may be written in its place at the start of a statement, the likeliest first. `here`, where nothing is said. */
  readonly starts?: readonly string[];
}

/**
 * `statement`: begins one under another name. `word`: stands inside statements. `item`: is a sign in a timeline. `manifest`: is said in
 * episode.yaml, as `here` shows. `effect`: has no statement of its own; `here` shows what does instead. `command`: is no matter of a cut; `here` is
 * the command.
 */
export type TradeWordUse = 'statement' | 'word' | 'item' | 'manifest' | 'effect' | 'command';

const statement = (
  here: string,
  typed: string,
  page = here.split(' ')[0]!,
  ...starts: string[]
): TradeWord => ({
  typed: typed.split(', '),
  here,
  page,
  as: 'statement',
  ...(starts.length > 0 ? { starts } : {}),
});
const entry =
  (as: TradeWordUse) =>
  (here: string, page: string, typed: string): TradeWord => ({ typed: typed.split(', '), here, page, as });
const word = entry('word');
const item = entry('item');
const manifest = entry('manifest');
const effect = entry('effect');
const command = entry('command');

export const TRADE_WORDS: readonly TradeWord[] = [
  // ---- the cut and its time
  statement('cut', 'shot, cut no, cut number, カット, カットナンバー, カット番号'),
  statement('time', 'duration, length, timing, running time, 時間, 尺, 秒数, 秒コマ, footage, frames'),
  statement('scene', 'sc, scene no, シーン, 場面'),
  statement('take', 'tk, テイク'),
  statement('artist', 'animator, key animator, drawn by, 担当, 原画, 原画マン, 作画, 原画担当, key by'),
  statement('memo', 'remark, remarks, comment, comments, instructions, メモ, 備考, 注意'),
  statement('note', 'row note, 注, コマ注, 指示', 'note', 'note', 'memo'),
  statement('same', '同ポジ, 同ポジション, 同ポジカット, same position, same set-up'),
  statement('fps', 'frame rate, framerate, フレームレート'),
  statement('on', 'shoot on, コマ打ち'),
  statement('mark', 'marker, cue, accent, マーク, きっかけ'),
  // ---- levels and timelines
  word('stack BG A BOOK', 'stack', 'BOOK, ブック'),
  statement('stack', 'layers, levels, order, layer order, セル重ね, 重ね, 重ね順, 組み'),
  statement('level', 'layer, cel, cell, column, レイヤー, セル, artwork'),
  statement('level C reuse 8/C', 'reuse, bank, 兼用, バンク', 'level', 'level'),
  statement('cels', 'cel numbers, drawing numbers, 動画番号, 番号'),
  word('_', 'cels', '欠番'),
  statement('numbering', 'renumber, renumbering, ナンバリング'),
  statement('phrase', 'macro, define, pattern'),
  statement('use', 'include, import, load'),
  item('1..', 'timeline', 'hold, held, hold to end, still, 止メ, 止め, トメ, 止'),
  item('(1--2--)*3', 'timeline', 'cycle, loop, repeat, rpt, リピート, 繰り返し, くり返し, looped, ループ'),
  item('(1--2)<>', 'timeline', 'bounce, ping, ping pong, there and back, back and forth, 往復, 逆リピート'),
  item('x', 'timeline', 'blank, empty, none, nil, clear, off screen, 空, 空セル, カラ, カラセル, 消'),
  item('1 direct 2', 'timeline', 'no inbetween, no inbetweens, 中なし, 中無し'),
  item(
    '1--2',
    'timeline',
    'to, till, until, then, から, まで, inbetween, inbetweens, tween, ib, 中割, 中割り, 動画, 中',
  ),
  item('1-=-2', 'timeline', 'breakdown, break down, bd, passing position, 中割り参考, 参考, 割り参'),
  item('1', 'timeline', 'key, keyframe, key pose, pose, extreme'),
  item('1{late}--2', 'timeline', 'slow in, cushion in, 後ヅメ, 後詰め, あとヅメ, 後づめ'),
  item('1{early}--2', 'timeline', 'slow out, 先ヅメ, 先詰め, さきヅメ, 先づめ'),
  item('1{both}---2', 'timeline', 'slow in and out, 両ヅメ, 両詰め'),
  item('1{even}--2', 'timeline', 'evenly spaced, 均等, 等分, 均等割り'),
  item(
    '1{1/2 3/4}--2',
    'timeline',
    'inbetween chart, spacing chart, timing chart, 詰め指示, ツメ, タイミングチャート',
  ),
  item('1{1/2}-2', 'timeline', 'half, halves, halfway, ハーフ, 半分'),
  item('on 1', 'on', 'ones, 1s, on ones, 1コマ打ち'),
  item('on 2', 'on', 'twos, 2s, on twos, 2コマ打ち'),
  item('on 3', 'on', 'threes, 3s, on threes, 3コマ打ち'),
  item('on 4', 'on', 'fours, 4s, on fours, 4コマ打ち'),
  // ---- words and sound
  statement(
    'voice',
    'dialogue, dialog, dial, line, speech, dx, vo, says, talk, lip sync, セリフ, せりふ, 台詞, ダイアローグ',
  ),
  statement('sound', 'se, sfx, fx sound, sound effect, effect sound, foley, 効果音, SE音, 音, 音響'),
  statement('music', 'bgm, score, song, 音楽, 曲'),
  statement('track', 'recording, audio, wav, guide track, 録音, 音声, プレスコ'),
  statement('mouth', 'mouths, lips, lip flap, 口パク, 口, クチパク'),
  word('off', 'voice', 'offscreen voice, os, o.s., オフ, オフセリフ'),
  word('mono', 'voice', 'monologue, inner voice, thinks, モノローグ, モノ, 心の声'),
  // ---- camera
  statement('field', 'frame, framing, camera frame, fld, フレーム, 画角, 撮影フレーム'),
  statement(
    'fix',
    'fixed, static, locked, camera fixed, camera fix, lock, locked off, フィックス, fix cam',
    'fix',
    'fix full',
    'fix',
  ),
  statement(
    'pan',
    'camera, cam, camera pan, pan camera, tilt, pan up, pan down, pan left, pan right, quick pan, whip pan, zip pan, swish, move camera, pan to, パン, カメラ, ティルト',
    'pan',
    'pan',
    'truck',
  ),
  statement(
    'truck',
    'zoom, zoom in, zoom out, dolly, dolly in, dolly out, push in, pull back, pull out, truck in, truck out, track in, track out, track back, t.u., t.u, t.b., t.b, zi, zo, close in, ズーム, ズームイン, ズームアウト, トラック, トラックアップ, トラックバック, TU, TB',
  ),
  statement(
    'truck quick',
    'quick truck, quick zoom, crash zoom, q.t.u, q.t.b, qtu, qtb, QTU, snap zoom, クイックTU',
    'truck',
  ),
  statement(
    'truck level',
    'level truck, scale, scale level, zoom level, resize, セルT.U, セルT.B, セルTU, セルTB',
    'truck',
  ),
  statement(
    'pull',
    'move bg, bg pan, background pull, move, scroll, 引き, 背景引き, BG引き, セル引き, 引',
    'pull',
    'pull',
    'pull BG',
    'slide',
  ),
  statement(
    'follow',
    'follow pan, follow shot, tracking shot, フォロー, フォローPAN, つけPAN, 付けPAN, 付PAN, つけパン',
  ),
  statement('slide', 'sl, move level, スライド, path'),
  statement('turn level', 'rotate, rotate level, rotation, spin, 回転, 回し', 'turn'),
  statement(
    'shake',
    'camera shake, vibration, vibrate, quake, tremble, 画面動, 画ブレ, 手ブレ, 画面揺れ, ブレ',
  ),
  statement('sway', 'rock, rocking, bob, rolling, ローリング, 揺れ', 'sway'),
  word('graduated', 'graduated', 'graduation, graduations, scale marks, 目盛り, 目盛'),
  word('pan … graduated', 'graduated', 'graduated pan, 目盛りPAN, 目盛PAN, メモリPAN'),
  word('fair', 'fair', 'fairing, cushion, settle, フェアリング, クッション, フェア'),
  word(
    'ease',
    'ease',
    'ease in, ease out, easing, ramp, accel, accelerate, decelerate, acceleration, slow in out, 加速, 減速, 加減速',
  ),
  word('steps', 'steps', 'hand spaced, increments, moves per frame, 送り, コマ送り'),
  word('carry', 'carry', 'with camera, fixed to camera, stick to camera, attached, カメラに付ける, 固定'),
  word('about', 'about', 'pivot, around, anchor, centre of rotation, 軸, 支点'),
  word('log', 'log', 'constant speed zoom, exponential'),
  word('cw', 'turn', 'clockwise, 時計回り, 右回り'),
  word('ccw', 'turn', 'counterclockwise, counter clockwise, anticlockwise, 反時計回り, 左回り'),
  word('left', 'pull', 'west, to the left, screen left, 左, 左へ'),
  word('right', 'pull', 'east, to the right, screen right, 右, 右へ'),
  word('up', 'pull', 'north, upward, upwards, 上, 上へ'),
  word('down', 'pull', 'south, downward, downwards, 下, 下へ'),
  // ---- light, and what joins cuts
  statement('fade in', 'fi, f.i, fade-in, fade up, fade from black, from black, フェードイン, 溶明', 'fade'),
  statement(
    'fade out',
    'fo, f.o, fade-out, fade to black, to black, black out, blackout, フェードアウト, 溶暗',
    'fade',
  ),
  statement('fade in white', 'wi, w.i, white in, fade from white, ホワイトイン', 'fade'),
  statement('fade out white', 'wo, w.o, white out, fade to white, ホワイトアウト', 'fade'),
  statement(
    'overlap',
    'dissolve, cross dissolve, crossfade, cross fade, xfade, x-dissolve, ol, o.l, mix, dissolve to, オーバーラップ, ディゾルブ',
    'overlap',
    'overlap',
    'overlap out',
  ),
  statement(
    'expose',
    'wxp, double exposure, dx exposure, de, opacity, transparency, 二重露光, ダブラシ, W露光',
  ),
  statement(
    'glow',
    'transmitted, transmitted light, light through, backlight, back light, bottom light, underlight, T光, 透過光, トウカコウ, 透過',
  ),
  statement('effect', 'fx, vfx, special effect, filter, 特効, 特殊効果, 処理, フィルター'),
  statement('wipe', 'wipe to, ワイプ', 'wipe', 'wipe in', 'wipe out'),
  statement('iris in', 'ii, i.i, iris-in, アイリスイン, アイリス', 'iris'),
  statement('iris out', 'io, i.o, iris-out, アイリスアウト', 'iris'),
  effect(
    'effect "defocus" A 1..24',
    'effect',
    'blur, focus, defocus, rack focus, soft focus, out of focus, ピンボケ, ボケ, ピン送り',
  ),
  word('level M masks A', 'masks', 'mask, matte, マスク'),
  effect('effect "multiplane" A 1..24', 'effect', 'multiplane, マルチ, 密着マルチ'),
  // ---- what holds for all cuts
  manifest('episode: 3', 'episode-key', 'episode, ep, 話, 話数'),
  manifest('title: Lantern Bay', 'episode-key', 'title, series, production, 作品, 作品名, タイトル'),
  manifest('convention: west', 'episode-key', 'convention'),
  manifest('paper: A3', 'episode-key', 'paper, 用紙'),
  manifest(
    'stages: [layout, key, supervisor, in-between, in-between-check, finish, shoot]',
    'progress-faulty',
    '工程, レイアウト, LO, 演出, 作監, 作画監督, 動検, 動画検査, 仕上, 仕上げ, 撮影',
  ),
  command('cutwright progress', 'progress-faulty', '進行, 進行表, 進捗, 制作進行'),
  command('cutwright progress 12 key retake', 'progress-faulty', 'retakes, リテイク, リテーク'),
  manifest('labels: ja', 'episode-key', 'language, labels, 言語'),
];

/** Words that are something else in a timeline: 原画 is whoever draws the keys, and a key. By their keys. */
const ALSO_DRAWN: ReadonlyMap<string, string> = new Map([['原画', 'key']]);

/** The entry of what was typed where it stands for something in a timeline. */
export function drawnTradeWord(typed: string): TradeWord | undefined {
  const found = tradeWord(ALSO_DRAWN.get(tradeWordKey(typed)) ?? typed);
  return found?.as === 'item' ? found : undefined;
}

/** A word without what makes no difference. */
export function tradeWordKey(typed: string): string {
  return typed
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s./_・-]/g, '');
}

let byKey: ReadonlyMap<string, TradeWord> | null = null;

/** The entry of what was typed, or undefined. Of two entries with one spelling the first holds. */
export function tradeWord(typed: string): TradeWord | undefined {
  return tradeWordsByKey().get(tradeWordKey(typed));
}

export function tradeWordsByKey(): ReadonlyMap<string, TradeWord> {
  if (byKey) return byKey;
  const made = new Map<string, TradeWord>();
  for (const one of TRADE_WORDS)
    for (const typed of one.typed) {
      const key = tradeWordKey(typed);
      if (!made.has(key)) made.set(key, one);
    }
  byKey = made;
  return made;
}
