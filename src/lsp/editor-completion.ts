/** What can stand at a place of a text, and how an editor is given it. */

import { dirname, join, relative } from 'node:path';
import type { IToken } from 'chevrotain';
import {
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  InsertTextFormat,
  TextEdit,
} from 'vscode-languageserver';
import { filesOf } from '../episode/file-patterns.js';
import { readText } from '../episode/read-text.js';
import { plainNumber } from '../episode/used-files.js';
import { acceptableCodes } from '../language/catalogue/index.js';
import {
  exampleParts,
  nextTokens,
  type StatementAtCursor,
  statementAtCursor,
} from '../language/grammar-queries.js';
import { aboutCode } from '../language/message.js';
import { byWord, timelineRule } from '../language/statements/statement-table.js';
import type { Item } from '../language/tree.js';
import { statementPages } from '../reference/statement-pages.js';
import { inFrames } from '../shot/time-notation.js';
import type { NameKind } from './name-index.js';
import { NameScope } from './name-scope.js';
import { solvedTimeline } from './timeline-frames.js';
import type { Analysis, Workspace } from './workspace.js';

const CHARTS = ['even', 'early', 'late', 'both'];

const KINDS: Readonly<Record<NameKind, CompletionItemKind>> = {
  level: CompletionItemKind.Class,
  field: CompletionItemKind.Variable,
  phrase: CompletionItemKind.Function,
  mark: CompletionItemKind.Event,
};

/** Every name of a kind that the cut knows, with what defines it as its detail. */
export function namesOffered({ compiled, index, text }: Analysis, kind: NameKind): CompletionItem[] {
  const details = new Map<string, string>();
  if (kind === 'field') details.set('full', 'the standard field');
  for (const one of index.names) {
    if (one.kind !== kind) continue;
    const detail = one.defines ? line(text.text.slice(one.statement.span.start, one.statement.span.end)) : '';
    details.set(one.name, details.get(one.name) || detail);
  }
  for (const draft of compiled?.shot && kind === 'level' ? compiled.shot.levels : []) {
    if (!details.has(draft.name)) details.set(draft.name, draft.title);
  }
  return [...details].map(([label, detail]) => ({ label, kind: KINDS[kind], ...(detail ? { detail } : {}) }));
}

/** A statement in one line, cut where it is long. */
export function line(typed: string): string {
  const plain = typed.replace(/\s+/g, ' ').trim();
  return plain.length > 60 ? `${plain.slice(0, 59)}…` : plain;
}

function keyword(word: string): CompletionItem {
  return { label: word, kind: CompletionItemKind.Keyword };
}

/** The words that begin a statement, each with its example as a snippet where the editor can take one. */
export function statementWords(snippets: boolean): CompletionItem[] {
  return [...byWord.values()].map(({ word, example }) => ({
    label: word,
    kind: CompletionItemKind.Keyword,
    detail: example,
    ...(statementPages[word] ? { documentation: statementPages[word].title } : {}),
    ...(snippets
      ? { insertText: snippet(example), insertTextFormat: InsertTextFormat.Snippet }
      : { insertText: word }),
  }));
}

function snippet(example: string): string {
  let stop = 0;
  return exampleParts(example)
    .map(({ text, fixed }) => {
      const plain = text.replace(/[\\$}]/g, '\\$&');
      return fixed ? plain : `\${${++stop}:${plain}}`;
    })
    .join('');
}

/** Levels that have no timeline yet, each as the beginning of one. */
export function headings(analysis: Analysis): CompletionItem[] {
  const { compiled } = analysis;
  return (compiled?.shot?.levels ?? [])
    .filter(({ timeline, name }) => timeline === null && name !== 'BG')
    .map(({ name }) => ({
      label: name,
      kind: CompletionItemKind.Class,
      detail: 'the timeline of this level',
      insertText: `${name}: `,
    }));
}

/** What an item shows, in a word. */
export function itemLabel(item: Item): string {
  if (item.kind === 'key') return item.name;
  if (item.kind === 'reference')
    return `${item.key}${item.to ? `>${item.to}` : ''}.${item.index}${item.letter}`;
  if (item.kind === 'between') return 'the in-between';
  if (item.kind === 'empty') return 'the empty level';
  return item.kind === 'phrase' ? item.name : 'the group';
}

// ---- completion: what may stand where the cursor is, asked of the grammar, filled with the names of the cut

