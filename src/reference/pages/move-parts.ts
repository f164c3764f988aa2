/** What may stand behind moves: said once, used by the page of every move that it has a meaning for. */

import type { StatementPage } from '../statement-pages.js';

type Part = StatementPage['parts'][number];

const BEHIND = {
  ease: [
    'ease 6 12',
    'gathers speed over 6 frames, loses it over the last 12; `ease 12` is both ends. Default: the same speed throughout',
  ],
  curve: ['curve 0.42 0 0.58 1', 'spread along a cubic Bézier, as CSS Easing has it'],
  steps: [
    'steps 1 2 4*3 2 1',
    'graduations by hand in mm, one for each step; `4*3` is 4 mm three times. They add up to the way within 0.05 mm',
  ],
  fair: [
    'fair ア@6 65%',
    'of a quick truck: the fairing mark ア, its frame, and the share of the way done there. The rest is a cushion to a stop',
  ],
  ticks: ['ticks', 'written frame by frame: numbered graduations on the layout and in the camera column'],
  on: ['on 2', 'the move is sampled on twos, threes …. Default: every frame'],
  log: ['log', 'the size changes by equal ratios, which looks like constant speed. Default: evenly in mm'],
  carry: ['carry A,B', 'these levels go with the camera, and keep what they have gained'],
  about: ['about 10,20', 'the point that stays, mm on the artwork. Default: the artwork’s centre'],
  cw: ['cw', 'clockwise'],
  ccw: ['ccw', 'counter-clockwise'],
  loop: ['loop 420mm', 'the artwork is painted as a loop of this length'],
  sideways: ['sideways', 'to the right first. Default: up first'],
} satisfies Record<string, Part>;

export function moveParts(...names: readonly (keyof typeof BEHIND)[]): Part[] {
  return names.map((name) => BEHIND[name] as Part);
}
