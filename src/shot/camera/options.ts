/** What may stand behind a move, and how its way is spread. */

import { diagnose, type Span } from '../../language/diagnostic.js';
import type { Word } from '../../language/tree.js';
import type { MoveOptions, SpacingNode } from '../../language/tree-camera.js';
import type { Binding } from '../binding.js';
import type { Move, Spacing } from '../camera.js';
import { bindOn } from '../items.js';
import { unknownLevel } from '../statements/levels.js';

type Option = Exclude<keyof MoveOptions, 'on'>;

/** `on` may stand behind any move. */
const FITTING: { readonly [K in Move['kind']]: readonly Option[] } = {
  pan: ['ticks', 'carry'],
  truck: ['ticks', 'log', 'carry'],
  pull: ['ticks', 'loop'],
  follow: ['ticks'],
  slide: ['ticks'],
  levelTruck: ['ticks', 'log', 'about'],
  turn: ['ticks', 'about', 'sense'],
  shake: ['sideways'],
  roll: ['sideways'],
};

const WHAT: { readonly [K in Move['kind']]: string } = {
  pan: 'a pan',
  truck: 'a truck',
  pull: 'a pull',
  follow: 'a follow',
  slide: 'a slide',
  levelTruck: 'the truck of a level',
  turn: 'a turn',
  shake: 'a shake',
  roll: 'a sway',
};

function placeOf(options: MoveOptions, option: Option): Span | null {
  switch (option) {
    case 'ticks':
    case 'log':
    case 'sideways':
      return options[option];
    case 'carry':
      return options.carry[0]?.span ?? null;
    default:
      return options[option]?.span ?? null;
  }
}

/** Reports the options that say nothing of such a move, and gives what all moves have. */
export function moved(
  kind: Move['kind'],
  span: Span,
  options: MoveOptions,
  { report }: Binding,
): { span: Span; on: number; ticks: boolean } {
  for (const option of ['ticks', 'log', 'carry', 'about', 'sense', 'loop', 'sideways'] as const) {
    const place = placeOf(options, option);
    if (!place || FITTING[kind].includes(option)) continue;
    const word = option === 'sense' ? options.sense!.sense : option;
    report(diagnose('option-misplaced', place, `\`${word}\` has no meaning for ${WHAT[kind]}.`));
  }
  const on = options.on ? (bindOn(options.on.value, options.on.span, report) ?? 1) : 1;
  return { span, on, ticks: options.ticks !== null };
}

/** Reports what spreads the way of a move that has none: its swings are all alike. */
export function unspread(kind: 'shake' | 'roll', nodes: readonly SpacingNode[], { report }: Binding): void {
  for (const { span, form } of nodes)
    report(diagnose('option-misplaced', span, `\`${form}\` has no meaning for ${WHAT[kind]}.`));
}

/** Names of the levels that are there, each once; others are reported. Without a stack BG is always there. */
export function levelsOf(words: readonly Word[], binding: Binding): string[] {
  const { draft, report } = binding;
  const names: string[] = [];
  for (const word of words) {
    if (!draft.levels.has(word.text) && !(word.text === 'BG' && !draft.stack)) unknownLevel(word, binding);
    else if (!names.includes(word.text)) names.push(word.text);
    else
      report(
        diagnose('level-repeated', word.span, `Level \`${word.text}\` is named twice here; once is enough.`),
      );
  }
  return names;
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
      diagnose('spacing-twice', second.span, 'The way of this leg is spread twice; one of both has to go.', {
        notes: [{ message: 'it is spread here already', span: node!.span }],
      }),
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
        report(
          diagnose(
            'fairing-misplaced',
            node.span,
            'A fairing mark belongs to a quick truck: `truck quick … fair …`; other moves slow down with `ease`.',
          ),
        );
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
