/** What stands above the first line of a cut: how many drawings it has, and commands of the editor. */

import type { CodeLens } from 'vscode-languageserver';
import { secondsAndFrames } from '../shot/time-notation.js';
import { plural } from '../words/number-format.js';
import type { Analysis } from './workspace.js';

/** Commands that only an editor can carry out; each is given the uri of the cut. */
export const EDITOR_COMMANDS = { 'cutwright.print': 'Print', 'cutwright.preview': 'Show the pages' } as const;

/** `commands`: those that the editor has said it knows. */
export function lensesIn({ compiled, text, open }: Analysis, commands: ReadonlySet<string>): CodeLens[] {
  const cut = compiled?.tree?.statements.find(({ kind }) => kind === 'cut');
  if (!cut) return [];
  const range = text.range(cut.word);
  const counted = compiled?.solved
    ? [{ range, command: { title: countText(compiled.solved), command: '' } }]
    : [];
  const offered = Object.entries(EDITOR_COMMANDS)
    .filter(([command]) => commands.has(command))
    .map(([command, title]) => ({ range, command: { title, command, arguments: [open.uri] } }));
  return [...offered, ...counted];
}

function countText({ shot, counts }: NonNullable<NonNullable<Analysis['compiled']>['solved']>): string {
  const { keys, breakdowns, inbetweens, drawings, reused, backgrounds } = counts;
  const kinds = [
    ...(keys > 0 ? [plural(keys, 'key')] : []),
    ...(breakdowns > 0 ? [plural(breakdowns, 'breakdown')] : []),
    ...(inbetweens > 0 ? [plural(inbetweens, 'in-between')] : []),
  ];
  return [
    `${secondsAndFrames(shot.length, shot.fps)}: ${plural(drawings, 'drawing')}${kinds.length > 0 ? ` (${kinds.join(', ')})` : ''}`,
    ...(reused > 0 ? [`${reused} reused`] : []),
    ...(backgrounds > 0 ? [plural(backgrounds, 'background')] : []),
  ].join(', ');
}
