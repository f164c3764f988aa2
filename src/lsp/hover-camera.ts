/** Hovers of fields and moves. */

import type { StatementOf } from '../language/tree.js';
import { makeField, standardField } from '../shot/camera/bind-fields.js';
import type { Field } from '../shot/camera/camera-model.js';
import { kindOf, type LegForm } from '../shot/camera/move-kinds.js';
import { evenSteps } from '../shot/camera/move-parameters.js';
import type { Settings } from '../shot/settings.js';
import type { SolvedMove } from '../solve/camera/solved-camera.js';
import { moveTitles } from '../words/en/forms-en.js';
import { figure } from '../words/number-format.js';
import { between, lasting, millimetres } from './hover-wording.js';
import type { Analysis } from './workspace.js';

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
    `${moveTitles[move.kind].title}: ${between(Math.max(1, from + 1), Math.min(end, shot.length))}, ${lasting(end - from, shot.fps)} in ${end - from} steps`,
  ];
  if (wayMm > 1e-9) {
    lines.push(`way ${millimetres(wayMm)}${speedText(found)}`);
    const largest = graduations.find(({ stepMm }) => Math.abs(Math.abs(stepMm) - largestStepMm) < 1e-9);
    lines.push(
      `largest step ${millimetres(largestStepMm)}${largest ? ` on frame ${largest.frame}` : ''}: ${figure(largestStepShare * 100)} % of the field's width, ${figure(largestStepPx, { decimals: 1 })} pixels`,
    );
  }
  const first = graduations[0];
  const last = graduations.at(-1);
  if (first?.value != null && last?.value != null && first.value !== last.value) {
    const shown = VALUES[kindOf(move).legs];
    lines.push(`from ${shown(first.value)} to ${shown(last.value)}`);
  }
  return lines.join('  \n');
}

/** What a move drives besides the place. */
const VALUES: { readonly [L in LegForm]: (value: number) => string } = {
  field: (value) => `${figure(value)} mm of width`,
  scale: (value) => `${figure(value * 100)} %`,
  angle: (value) => `${figure(value)}°`,
  place: figure,
  way: figure,
  swing: figure,
};

/** The speed of the part that runs at constant speed, where there is one for the whole move. */
function speedText({ move, wayMm }: SolvedMove): string {
  const [leg, second] = move.legs;
  if (!leg || second || !kindOf(move).goes) return '';
  const { spacing } = leg;
  const speed = `, ${figure(wayMm / evenSteps(spacing, leg.end - leg.start), { decimals: 3 })} mm/f`;
  if (spacing.form === 'linear') return `${speed} throughout`;
  return spacing.form === 'ease' ? `${speed} where it runs at constant speed` : '';
}
