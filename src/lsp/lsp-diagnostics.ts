/** The one diagnostic type of the program, as an editor takes it. */

import { basename } from 'node:path';
import {
  type CodeAction,
  CodeActionKind,
  DiagnosticSeverity,
  DiagnosticTag,
  type Diagnostic as Shown,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import type { Diagnostic, Severity, SourceEdit, Span } from '../language/diagnostic.js';
import { actionOf, messageOf, noteOf } from '../language/message.js';
import { safeFixes } from '../language/safe-fixes.js';
import type { DocumentText } from './document-text.js';
import type { Analysis, Workspace } from './workspace.js';

const SOURCE = 'cutwright';

/** Editors hide what they call a hint from their lists, and ours ask about real slips: they are information. */
const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  hint: DiagnosticSeverity.Information,
};

/** Codes of what nobody refers to, which editors show in grey. */
const UNUSED = /-unused$/;

/** What is told at an open text. `at`: where it stands there. */
interface PlacedDiagnostic {
  readonly diagnostic: Diagnostic;
  readonly at: Span;
  readonly message: string;
}

/** Those of the text itself; errors of files that it depends on stand where it names them. */
function placedDiagnostics({ compiled, episode, name, language }: Analysis): PlacedDiagnostic[] {
  const uses = (compiled?.tree?.statements ?? []).flatMap((one) => (one.kind === 'use' ? [one.path] : []));
  const start = { file: name, start: 0, end: 0 };
  return (compiled ?? episode).diagnostics.flatMap((diagnostic): PlacedDiagnostic[] => {
    const { span, severity, notes } = diagnostic;
    const message = messageOf(diagnostic, language);
    if (span.file === name) return [{ diagnostic, at: span, message }];
    if (severity !== 'error' || !compiled) return [];
    const named = uses.find(({ text }) => basename(text) === basename(span.file)) ?? uses[0];
    return [
      {
        diagnostic: { ...diagnostic, notes: [{ note: 'stands-here', span }, ...notes] },
        at: span.file === episode.file || !named ? start : named.span,
        message: language === 'ja' ? `${span.file}：${message}` : `In ${span.file}: ${message}`,
      },
    ];
  });
}

/** The text that a span points into, and its uri; null where it cannot be had. */
export function placeIn(
  workspace: Workspace,
  analysis: Analysis,
  file: string,
): { uri: string; text: DocumentText } | null {
  if (file === analysis.name) return { uri: analysis.open.uri, text: analysis.text };
  const path = workspace.placeOf(file);
  const uri = workspace.uriOf(path);
  const open = workspace.open.get(uri);
  if (open) return { uri, text: open.text };
  const source =
    analysis.compiled?.sources.get(file) ??
    (analysis.episode.file === file ? analysis.episode.text : undefined);
  return source === undefined ? null : { uri, text: workspace.newText(source) };
}

export function diagnosticsOf(workspace: Workspace, analysis: Analysis): Shown[] {
  return placedDiagnostics(analysis).map((one) => shown(workspace, analysis, one));
}

/** Without what stands in other files. */
export function ownDiagnosticsOf(workspace: Workspace, analysis: Analysis): Shown[] {
  return placedDiagnostics(analysis)
    .filter(({ diagnostic }) => diagnostic.span.file === analysis.name)
    .map((one) => shown(workspace, analysis, one));
}

function shown(
  workspace: Workspace,
  analysis: Analysis,
  { diagnostic, at, message }: PlacedDiagnostic,
): Shown {
  const { code, severity, notes } = diagnostic;
  const related = notes.flatMap((note) => {
    const { span } = note;
    const place = span && placeIn(workspace, analysis, span.file);
    return span && place
      ? [
          {
            location: { uri: place.uri, range: place.text.range(span) },
            message: noteOf(note, analysis.language),
          },
        ]
      : [];
  });
  const unplaced = notes.filter(({ span }) => !span).map((note) => `\n${noteOf(note, analysis.language)}`);
  return {
    range: analysis.text.range(at),
    severity: SEVERITIES[severity],
    code,
    source: SOURCE,
    message: message + unplaced.join(''),
    ...(related.length > 0 ? { relatedInformation: related } : {}),
    ...(UNUSED.test(code) ? { tags: [DiagnosticTag.Unnecessary] } : {}),
  };
}