export interface CompletionOptions {
  readonly snippets: boolean;
  /** Asked by the editor because a blank was typed, not by the writer: in a timeline that is no question. */
  readonly blank: boolean;
}

/** `cursor`: an offset in the text. */
export function completionsAt(
  workspace: Workspace,
  analysis: Analysis,
  cursor: number,
  { snippets, blank }: CompletionOptions,
): CompletionList {
  const { text } = analysis;
  const typed = text.text;
  const lineStart = text.line(text.lineAt(cursor)).start;
  const before = typed.slice(lineStart, cursor);
  if (/^[\p{L}\p{N}\p{M}_]*$/u.test(before)) {
    return list(analysis, lineStart, cursor, [...statementWords(snippets), ...headings(analysis)]);
  }
  const begun = statementAtCursor(typed, cursor);
  if (!begun) return NOTHING;
  if (begun.quoted !== null) return quoted(workspace, analysis, begun, cursor);
  const { entry, tokens, from } = begun;
  if (!entry) return NOTHING;
  const code = codeBegun(begun, typed);
  if (code !== null) return list(analysis, code, cursor, acceptable(analysis, typed.slice(code, from)));
  const drawn = entry === timelineRule || entry.word === 'phrase';
  const items =
    drawn && blank
      ? toTheEnd(analysis, begun, cursor)
      : drawn
        ? drawings(analysis, begun, cursor)
        : nextTokens(entry, tokens).flatMap((next) => offered(workspace, analysis, next, tokens));
  return list(analysis, from, cursor, items);
}

/** Where the code of an `accept` begins that the cursor stands in; null where it stands in none. */
function codeBegun({ entry, tokens, from }: StatementAtCursor, typed: string): number | null {
  if (entry?.word !== 'accept') return null;
  const [first, second] = tokens;
  const start = second ? second.startOffset : from;
  return first && start > first.endOffset! && !/\s/.test(typed.slice(start, from)) ? start : null;
}

/** Codes that begin so: first those that the cut gives, then the others. */
function acceptable({ compiled }: Analysis, begun: string): CompletionItem[] {
  const given = new Set(compiled?.diagnostics.map(({ code }) => code));
  return acceptableCodes()
    .filter((code) => code.startsWith(begun))
    .map((code) => ({
      label: code,
      kind: CompletionItemKind.EnumMember,
      detail: aboutCode(code, 'en').title,
      sortText: `${given.has(code) ? 0 : 1}${code}`,
    }));
}

const NOTHING: CompletionList = { isIncomplete: false, items: [] };

/** Each label once, put in place of what was typed from `from` on. */
function list(
  { text }: Analysis,
  from: number,
  cursor: number,
  items: readonly CompletionItem[],
): CompletionList {
  const range = text.range({ start: from, end: cursor });
  const once = new Map<string, CompletionItem>();
  for (const item of items) if (!once.has(item.label)) once.set(item.label, item);
  return {
    isIncomplete: false,
    items: [...once.values()].map(({ insertText, ...item }) =>
      item.textEdit ? item : { ...item, textEdit: TextEdit.replace(range, insertText ?? item.label) },
    ),
  };
}

const VOWELS = ['a', 'i', 'u', 'e', 'o'];

/** Rules of the grammar in which a name is that of a field. */
const OF_FIELDS = new Set(['panStop', 'truckStop', 'fixStatement']);
const OF_LEVELS = new Set(['list', 'names', 'celsStatement', 'levelStatement', 'mouthStatement']);

function offered(
  workspace: Workspace,
  analysis: Analysis,
  { kind, rules }: { kind: string; rules: readonly string[] },
  tokens: readonly IToken[],
): CompletionItem[] {
  if (kind.startsWith("'")) return [keyword(kind.slice(1, -1))];
  const own = rules.at(-1)!;
  const parent = rules.at(-2) ?? '';
  if (own === 'label') return parent === 'cutLevel' && kind === 'Key' ? cuts(workspace, analysis) : [];
  if (kind !== 'Name') return [];
  if (own === 'mark') return namesOffered(analysis, 'mark');
  if (parent === 'cutLevel') return lent(workspace, analysis, tokens);
  if (parent === 'numberingStatement') return ['sequence', 'frame'].map(keyword);
  if (parent === 'mouthDrawing') return VOWELS.map(keyword);
  if (OF_FIELDS.has(parent)) return namesOffered(analysis, 'field');
  return OF_LEVELS.has(parent) ? namesOffered(analysis, 'level') : [];
}

