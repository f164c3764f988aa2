/** What the camera does in a cut, in as few words as the trade has for it. */

import type { SolvedShot } from '../../solve/solved-shot.js';
import type { LabelLanguage } from '../../words/labels.js';
import { wordsOf } from '../../words/words.js';
import { lightKind } from './light-labels.js';
import { moveKind } from './move-labels.js';

/** `PAN`, `T.U`, `O.L`: each name once, in the order of the first rows; `FIX` first where neither camera nor level moves. */
export function shortMoves({ shot, camera }: SolvedShot, language: LabelLanguage): string[] {
  const words = wordsOf({ labels: language, convention: shot.settings.convention }).moves;
  const seen = <T>(kind: { first(it: T): number }, it: T): boolean => kind.first(it) <= shot.length;
  const moves = camera.moves.filter(({ move }) => seen(moveKind, move));
  const light = camera.light.filter((one) => seen(lightKind(one.light), one.light));
  const named = [
    ...moves.map(({ move }) => ({ at: moveKind.first(move), name: moveKind.short(move, words) })),
    ...light.map((one) => ({
      at: lightKind(one.light).first(one.light),
      name: lightKind(one.light).short(one.light, words),
    })),
  ].sort((a, b) => a.at - b.at);
  return [...new Set([...(moves.length === 0 ? [words.fix] : []), ...named.map(({ name }) => name)])];
}
