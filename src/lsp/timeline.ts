/** Timelines of the text beside what the solver makes of them. */

import type { StatementOf } from '../language/tree.js';
import type { Level, Shot } from '../shot/shot.js';
import { lay, type Placed } from '../solve/lay.js';
import type { SolvedLevel } from '../solve/solved.js';
import type { Analysis } from './workspace.js';

export interface Laid {
  readonly shot: Shot;
  readonly level: Level;
  readonly solved: SolvedLevel | null;
  readonly placed: readonly Placed[];
  /** The last frame that the timeline says something for; 0 for none. */
  readonly filled: number;
}

/** Null where the timeline is not the one that its level has, or could not be bound whole. */
export function laid({ compiled }: Analysis, statement: StatementOf<'timeline'>): Laid | null {
  const shot = compiled?.shot;
  const level = shot?.levels.find(({ name }) => name === statement.level.text);
  const timeline = level?.timeline;
  if (!shot || !level || !timeline?.whole) return null;
  if (timeline.span.start !== statement.span.start || timeline.span.file !== statement.span.file) return null;
  const placed = lay(level, timeline, shot, () => {});
  const last = placed.at(-1);
  const solved = compiled.solved?.levels.find(({ name }) => name === level.name) ?? null;
  return { shot, level, solved, placed, filled: last ? last.start + last.frames - 1 : 0 };
}