/** The fixes of what is told about a stretch of the text. */
export function actionsAt(
  workspace: Workspace,
  analysis: Analysis,
  { start, end }: { start: number; end: number },
): CodeAction[] {
  return placedDiagnostics(analysis).flatMap((one): CodeAction[] => {
    const { fix } = one.diagnostic;
    if (!fix || one.at.start > end || one.at.end < start) return [];
    const edit = workspaceEdit(workspace, analysis, fix.edits);
    return edit
      ? [{ ...mend(workspace, analysis, one, actionOf(fix, analysis.language), edit), isPreferred: true }]
      : [];
  });
}

/** Another mend of a problem of the text itself; [] where an edit lies in a text that cannot be had. */
export function codeActionOf(
  workspace: Workspace,
  analysis: Analysis,
  diagnostic: Diagnostic,
  title: string,
  edits: readonly SourceEdit[],
): CodeAction[] {
  const edit = workspaceEdit(workspace, analysis, edits);
  const placed = { diagnostic, at: diagnostic.span, message: messageOf(diagnostic, analysis.language) };
  return edit ? [mend(workspace, analysis, placed, title, edit)] : [];
}

function mend(
  workspace: Workspace,
  analysis: Analysis,
  placed: PlacedDiagnostic,
  title: string,
  edit: WorkspaceEdit,
): CodeAction {
  return {
    title: title.charAt(0).toUpperCase() + title.slice(1),
    kind: CodeActionKind.QuickFix,
    diagnostics: [shown(workspace, analysis, placed)],
    edit,
  };
}

/** All mends of the text that cannot change its meaning, as one action; [] where there are none. */
export function fixAllActions(workspace: Workspace, analysis: Analysis): CodeAction[] {
  const found = placedDiagnostics(analysis).map(({ diagnostic }) => diagnostic);
  const fixes = safeFixes(found, analysis.name);
  const edit = workspaceEdit(
    workspace,
    analysis,
    fixes.flatMap(({ edits }) => edits),
  );
  if (fixes.length === 0 || !edit) return [];
  return [
    { title: 'Write all mends that cannot change the meaning', kind: CodeActionKind.SourceFixAll, edit },
  ];
}

/** The command that shows what a message means; its argument is the code. */
export const EXPLAIN = 'cutwright.explain';

/** For each problem of a stretch of the text, once a code: what it means. */
export function explainActions(
  workspace: Workspace,
  analysis: Analysis,
  { start, end }: { start: number; end: number },
): CodeAction[] {
  const said = new Set<string>();
  return placedDiagnostics(analysis).flatMap((one): CodeAction[] => {
    const { code } = one.diagnostic;
    if (one.at.start > end || one.at.end < start || said.has(code)) return [];
    said.add(code);
    const title = `Explain ${code}`;
    return [
      {
        title,
        kind: CodeActionKind.QuickFix,
        diagnostics: [shown(workspace, analysis, one)],
        command: { title, command: EXPLAIN, arguments: [code] },
      },
    ];
  });
}

function workspaceEdit(
  workspace: Workspace,
  analysis: Analysis,
  edits: readonly SourceEdit[],
): WorkspaceEdit | null {
  const changes: Record<string, TextEdit[]> = {};
  for (const edit of edits) {
    const place = placeIn(workspace, analysis, edit.span.file);
    if (!place) return null;
    changes[place.uri] ??= [];
    changes[place.uri]!.push(place.text.textEdit(edit));
  }
  return { changes };
}
