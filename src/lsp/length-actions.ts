/** Where a level is too short or too long there is more than one way to mend it; the message offers the likeliest. Here are the others. */

import type { CodeAction } from 'vscode-languageserver';
import { hasErrors, type SourceEdit } from '../language/diagnostic.js';
import type { TextRange } from '../language/source.js';
import { withEdits } from '../language/statement-reader.js';
import type { StatementOf } from '../language/tree.js';
import { feetAndFrames, secondsAndFrames } from '../shot/time-notation.js';
import { codeActionOf } from './lsp-diagnostics.js';
import type { Analysis, Workspace } from './workspace.js';

/** Each was tried on the whole cut: the message is gone, and none has come in its place. */
export function lengthActions(
  workspace: Workspace,
  analysis: Analysis,
  { start, end }: TextRange,
): CodeAction[] {
  const { compiled, name } = analysis;
  const time = compiled?.tree?.statements.find(({ kind }) => kind === 'time');
  const shot = compiled?.shot;
  if (!compiled || !shot) return [];
  return compiled.diagnostics.flatMap((one): CodeAction[] => {
    const { code, span } = one;
    if ((code !== 'timeline-short' && code !== 'timeline-long') || span.file !== name) return [];
    if (span.start > end || span.end < start) return [];
    const {
      level,
      shown,
      rows,
      time: said,
    } = one.parameters as {
      level: string;
      shown: number | null;
      time: number;
      rows: number;
    };
    const offer = (title: string, edit: SourceEdit): CodeAction[] => {
      const trial = workspace.tried(
        analysis,
        withEdits(analysis.text.text, [{ ...edit.span, text: edit.text }]),
      );
      const stays = trial.compiled!.diagnostics.some(
        (other) => other.code === code && (other.parameters as { level?: string }).level === level,
      );
      if (stays || errorsIn(trial) >= errorsIn(analysis)) return [];
      return codeActionOf(workspace, analysis, one, title, [edit]);
    };
    const found: CodeAction[] = [];
    const frames = shown === null ? 0 : said + shown - rows;
    if (time?.kind === 'time' && frames > 0) {
      const text = written(time.time, frames, shot.fps);
      if (text) found.push(...offer(`Make the cut ${text}`, { span: time.time.span, text }));
    }
    if (code === 'timeline-short')
      found.push(...offer('Show nothing from there', { span: { ...span, start: span.end }, text: ' x..' }));
    return found;
  });
}

const errorsIn = ({ compiled }: Pick<Analysis, 'compiled'>): number =>
  compiled!.diagnostics.filter((one) => hasErrors([one])).length;

/** A time as the cut writes its own; null where it says it by a mark. */
function written(time: StatementOf<'time'>['time'], frames: number, fps: number): string | null {
  switch (time.form) {
    case 'seconds':
      return secondsAndFrames(frames, fps);
    case 'feet':
      return feetAndFrames(frames);
    case 'frames':
      return String(frames);
    default:
      return null;
  }
}
