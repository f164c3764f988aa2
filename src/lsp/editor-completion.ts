/** What can stand at a place of a text, and how an editor is given it. */

import { dirname, join, relative } from 'node:path';
import {
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  InsertTextFormat,
  TextEdit,
} from 'vscode-languageserver';
import { isHouse } from '../episode/compile-cut.js';
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
import type { NextToken } from '../language/grammar-rule.js';
import { aboutCode } from '../language/message.js';
import { parse } from '../language/parse.js';
import { readStatement } from '../language/statement-reader.js';
import type { MoveWord } from '../language/statements/move-statements.js';
import { byWord, type StatementRule, timelineRule } from '../language/statements/statement-table.js';
import type { Token } from '../language/tokens.js';
import { TRADE_WORDS, tradeWordKey } from '../language/trade-words.js';
import type { UserLanguage } from '../language/user-language.js';
import { movePages } from '../reference/pages/move-pages.js';
import { pageIn } from '../reference/reference-language.js';
import { holdsWord, statementPages } from '../reference/statement-pages.js';
import { kindOf } from '../shot/camera/move-kinds.js';
import { keyword, namesOffered } from './name-completion.js';
import { type NameKind, spanTouches } from './name-index.js';
import { NameScope } from './name-scope.js';
import { drawingsOffered } from './timeline-completion.js';
import type { Analysis, Workspace } from './workspace.js';

/** The words that begin a statement, each with its example as a snippet where the editor can take one. */
export function statementWords(snippets: boolean, language: UserLanguage): CompletionItem[] {
  return [...byWord.values()].map((rule) => wordOffered(rule, snippets, language));
}

/** The words that the trade has for statements and that begin as typed; they put the word of the language in their place. */
export function tradeWordsOffered(
  begun: string,
  snippets: boolean,
  language: UserLanguage,
): CompletionItem[] {
  if (begun === '') return [];
  const key = tradeWordKey(begun);
  return TRADE_WORDS.filter(({ as, page }) => as === 'statement' && byWord.has(page)).flatMap(
    ({ typed, here, page }) =>
      typed
        .filter((one) => /^[\p{L}\p{N}\p{M}_]+$/u.test(one) && tradeWordKey(one).startsWith(key))
        .map((label) => ({
          ...wordOffered(byWord.get(page)!, snippets, language),
          ...(here === page ? {} : { insertText: here, insertTextFormat: InsertTextFormat.PlainText }),
          label,
          labelDetails: { description: here },
          sortText: `~${label}`,
        })),
  );
}

