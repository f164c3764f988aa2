/** Definition, references and rename, across all cuts that mean the same name. */

import { dirname, resolve } from 'node:path';
import {
  type Location,
  LSPErrorCodes,
  type Range,
  ResponseError,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver';
import { tokenize } from '../language/lexer.js';
import { parse } from '../language/parse.js';
import { withEdits } from '../language/statement-reader.js';
import { nameIndexOf, spanTouches } from './name-index.js';
import { type NamePlace, NameScope, type NameUnderCursor } from './name-scope.js';
import type { Analysis, Workspace } from './workspace.js';

export function definitionAt(workspace: Workspace, analysis: Analysis, offset: number): Location[] {
  const { open, compiled } = analysis;
  const used = compiled?.tree?.statements.find(
    (one) => one.kind === 'use' && spanTouches(one.path.span, offset),
  );
  if (used?.kind === 'use' && open.path !== null) {
    const path = resolve(dirname(open.path), used.path.text);
    const start = { line: 0, character: 0 };
    // What was not read lies outside, or is not there.
    const read = [...(compiled?.sources.keys() ?? [])].some((file) => workspace.placeOf(file) === path);
    return read ? [{ uri: workspace.uriOf(path), range: { start, end: start } }] : [];
  }
  const scope = new NameScope(workspace, analysis);
  const lender = scope.lenderAt(offset);
  if (lender) {
    const cut = lender.tree.statements.find(({ kind }) => kind === 'cut');
    const span = cut?.word ?? { file: lender.name, start: 0, end: 0 };
    return [location(workspace, { path: lender.path, text: lender.text, span })];
  }
  const pointed = scope.at(offset);
  if (!pointed) return [];
  const places = scope.places(pointed.symbol);
  const defining = places.filter(({ defines }) => defines);
  // A level may have timelines in other cuts, and is none of theirs: its own cut's come first, and then what all share.
  const own = defining.filter(({ path }) => path === open.path || path === pointed.symbol.home);
  const found = own.length > 0 ? own : defining.length > 0 ? defining : places.slice(0, 1);
  return found.map((place) => location(workspace, place));
}

export function referencesAt(
  workspace: Workspace,
  analysis: Analysis,
  offset: number,
  { definitions }: { definitions: boolean },
): Location[] {
  const scope = new NameScope(workspace, analysis);
  const pointed = scope.at(offset);
  if (!pointed) return [];
  return scope
    .places(pointed.symbol)
    .filter(({ defines }) => definitions || !defines)
    .map((place) => location(workspace, place));
}

function location(
  workspace: Workspace,
  { path, text, span }: Pick<NamePlace, 'path' | 'text' | 'span'>,
): Location {
  const uri = workspace.uriOf(path);
  const known = workspace.open.get(uri)?.text ?? workspace.newText(text);
  return { uri, range: known.range(span) };
}

function refuse(message: string): never {
  throw new ResponseError(LSPErrorCodes.RequestFailed, message);
}

export function renameableAt(
  workspace: Workspace,
  analysis: Analysis,
  offset: number,
): { range: Range; placeholder: string } {
  const { span, symbol } = nameToRename(new NameScope(workspace, analysis), offset);
  return { range: analysis.text.range(span), placeholder: symbol.name };
}

function nameToRename(scope: NameScope, offset: number): NameUnderCursor {
  const pointed = scope.at(offset);
  if (!pointed) refuse('Only levels, fields, phrases and marks can be renamed; there is none here.');
  const { kind, name } = pointed.symbol;
  if (kind === 'field' && name === 'full') refuse('The name `full` always means the standard field.');
  return pointed;
}

export function renameAt(
  workspace: Workspace,
  analysis: Analysis,
  offset: number,
  typed: string,
): WorkspaceEdit {
  const scope = new NameScope(workspace, analysis);
  const { symbol } = nameToRename(scope, offset);
  const { kind, name } = symbol;
  const wanted = validName(kind, typed);
  if (wanted === name) return { changes: {} };
  for (const { file, names } of scope.others(symbol)) {
    if (names.has(wanted)) refuse(`There is a ${kind} \`${wanted}\` already, in ${file}.`);
  }
  const files = new Map<string, NamePlace[]>();
  for (const place of scope.places(symbol)) files.set(place.path, [...(files.get(place.path) ?? []), place]);
  const changes: Record<string, TextEdit[]> = {};
  for (const [path, places] of files) {
    const { file, text } = places[0]!;
    unharmed(file, text, places, { kind, name, wanted });
    const uri = workspace.uriOf(path);
    const known = workspace.open.get(uri)?.text ?? workspace.newText(text);
    changes[uri] = places.map(({ span }) => known.textEdit({ span, text: wanted }));
  }
  return { changes };
}

/** The name in NFC, where it is one. */
function validName(kind: string, typed: string): string {
  const name = typed.trim().normalize('NFC');
  const tokens = tokenize(name, 0, name.length);
  const [token] = tokens;
  const isName = token && (token.type.name === 'Word' || token.type.name.startsWith("'"));
  if (tokens.length !== 1 || !isName || token.image !== name)
    refuse(`\`${typed}\` is no name: a name begins with a letter and holds letters, digits and \`_\`.`);
  if (kind === 'field' && name === 'full') refuse('The name `full` always means the standard field.');
  if (kind === 'phrase' && (name === 'x' || name === 'on'))
    refuse(`\`${name}\` means something else in a timeline; a phrase cannot be called so.`);
  return name;
}

/** Refuses where the edited text would not read as the same one with another name in it. */
function unharmed(
  file: string,
  text: string,
  places: readonly NamePlace[],
  { kind, name, wanted }: { kind: string; name: string; wanted: string },
): void {
  const before = parse(file, text);
  const hidden = before.tree.broken.find(({ span }) =>
    tokenize(text, span.start, span.end).some(({ image }) => image.normalize('NFC') === name),
  );
  if (hidden) {
    const line = text.slice(0, hidden.span.start).split(/\r\n|\n|\r/).length;
    refuse(`Line ${line} of ${file} names \`${name}\` too and cannot be read; mend it first.`);
  }
  const after = withEdits(
    text,
    places.map(({ span }) => ({ start: span.start, end: span.end, text: wanted })),
  );
  const renamed = parse(file, after);
  const said = (tree: typeof before.tree, typed: string): string[] => [
    ...nameIndexOf(tree, typed).names.map((one) => `${one.kind} ${one.name}`),
    ...nameIndexOf(tree, typed).reuses.map((one) => `reuse ${one.level}`),
  ];
  const own = new Set(places.map(({ span }) => span.start));
  const index = nameIndexOf(before.tree, text);
  const expected = [
    ...index.names.map(
      (one) => `${one.kind} ${own.has(one.span.start) && one.kind === kind ? wanted : one.name}`,
    ),
    ...index.reuses.map((one) => `reuse ${own.has(one.levelSpan.start) ? wanted : one.level}`),
  ];
  const same = JSON.stringify(said(renamed.tree, after)) === JSON.stringify(expected);
  if (!same || renamed.tree.broken.length !== before.tree.broken.length)
    refuse(`\`${wanted}\` would be read as something else in ${file}; choose another name.`);
}
