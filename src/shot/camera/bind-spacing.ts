/** How the way of a leg is spread over its steps. */

import { diagnose } from '../../language/diagnostic.js';
import type { SpacingNode } from '../../language/tree-camera.js';
import type { Binding } from '../binding.js';
import type { Spacing } from './camera-model.js';

/**
 * How many steps at constant speed go as far as `steps` steps with these ramps: a ramp of constant acceleration takes the way of
 * half its frames (s = a t² / 2).
 */
export function evenSteps(spacing: Spacing, steps: number): number {
  return spacing.form === 'ease' ? steps - (spacing.leave + spacing.arrive) / 2 : steps;
}

/** `quick`: whether it is a leg of a quick truck, the only move with a fairing mark. Null where a time cannot be had. */
export function spacingOf(
  nodes: readonly SpacingNode[],
  quick: boolean,
  { clock, report }: Binding,
): Spacing | null {
  const [node, second] = nodes;
  if (second) {
    report(
      diagnose('spacing-twice', second.span, {}, { notes: [{ note: 'spread-here', span: node!.span }] }),
    );
  }
  switch (node?.form) {
    case undefined:
      return { form: 'linear' };
    case 'ease':
      return { form: 'ease', leave: node.leave.value, arrive: node.arrive.value };
    case 'curve': {
      const [x1, y1, x2, y2] = node.values.map(({ value }) => value) as [number, number, number, number];
      return { form: 'curve', x1, y1, x2, y2 };
    }
    case 'steps':
      return { form: 'steps', mm: bySteps(node) };
    case 'fair': {
      const frame = clock.position(node.at);
      if (frame === null) return null;
      if (!quick) {
        report(diagnose('fairing-misplaced', node.span, {}));
        return { form: 'linear' };
      }
      return { form: 'fair', mark: node.mark.text, frame, share: node.share.value / 100 };
    }
  }
}

/** More graduations than any sheet has rows; a slip of the hand cannot fill the memory. */
const MOST_STEPS = 100_000;

function bySteps({ steps }: SpacingNode & { form: 'steps' }): number[] {
  const mm: number[] = [];
  for (const { mm: step, times } of steps) {
    for (let i = 0; i < times && mm.length < MOST_STEPS; i++) mm.push(step.value);
  }
  return mm;
}
