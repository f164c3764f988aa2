/** Hovers of fields and moves. */

import type { StatementOf } from '../../language/tree.js';
import { makeField, standardField } from '../../shot/camera/fields.js';
import type { Field, Spacing } from '../../shot/camera.js';
import type { Settings } from '../../shot/settings.js';
import type { SolvedMove } from '../../solve/camera/solved.js';
import type { Analysis } from '../workspace.js';
import { between, figure, lasting, millimetres } from './words.js';

export function fieldText({ compiled, episode, name: file }: Analysis, name: string): string | null {
  const settings = compiled?.shot?.settings ?? episode.settings;
  const here = { file, start: 0, end: 0 };
  const statement = compiled?.tree?.statements.find(
    (one): one is StatementOf<'field'> => one.kind === 'field' && one.name.text === name,
  );
  const field =
    compiled?.shot?.camera.fields.find((one) => one.name === name) ??
    (statement ? makeField(statement, settings) : name === 'full' ? standardField(settings, here) : null);
  return field && describe(field, settings);
}

function describe({ name, xMm, yMm, widthMm, turnDeg }: Field, { field, fields }: Settings): string {
  const height = (widthMm * field.heightMm) / field.widthMm;
  const steps = 2 * fields;
  const side = (steps: number, plus: string, minus: string): string =>
    Math.abs(steps) < 5e-3 ? '' : ` ${figure(Math.abs(steps))}${steps > 0 ? plus : minus}`;
  const chart = `${figure((widthMm / field.widthMm) * fields)}F${side((yMm / field.heightMm) * steps, 'N', 'S')}${side((xMm / field.widthMm) * steps, 'E', 'W')}`;
  const turned =
    turnDeg === 0
      ? ''
      : `, turned ${figure(Math.abs(turnDeg))}° ${turnDeg > 0 ? 'clockwise' : 'counter-clockwise'}`;
  return [
    `Field \`${name}\`: ${figure(widthMm)} × ${millimetres(height)}, ${figure((widthMm / field.widthMm) * 100)} % of the standard field`,
    `centre ${figure(xMm)}, ${figure(yMm)} mm${turned}; on the ${fields}-field chart ${chart}`,
  ].join('  \n');
}

const NAMES: Readonly<Record<SolvedMove['move']['kind'], string>> = {
  pan: 'Pan',
  truck: 'Truck',
  pull: 'Pull',
  follow: 'Follow',
  slide: 'Slide',
  levelTruck: 'Truck of a level',
  turn: 'Turn of a level',
  shake: 'Shake',
  roll: 'Sway',
};

/** The move that a statement says. */
export function moveText({ compiled }: Analysis, start: number, file: string): string | null {
  const { solved, shot } = compiled ?? {};
  const found = solved?.camera.moves.find(({ move }) => move.span.start === start && move.span.file === file);
  if (!found || !shot) return null;
  const {
    move,
    start: from,
    end,
    wayMm,
    largestStepMm,
    largestStepShare,
    largestStepPx,
    graduations,
  } = found;
  const lines = [
    `${NAMES[move.kind]}: ${between(Math.max(1, from + 1), Math.min(end, shot.length))}, ${lasting(end - from, shot.fps)} in ${end - from} steps`,
  ];
  if (wayMm > 1e-9) {
    lines.push(`way ${millimetres(wayMm)}${speedText(found)}`);
    const largest = graduations.find(({ stepMm }) => Math.abs(Math.abs(stepMm) - largestStepMm) < 1e-9);
    lines.push(
      `largest step ${millimetres(largestStepMm)}${largest ? ` on frame ${largest.frame}` : ''}: ${figure(largestStepShare * 100)} % of the field's width, ${figure(largestStepPx, 1)} pixels`,
    );
  }
  const first = graduations[0];
  const last = graduations.at(-1);
  if (first?.value != null && last?.value != null && first.value !== last.value) {
    const unit = move.kind === 'turn' ? '°' : move.kind === 'truck' ? ' mm of width' : '';
    const shown = (value: number) =>
      move.kind === 'levelTruck' ? `${figure(value * 100)} %` : `${figure(value)}${unit}`;
    lines.push(`from ${shown(first.value)} to ${shown(last.value)}`);
  }
  return lines.join('  \n');
}

/** The speed of the part that runs at constant speed, where there is one for the whole move. */
function speedText({ move, wayMm, start, end }: SolvedMove): string {
  const legs: readonly { spacing: Spacing; start: number; end: number }[] =
    'legs' in move ? move.legs : 'spacing' in move ? [{ spacing: move.spacing, start, end }] : [];
  const [leg] = legs;
  if (legs.length !== 1 || !leg || move.kind === 'truck') return '';
  const steps = leg.end - leg.start;
  if (leg.spacing.form === 'linear') return `, ${figure(wayMm / steps, 3)} mm/f throughout`;
  if (leg.spacing.form !== 'ease') return '';
  const { leave, arrive } = leg.spacing;
  return `, ${figure(wayMm / (steps - (leave + arrive) / 2), 3)} mm/f where it runs at constant speed`;
}
