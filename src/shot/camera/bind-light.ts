/** Fades, exposures, light through, effects, and dissolves with their handles. */

import { diagnose } from '../../language/diagnostic.js';
import type { Numeral, Range } from '../../language/tree.js';
import type { Binder, Binding } from '../binding.js';
import { LONGEST_CUT_SECONDS } from '../settings.js';
import type { Frames } from '../shot.js';
import { levelsOf } from '../statements/bind-levels.js';
import type { CameraNode } from './camera-model.js';

type Kind = 'fade' | 'wipe' | 'iris' | 'expose' | 'glow' | 'effect' | 'overlap';

function framesOf(range: Range, { clock, rows }: Binding): Frames | null {
  const frames = clock.range(range);
  if (!frames || (!frames.closed && rows === null)) return null;
  return { from: frames.from, to: frames.to };
}

function shareOf({ value, span }: Numeral, { report }: Binding): number | null {
  if (value >= 0 && value <= 100) return value / 100;
  report(diagnose('exposure-range', span, { exposure: value }));
  return null;
}

/**
 * Rows that a dissolve adds to the sheet. Half and half, the cut's time runs to the middle of the dissolve; of an odd length the
 * outgoing cut gets the smaller half (common practice). In full, both times contain the whole of it.
 */
export function handleOf(way: 'in' | 'out', length: number, overlap: 'half' | 'full'): number {
  if (overlap === 'full') return 0;
  return way === 'out' ? Math.floor(length / 2) : Math.ceil(length / 2);
}

export const lightBinders: { readonly [K in Kind]: Binder<CameraNode<K>> } = {
  fade: {
    bind({ way, white, range, span }, binding) {
      const frames = framesOf(range, binding);
      if (frames) binding.draft.camera.light.push({ kind: 'fade', way, white: white !== null, frames, span });
    },
  },
  wipe: {
    bind({ way, towards, range, span }, binding) {
      const frames = framesOf(range, binding);
      if (frames) binding.draft.camera.light.push({ kind: 'wipe', way, towards, frames, span });
    },
  },
  iris: {
    bind({ way, at, range, span }, binding) {
      const frames = framesOf(range, binding);
      const [xMm, yMm] = [at?.xMm ?? 0, at?.yMm ?? 0];
      const { widthMm, heightMm } = binding.settings.field;
      if (at && (Math.abs(xMm) > widthMm / 2 || Math.abs(yMm) > heightMm / 2))
        binding.report(diagnose('iris-outside', at.span, { xMm, yMm }));
      if (frames) binding.draft.camera.light.push({ kind: 'iris', way, xMm, yMm, frames, span });
    },
  },
  expose: {
    bind({ levels: words, from: first, to: last, range, span }, binding) {
      const levels = levelsOf(words, binding);
      const frames = framesOf(range, binding);
      const from = shareOf(first, binding);
      const to = last ? shareOf(last, binding) : from;
      if (!frames || from === null || to === null || levels.length === 0) return;
      binding.draft.camera.light.push({ kind: 'expose', levels, from, to, frames, span });
    },
  },
  glow: {
    bind({ levels: words, range, span }, binding) {
      const levels = levelsOf(words, binding);
      const frames = framesOf(range, binding);
      if (frames && levels.length > 0)
        binding.draft.camera.light.push({ kind: 'glow', levels, frames, span });
    },
  },
  effect: {
    bind({ text, levels: words, range, span }, binding) {
      const levels = levelsOf(words, binding);
      const frames = framesOf(range, binding);
      if (!frames) return;
      binding.draft.camera.light.push({ kind: 'effect', text: text.text, levels, frames, span });
    },
  },
  overlap: {
    once: ({ way }) => ({ code: 'statement-twice', parameters: { statement: 'overlap', name: way } }),
    settle({ way, length: time }, draft, clock, report) {
      const length = clock.length(time);
      if (length === null) return;
      if (length < 2) {
        report(diagnose('overlap-short', time.span, {}));
        return;
      }
      if (length > LONGEST_CUT_SECONDS * draft.fps) {
        report(diagnose('overlap-long', time.span, { variant: 'cut' }));
        return;
      }
      const handle = handleOf(way, length, draft.overlap);
      draft.overlaps[way] = length;
      draft.handles[way === 'in' ? 'head' : 'tail'] = handle;
    },
    bind({ way, length: time, span }, { draft, rows, report }) {
      const length = draft.overlaps[way];
      if (length === null || rows === null) return;
      if (length > rows) {
        report(diagnose('overlap-long', time.span, { variant: 'sheet', frames: length, rows }));
        return;
      }
      const frames = way === 'in' ? { from: 1, to: length } : { from: rows - length + 1, to: rows };
      draft.camera.light.push({ kind: 'overlap', way, length, frames, span });
    },
  },
};
