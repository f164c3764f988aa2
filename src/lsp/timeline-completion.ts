/** What can stand in a timeline or a phrase. */

import { type CompletionItem, CompletionItemKind, TextEdit } from 'vscode-languageserver';
import type { StatementAtCursor } from '../language/grammar-queries.js';
import { timelineRule } from '../language/statements/statement-table.js';
import type { Item } from '../language/tree.js';
import { inFrames, secondsAndFrames } from '../shot/time-notation.js';
import { keyword, namesOffered } from './name-completion.js';
import { type SolvedTimeline, solvedTimeline } from './timeline-frames.js';
import type { Analysis, Workspace } from './workspace.js';

const CHARTS = ['even', 'early', 'late', 'both'];

/** How often a group is repeated, of those that are offered. */
const MOST_REPEATS = 8;

/** What an item shows, in a word. */
export function itemLabel(item: Item): string {
  if (item.kind === 'key') return item.name;
  if (item.kind === 'reference')
    return `${item.key}${item.to ? `>${item.to}` : ''}.${item.index}${item.letter}`;
  if (item.kind === 'between') return 'the in-between';
  if (item.kind === 'empty') return 'the empty level';
  return item.kind === 'phrase' ? item.name : 'the group';
}

/** In a timeline or a phrase: phrases and words, marks behind `@`, charts inside `{`, and `..` where frames are missing. */
export function drawingsOffered(
  workspace: Workspace,
  analysis: Analysis,
  begun: StatementAtCursor,
  cursor: number,
): CompletionItem[] {
  const { tokens, entry } = begun;
  const kinds = tokens.map(({ type }) => type.name);
  const items = kinds.indexOf(entry === timelineRule ? 'Colon' : 'Equals');
  if (items < 0) return [];
  if (kinds.lastIndexOf('OpenBrace') > kinds.lastIndexOf('CloseBrace'))
    return kinds.at(-1) === 'OpenBrace'
      ? CHARTS.map((label) => ({
          label,
          kind: CompletionItemKind.EnumMember,
          detail: 'spacing of the in-betweens',
        }))
      : [];
  const last = kinds.at(-1)!;
  if (last === 'At') return namesOffered(workspace, analysis, 'mark', cursor);
  if (last === 'Star')
    return [...toTheEnd(analysis, begun, cursor), ...repeats(workspace, analysis, begun, cursor)];
  if (last === 'Colon' && kinds.length - 1 > items) return toTheEnd(analysis, begun, cursor);
  return [
    ...toTheEnd(analysis, begun, cursor),
    ...namesOffered(workspace, analysis, 'phrase', cursor),
    keyword('on'),
    keyword('x'),
  ];
}

/** `..` behind the last item of a timeline that is too short. */
function toTheEnd(analysis: Analysis, { start }: StatementAtCursor, cursor: number): CompletionItem[] {
  const { compiled, text } = analysis;
  const statement = compiled?.tree?.statements.find(
    ({ kind, span }) => kind === 'timeline' && span.start === start,
  );
  const timeline = statement?.kind === 'timeline' ? solvedTimeline(analysis, statement) : null;
  if (statement?.kind !== 'timeline' || !timeline) return [];
  const { end } = statement.span;
  const last = statement.items.at(-1)!;
  const missing = timeline.shot.length - timeline.filled;
  const short = compiled!.diagnostics.find(
    ({ code, span }) => code === 'timeline-short' && span.start >= start && span.end <= end,
  );
  const edit = short?.fix?.edits[0];
  // In place of how often a group is repeated, or behind the last item.
  if (edit?.text !== '..' || edit.span.end !== end || cursor < end) return [];
  const again = last.kind === 'group' || last.kind === 'phrase';
  const stretch = { start: edit.span.start, end: cursor };
  return [
    {
      label: '..',
      kind: CompletionItemKind.Operator,
      detail: `${again ? 'repeat' : 'hold'} ${itemLabel(last)} to the end: ${inFrames(missing)}`,
      sortText: ' ',
      filterText: text.text.slice(stretch.start, stretch.end) || '..',
      preselect: true,
      textEdit: TextEdit.replace(text.range(stretch), '..'),
    },
  ];
}

/**
 * Behind the `*` of a group: how often it is played, each with the row on which it is over, first the number that fills the cut.
 * They are found by trying the cut with one pass and with two.
 */
function repeats(
  workspace: Workspace,
  analysis: Analysis,
  { start, from }: StatementAtCursor,
  cursor: number,
): CompletionItem[] {
  const tried = (passes: number): SolvedTimeline | null => {
    const typed = analysis.text.text;
    const trial = workspace.tried(analysis, `${typed.slice(0, from)}${passes}${typed.slice(cursor)}`);
    const statement = trial.compiled?.tree?.statements.find(
      ({ kind, span }) => kind === 'timeline' && span.start === start,
    );
    return statement?.kind === 'timeline' ? solvedTimeline(trial, statement) : null;
  };
  const once = tried(1);
  const twice = once && tried(2);
  const each = twice ? twice.filled - once.filled : 0;
  if (!once || each <= 0) return [];
  const { length, fps } = once.shot;
  const most = Math.floor((length - once.filled) / each) + 1;
  const offered = Array.from({ length: MOST_REPEATS - 1 }, (_, i) => i + 2).filter(
    (passes) => passes <= most,
  );
  const all = [...new Set([...(most > 1 ? [most] : []), ...offered])];
  return all.map((passes, place) => {
    const filled = once.filled + (passes - 1) * each;
    const left = length - filled;
    return {
      label: String(passes),
      kind: CompletionItemKind.Value,
      detail:
        left === 0
          ? 'to the end of the cut'
          : `to ${secondsAndFrames(filled, fps)}, ${inFrames(left)} before the end of the cut`,
      sortText: `!${String(place).padStart(2, '0')}`,
    };
  });
}