function wordOffered(
  { word, example }: StatementRule,
  snippets: boolean,
  language: UserLanguage,
): CompletionItem {
  return {
    label: word,
    kind: CompletionItemKind.Keyword,
    detail: example,
    ...(statementPages[word] ? { documentation: pageIn(word, language).title } : {}),
    ...(snippets
      ? { insertText: snippet(example), insertTextFormat: InsertTextFormat.Snippet }
      : { insertText: word }),
  };
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

// ---- completion: what may stand where the cursor is, asked of the grammar, filled with the names of the cut

export interface CompletionOptions {
  readonly snippets: boolean;
  /** Asked by the editor because a blank was typed, not by the writer: a question only where something has to follow. */
  readonly blank: boolean;
}

/** `cursor`: an offset in the text. */
export function completionsAt(
  workspace: Workspace,
  analysis: Analysis,
  cursor: number,
  { snippets, blank }: CompletionOptions,
): CompletionList {
  const { text, language } = analysis;
  const typed = text.text;
  const lineStart = text.line(text.lineAt(cursor)).start;
  const before = typed.slice(lineStart, cursor);
  if (/^[\p{L}\p{N}\p{M}_]*$/u.test(before)) {
    return list(analysis, lineStart, cursor, [
      ...statementWords(snippets, language),
      ...tradeWordsOffered(before, snippets, language),
      ...headings(analysis),
    ]);
  }
  const begun = statementAtCursor(typed, cursor);
  if (!begun) return NOTHING;
  if (begun.quoted !== null) return quoted(workspace, analysis, begun, cursor);
  const { entry, tokens, from } = begun;
  if (!entry) return NOTHING;
  const code = codeBegun(begun, typed);
  if (code !== null) return list(analysis, code, cursor, acceptable(analysis, typed.slice(code, from)));
  const drawn = entry === timelineRule || entry.word === 'phrase';
  // The next key that is pressed may be Enter, which would take what is offered.
  if (blank && (drawn || isWhole(begun, typed))) return NOTHING;
  if (drawn) return list(analysis, from, cursor, drawingsOffered(workspace, analysis, begun, cursor));
  const asked = { workspace, analysis, tokens, cursor };
  const options = optionsFor(tokens);
  const items = nextTokens(entry, tokens)
    .filter(({ kind }) => !options || !LEG_OPTIONS.has(kind.slice(1, -1)) || options.has(kind.slice(1, -1)))
    .flatMap((next) => offered(next, asked));
  return list(analysis, from, cursor, inOrderOfUse(items));
}

/** Whether the statement could end where the cursor stands. */
function isWhole({ tokens }: StatementAtCursor, typed: string): boolean {
  return 'statement' in readStatement([...tokens], { file: '', text: typed });
}

/** What may stand behind a leg of a move, the words that are used most first: how it goes, what goes along, how it is shot. */
const OPTIONS_BY_USE = 'ease curve steps fair curved carry about cw ccw loop sideways on graduated log'.split(
  ' ',
);

const LEG_OPTIONS = new Set(OPTIONS_BY_USE);

/** Directions stand behind the options: few pans have one. */
const IN_ORDER = [...OPTIONS_BY_USE, 'left', 'right', 'up', 'down'];

/** Those that say something of the move that the tokens begin; null for other statements. */
function optionsFor([first, second]: readonly Token[]): ReadonlySet<string> | null {
  const word = first?.image;
  if (word === undefined || !Object.hasOwn(movePages, word)) return null;
  const kind = word === 'truck' && second?.image === 'level' ? 'levelTruck' : (word as MoveWord);
  const { parameters, graduated } = kindOf({ kind });
  const { parts } = movePages[word as MoveWord];
  const spacing = ['ease', 'curve', 'steps', 'fair'].filter((one) =>
    parts.some(([written]) => holdsWord(written, one)),
  );
  const said = Object.values(parameters).flatMap(({ option }) =>
    option === 'sense' ? ['cw', 'ccw'] : option === null ? [] : [option],
  );
  return new Set([...spacing, 'on', ...(graduated ? ['graduated'] : []), ...said]);
}

function inOrderOfUse(items: readonly CompletionItem[]): CompletionItem[] {
  return items.map((item) => {
    const place = item.kind === CompletionItemKind.Keyword ? IN_ORDER.indexOf(item.label) : -1;
    return place < 0 ? item : { ...item, sortText: `~${String(place).padStart(2, '0')}` };
  });
}

/** Where the code of an `accept` begins that the cursor stands in; null where it stands in none. */
function codeBegun({ entry, tokens, from }: StatementAtCursor, typed: string): number | null {
  if (entry?.word !== 'accept') return null;
  const [first, second] = tokens;
  const start = second ? second.start : from;
  return first && start >= first.end && !/\s/.test(typed.slice(start, from)) ? start : null;
}

/** Codes that begin so: first those that the cut gives, then the others. */
function acceptable({ compiled, language }: Analysis, begun: string): CompletionItem[] {
  const given = new Set(compiled?.diagnostics.map(({ code }) => code));
  return acceptableCodes()
    .filter((code) => code.startsWith(begun))
    .map((code) => ({
      label: code,
      kind: CompletionItemKind.EnumMember,
      detail: aboutCode(code, language).title,
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
const OF_FIELDS = new Set(['panStop', 'panGoal', 'truckStop', 'fixStatement']);
const OF_LEVELS = new Set(['list', 'names', 'celsStatement', 'levelStatement', 'mouthStatement']);

interface Asked {
  readonly workspace: Workspace;
  readonly analysis: Analysis;
  readonly tokens: readonly Token[];
  readonly cursor: number;
}

function offered(
  { kind, rules }: NextToken,
  { workspace, analysis, tokens, cursor }: Asked,
): CompletionItem[] {
  if (kind.startsWith("'")) return [keyword(kind.slice(1, -1))];
  const own = rules.at(-1)!;
  const parent = rules.at(-2) ?? '';
  if (own === 'label') return parent === 'cutLevel' && kind === 'Key' ? cuts(workspace, analysis) : [];
  if (kind !== 'Name') return [];
  const names = (of: NameKind) => namesOffered(workspace, analysis, of, cursor);
  if (own === 'mark') return names('mark');
  if (parent === 'cutLevel') return lent(workspace, analysis, tokens);
  if (parent === 'numberingStatement') return ['sequence', 'frame'].map(keyword);
  if (parent === 'mouthDrawing') return VOWELS.map(keyword);
  if (OF_FIELDS.has(parent)) return names('field');
  return OF_LEVELS.has(parent) ? names('level') : [];
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
function lent(workspace: Workspace, analysis: Analysis, tokens: readonly Token[]): CompletionItem[] {
  const cut = tokens.at(-2)?.image;
  return cut === undefined
    ? []
    : new NameScope(workspace, analysis)
        .levelsOf(cut)
        .map(({ name, title }) => ({ label: name, kind: CompletionItemKind.Class, detail: title }));
}

/** In quotes: files behind `use` and `track`, speakers behind `voice` and `mouth`, behind `artist` those of the manifest. */
function quoted(
  workspace: Workspace,
  analysis: Analysis,
  { entry, quoted: open, tokens }: StatementAtCursor,
  cursor: number,
): CompletionList {
  const from = open! + 1;
  if (tokens.length !== (entry?.word === 'mouth' ? 2 : 1)) return NOTHING;
  const texts = (labels: readonly string[]): CompletionList =>
    list(
      analysis,
      from,
      cursor,
      labels.map((label) => ({ label, kind: CompletionItemKind.Text })),
    );
  switch (entry?.word) {
    case 'use':
      return list(analysis, from, cursor, filesOffered(workspace, analysis, cursor));
    case 'track':
      return list(analysis, from, cursor, recordingsOffered(workspace, analysis));
    case 'artist':
      return texts(analysis.episode.artists.map(({ name }) => name.text));
    case 'voice':
    case 'mouth':
      return texts(speakersBeside(analysis, open!));
    default:
      return NOTHING;
  }
}

/** Who speaks in the cut, without what is being typed at an offset. */
function speakersBeside({ compiled }: Analysis, offset: number): string[] {
  return (compiled?.tree?.statements ?? []).flatMap((one) =>
    one.kind === 'voice' && one.speaker.span.start !== offset ? [one.speaker.text] : [],
  );
}

/** Files that a cut may `use`: shared ones of its folder and of its episode, as it would write them. */
export function filesOffered(
  workspace: Workspace,
  { open, episode, compiled }: Analysis,
  cursor: number,
): CompletionItem[] {
  if (open.path === null) return [];
  const folder = dirname(open.path);
  const { world } = workspace;
  const used = new Set(
    (compiled?.tree?.statements ?? []).flatMap((one) =>
      one.kind === 'use' && !spanTouches(one.span, cursor) ? [join(folder, one.path.text)] : [],
    ),
  );
  const own = filesOf(world, folder, '*.cut', true).map((name) => join(folder, name));
  const all =
    episode.folder === null
      ? []
      : filesOf(world, episode.folder, '**/*.cut', true).map((name) => join(episode.folder!, name));
  return [...new Set([...own, ...all])]
    .filter((path) => path !== open.path && !used.has(path) && isShared(path))
    .map((path) => ({ label: relative(folder, path), kind: CompletionItemKind.File }));

  function isShared(path: string): boolean {
    const { ok, text } = readText(world, path, path);
    return ok && plainNumber(text) === null && isHouse(parse(path, text).tree);
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
