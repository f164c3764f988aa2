/** Offers to turn a mouth into the timeline that gives the same frames, so that it can be changed by hand. */

import { type CodeAction, CodeActionKind } from 'vscode-languageserver';
import { timelineItems } from '../draft/cut-text.js';
import type { TextRange } from '../language/source.js';
import { quote } from '../language/source.js';
import type { SolvedLevel } from '../solve/solved-shot.js';
import type { Analysis } from './workspace.js';

export function mouthActions({ compiled, text, open }: Analysis, { start, end }: TextRange): CodeAction[] {
  const { shot, solved, tree } = compiled ?? {};
  if (!shot || !solved || !tree) return [];
  return tree.statements.flatMap((one): CodeAction[] => {
    if (one.kind !== 'mouth' || one.span.start > end || one.span.end < start) return [];
    const { level, span } = one;
    const found = shot.levels.find(({ name }) => name === level.text);
    const shown = solved.levels.find(({ name }) => name === level.text);
    if (found?.mouth?.span.start !== span.start || !shown) return [];
    const items = timelineItems(runsOf(shown), shot.on, shot.fps);
    const timeline = `${level.text} ${quote(found.title)}: ${items}`;
    return [
      {
        title: 'Make it a timeline',
        kind: CodeActionKind.RefactorRewrite,
        edit: { changes: { [open.uri]: [text.textEdit({ span, text: timeline })] } },
      },
    ];
  });
}

function runsOf({ exposures }: SolvedLevel) {
  const runs: { drawing: string | null; kind: SolvedLevel['exposures'][number]['kind']; frames: number }[] =
    [];
  for (const { drawing, kind, starts } of exposures) {
    if (starts) runs.push({ drawing, kind, frames: 0 });
    runs.at(-1)!.frames++;
  }
  return runs;
}