/** `8/` for each other cut of the episode. */
function cuts(workspace: Workspace, analysis: Analysis): CompletionItem[] {
  return new NameScope(workspace, analysis)
    .cuts()
    .filter(({ number, path }) => number !== '' && path !== analysis.open.path)
    .map(({ number, title }, place) => ({
      label: number,
      kind: CompletionItemKind.File,
      detail: title,
      insertText: `${number}/`,
      sortText: String(place).padStart(5, '0'),
    }));
}

/** The levels of the cut that stands before the slash. */
function lent(workspace: Workspace, analysis: Analysis, tokens: readonly IToken[]): CompletionItem[] {
  const cut = tokens.at(-2)?.image;
  return cut === undefined
    ? []
    : new NameScope(workspace, analysis)
        .levelsOf(cut)
        .map(({ name, title }) => ({ label: name, kind: CompletionItemKind.Class, detail: title }));
}

/** In a timeline or a phrase: phrases and words, marks behind `@`, charts inside `{`, and `..` where frames are missing. */
function drawings(analysis: Analysis, begun: StatementAtCursor, cursor: number): CompletionItem[] {
  const { tokens, entry } = begun;
  const kinds = tokens.map(({ tokenType }) => tokenType.name);
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
  if (last === 'At') return namesOffered(analysis, 'mark');
  if ((last === 'Colon' && kinds.length - 1 > items) || last === 'Star')
    return toTheEnd(analysis, begun, cursor);
  return [
    ...toTheEnd(analysis, begun, cursor),
    ...namesOffered(analysis, 'phrase'),
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

/** In quotes: files behind `use` and `track`, speakers behind `voice` and `mouth`. */
function quoted(
  workspace: Workspace,
  analysis: Analysis,
  { entry, quoted: open, tokens }: StatementAtCursor,
  cursor: number,
): CompletionList {
  const from = open! + 1;
  if (tokens.length !== (entry?.word === 'mouth' ? 2 : 1)) return NOTHING;
  if (entry?.word === 'use') return list(analysis, from, cursor, filesOffered(workspace, analysis));
  if (entry?.word === 'track') return list(analysis, from, cursor, recordingsOffered(workspace, analysis));
  if (entry?.word !== 'voice' && entry?.word !== 'mouth') return NOTHING;
  const speakers = (analysis.compiled?.tree?.statements ?? []).flatMap((one) =>
    one.kind === 'voice' ? [one.speaker.text] : [],
  );
  return list(
    analysis,
    from,
    cursor,
    [...new Set(speakers)].map((label) => ({ label, kind: CompletionItemKind.Text })),
  );
}

/** Files that a cut may `use`: shared ones of its folder and of its episode, as it would write them. */
export function filesOffered(workspace: Workspace, { open, episode }: Analysis): CompletionItem[] {
  if (open.path === null) return [];
  const folder = dirname(open.path);
  const { world } = workspace;
  const own = filesOf(world, folder, '*.cut', true).map((name) => join(folder, name));
  const all =
    episode.folder === null
      ? []
      : filesOf(world, episode.folder, '**/*.cut', true).map((name) => join(episode.folder!, name));
  return [...new Set([...own, ...all])]
    .filter((path) => path !== open.path && isShared(path))
    .map((path) => ({ label: relative(folder, path), kind: CompletionItemKind.File }));

  function isShared(path: string): boolean {
    const { ok, text } = readText(world, path, path);
    return ok && plainNumber(text) === null;
  }
}

/** Recordings of the cut's folder and of its episode. */
function recordingsOffered({ world }: Workspace, { open, episode }: Analysis): CompletionItem[] {
  if (open.path === null) return [];
  const folder = dirname(open.path);
  const found = [folder, ...(episode.folder === null ? [] : [episode.folder])].flatMap((home) =>
    ['**/*.wav', '**/*.WAV'].flatMap((pattern) =>
      filesOf(world, home, pattern, true).map((name) => relative(folder, join(home, name))),
    ),
  );
  return [...new Set(found)].map((label) => ({
    label: label.replaceAll('\\', '/'),
    kind: CompletionItemKind.File,
  }));
}
