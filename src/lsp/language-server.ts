/** The language server: what an editor asks, passed on to what answers it. */

import {
  type Connection,
  type Diagnostic,
  DidChangeWatchedFilesNotification,
  type DocumentDiagnosticReport,
  FileChangeType,
  type InitializeParams,
  type InitializeResult,
  MessageType,
  type Position,
  type Range,
  ResponseError,
  ShowMessageNotification,
  TextDocumentSyncKind,
  type WorkspaceSymbol,
} from 'vscode-languageserver';
import { version } from '../../package.json';
import type { CutPrinter } from '../build/cut-printer.js';
import { MANIFEST } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { loadMessages } from '../language/message.js';
import type { TextRange } from '../language/source.js';
import { userLanguage } from '../language/user-language.js';
import { loadReference } from '../reference/reference-language.js';
import { lensesIn } from './code-lenses.js';
import { type AtPlace, type AtRow, type AtText, CutPageStore, placeOf, rowsAt } from './cut-pages.js';
import { linksIn } from './document-links.js';
import { completionsAt } from './editor-completion.js';
import { EpisodeCheck } from './episode-check.js';
import { formatEdits } from './format-edits.js';
import { codeText, hoverAt } from './hover.js';
import { lengthActions } from './length-actions.js';
import { actionsAt, diagnosticsOf, EXPLAIN, explainActions, fixAllActions } from './lsp-diagnostics.js';
import { mouthActions } from './mouth-actions.js';
import { moveSignatureAt } from './move-signature.js';
import { foldsOf, highlightsAt, symbolsOf } from './outline.js';
import { phraseActions } from './phrase-actions.js';
import { definitionAt, referencesAt, renameAt, renameableAt } from './references.js';
import { selectionRangeAt } from './selection-ranges.js';
import { LEGEND, semanticTokensIn } from './semantic-tokens.js';
import { hintsIn } from './timeline-frames.js';
import { type Analysis, type OpenDocument, pathOf, Workspace } from './workspace.js';
import { workspaceSymbols } from './workspace-symbols.js';

/**
 * Milliseconds after the last keystroke before the text is looked at: a quarter of what that takes beyond `QUICK`, within these. A
 * text that is looked at faster than a key is pressed again waits for nothing.
 */
const PAUSE = 5;
const LONGEST_PAUSE = 500;
const QUICK = 60;
/** The code of the protocol for a request that comes before `initialize`. */
const NOT_INITIALIZED = -32002;

/** What the client can take. */
interface Client {
  readonly pulls: boolean;
  readonly refreshes: boolean;
  readonly watches: boolean;
  readonly snippets: boolean;
  readonly refreshHints: boolean;
  /** Commands that it carries out itself, as it says in its own options: `{ "commands": ["cutwright.print"] }`. */
  readonly commands: ReadonlySet<string>;
}

interface AtDocument {
  readonly textDocument: { readonly uri: string };
  readonly position: Position;
}

/** Answers on a connection until it ends. */
export function serve(connection: Connection, host: Host): { readonly isShut: () => boolean } {
  const workspace = new Workspace(host);
  let client: Client | null = null;
  let shut = false;
  let cancelTimer = (): void => {};
  let pause = PAUSE;
  const sendOf = (uri: string, diagnostics: Diagnostic[]) => connection.sendDiagnostics({ uri, diagnostics });
  let printer: CutPrinter | null = null;
  const pageStore = new CutPageStore(workspace, async () => {
    // Fonts are read at the first page.
    printer ??= (await import('../build/cut-printer.js')).CutPrinter.open(host);
    return printer;
  });
  const episodeCheck = new EpisodeCheck(workspace, host, sendOf);
  /** Open texts whose diagnostics are to be sent. */
  const waiting = new Set<string>();
  /** Something else has changed than the text that is being typed. */
  let elsewhere = false;

  connection.onInitialize((params): InitializeResult | Promise<InitializeResult> => {
    client = clientOf(params);
    const folder = params.workspaceFolders?.[0]?.uri ?? params.rootUri;
    const root = folder ? pathOf(folder) : null;
    workspace.encoding = params.capabilities?.general?.positionEncodings?.includes('utf-16')
      ? 'utf-16'
      : params.capabilities?.general?.positionEncodings?.includes('utf-8')
        ? 'utf-8'
        : 'utf-16';
    if (root !== null) workspace.root(root);
    const answer = {
      serverInfo: { name: 'cutwright', version },
      capabilities: capabilities(workspace.encoding, client.commands),
    };
    workspace.language = userLanguage(host, params.locale);
    if (workspace.language === 'en') return answer;
    return Promise.all([loadMessages(workspace.language), loadReference(workspace.language)]).then(
      () => answer,
    );
  });

  connection.onInitialized(() => {
    if (!client?.watches) return;
    void connection.client
      .register(DidChangeWatchedFilesNotification.type, {
        watchers: [{ globPattern: '**/*.cut' }, { globPattern: `**/${MANIFEST}` }],
      })
      .catch(() => {});
  });

  // ---- texts

  connection.onDidOpenTextDocument(({ textDocument: { uri, version: number, text } }) => {
    // A client that speaks of manifests may speak of other YAML as well.
    if (/\.ya?ml$/.test(uri) && !uri.endsWith(`/${MANIFEST}`)) return;
    void episodeCheck.opened(uri, client?.pulls === true);
    later(workspace.put(uri, number, workspace.newText(text)), uri);
  });

  connection.onDidChangeTextDocument(({ textDocument: { uri, version: number }, contentChanges }) => {
    let text = workspace.open.get(uri)?.text;
    if (!text) return;
    for (const one of contentChanges) text = text.changed('range' in one ? one.range : undefined, one.text);
    later(workspace.put(uri, number, text), uri);
  });

  connection.onDidCloseTextDocument(({ textDocument: { uri } }) => {
    const others = workspace.close(uri);
    if (!others) return;
    waiting.delete(uri);
    pageStore.closed(uri);
    if (!client?.pulls) void connection.sendDiagnostics({ uri, diagnostics: [] });
    later(others);
    episodeCheck.wait();
  });

  connection.onDidSaveTextDocument(() => {
    // Where the client tells of no changes on the disk, this is the moment to look again.
    if (client?.watches) return;
    workspace.forget();
    later([...workspace.open.values()]);
  });

  connection.onDidChangeWatchedFiles(({ changes }) => {
    for (const { uri, type } of changes) {
      const path = pathOf(uri);
      if (path === null || workspace.open.has(uri)) continue;
      later(type === FileChangeType.Changed ? workspace.touched(path) : workspace.appeared(path));
    }
  });

  /** `own`: the text that the editor changes itself. */
  function later(texts: readonly OpenDocument[], own: string | null = null): void {
    for (const { uri } of texts) {
      waiting.add(uri);
      if (uri !== own) elsewhere = true;
    }
    episodeCheck.wait();
    if (waiting.size === 0) return;
    cancelTimer();
    cancelTimer = host.after(pause, () => void send());
  }

  async function send(): Promise<void> {
    const uris = [...waiting];
    waiting.clear();
    const refresh = elsewhere;
    elsewhere = false;
    if (client?.refreshHints && refresh) void connection.languages.inlayHint.refresh().catch(() => {});
    if (client?.pulls) {
      // The client asks for the text that it changes by itself; of others it must be told.
      if (client.refreshes && refresh) connection.languages.diagnostics.refresh();
      for (const uri of uris) {
        const analysis = await workspace.analysis(uri);
        if (analysis) episodeCheck.found(analysis);
      }
      return;
    }
    for (const uri of uris) {
      try {
        const begun = host.elapsedMs();
        const analysis = await workspace.analysis(uri);
        if (!analysis) continue;
        const diagnostics = diagnosticsOf(workspace, analysis);
        episodeCheck.found(analysis);
        pause = Math.max(PAUSE, Math.min((host.elapsedMs() - begun - QUICK) / 4, LONGEST_PAUSE));
        await connection.sendDiagnostics({ uri, version: analysis.open.version, diagnostics });
      } catch (fault) {
        connection.console.error(`${uri}: ${fault instanceof Error ? fault.message : String(fault)}`);
      }
    }
  }

  // ---- questions

  /** Asks about an open text as it stands now; `none` where it is not open. */
  async function ask<T>(uri: string, none: T, answer: (analysis: Analysis) => T): Promise<T> {
    if (!client) throw new ResponseError(NOT_INITIALIZED, 'Nothing can be asked before `initialize`.');
    const analysis = await workspace.analysis(uri);
    return analysis ? answer(analysis) : none;
  }

  function askAt<T>(
    { textDocument: { uri }, position }: AtDocument,
    none: T,
    answer: (analysis: Analysis, offset: number) => T,
  ): Promise<T> {
    return ask(uri, none, (analysis) => answer(analysis, analysis.text.offset(position)));
  }

  const within = ({ text }: Analysis, { start, end }: Range): TextRange => ({
    start: text.offset(start),
    end: text.offset(end),
  });

  connection.languages.diagnostics.on(({ textDocument: { uri } }) =>
    ask<DocumentDiagnosticReport>(uri, { kind: 'full', items: [] }, (analysis) => ({
      kind: 'full',
      items: diagnosticsOf(workspace, analysis),
    })),
  );
  connection.onCodeAction(({ textDocument: { uri }, range, context: { only } }) =>
    ask(uri, [], (analysis) =>
      [
        ...actionsAt(workspace, analysis, within(analysis, range)),
        ...lengthActions(workspace, analysis, within(analysis, range)),
        ...mouthActions(analysis, within(analysis, range)),
        ...phraseActions(workspace, analysis, within(analysis, range)),
        ...explainActions(workspace, analysis, within(analysis, range)),
        ...(only?.some((one) => /^source(\.|$)/.test(one)) ? fixAllActions(workspace, analysis) : []),
      ].filter(
        ({ kind }) => !only || only.some((one) => one === '' || kind === one || kind?.startsWith(`${one}.`)),
      ),
    ),
  );
  connection.onCompletion((at) =>
    askAt(at, null, (analysis, offset) =>
      completionsAt(workspace, analysis, offset, {
        snippets: client?.snippets === true,
        blank: at.context?.triggerCharacter === ' ',
      }),
    ),
  );
  connection.onHover((at) => askAt(at, null, (analysis, offset) => hoverAt(workspace, analysis, offset)));
  connection.onDefinition((at) =>
    askAt(at, null, (analysis, offset) => definitionAt(workspace, analysis, offset)),
  );
  connection.onReferences((at) =>
    askAt(at, null, (analysis, offset) =>
      referencesAt(workspace, analysis, offset, { definitions: at.context.includeDeclaration }),
    ),
  );
  connection.onPrepareRename((at) =>
    askAt(at, null, (analysis, offset) => renameableAt(workspace, analysis, offset)),
  );
  connection.onRenameRequest((at) =>
    askAt(at, null, (analysis, offset) => renameAt(workspace, analysis, offset, at.newName)),
  );
  connection.onDocumentHighlight((at) => askAt(at, null, highlightsAt));
  connection.onDocumentSymbol(({ textDocument: { uri } }) => ask(uri, null, symbolsOf));
  connection.onFoldingRanges(({ textDocument: { uri } }) => ask(uri, null, foldsOf));
  connection.onDocumentFormatting(({ textDocument: { uri } }) => ask(uri, null, (one) => formatEdits(one)));
  connection.onDocumentRangeFormatting(({ textDocument: { uri }, range }) =>
    ask(uri, null, (analysis) => formatEdits(analysis, within(analysis, range))),
  );
  connection.onDocumentLinks(({ textDocument: { uri } }) => ask(uri, [], (one) => linksIn(workspace, one)));
  connection.onSelectionRanges(({ textDocument: { uri }, positions }) =>
    ask(uri, null, (one) => positions.map((at) => selectionRangeAt(one, one.text.offset(at)))),
  );
  connection.onSignatureHelp((at) => askAt(at, null, moveSignatureAt));
  connection.onCodeLens(({ textDocument: { uri } }) =>
    ask(uri, [], (one) => lensesIn(one, client?.commands ?? new Set())),
  );
  connection.onWorkspaceSymbol(async ({ query }) => {
    // All texts that are open lie in one episode, as a rule; those of another are found by the name of theirs.
    const folders = new Set<string | null>();
    const found: WorkspaceSymbol[] = [];
    for (const uri of workspace.open.keys()) {
      const analysis = await workspace.analysis(uri);
      if (!analysis || folders.has(analysis.episode.folder)) continue;
      folders.add(analysis.episode.folder);
      found.push(...workspaceSymbols(workspace, analysis, query));
    }
    return found;
  });
  connection.onExecuteCommand(({ command, arguments: [code] = [] }) => {
    const text = command === EXPLAIN ? codeText(String(code), workspace.language) : null;
    // For an editor that shows no Markdown: it is read as it stands.
    if (text !== null && !client?.commands.has(EXPLAIN))
      void connection.sendNotification(ShowMessageNotification.type, {
        type: MessageType.Info,
        message: text,
      });
    return text;
  });
  connection.languages.inlayHint.on(({ textDocument: { uri }, range }) =>
    ask(uri, null, (analysis) => hintsIn(analysis, within(analysis, range))),
  );
  connection.languages.semanticTokens.on(({ textDocument: { uri } }) =>
    ask(uri, { data: [] }, (analysis) => semanticTokensIn(analysis)),
  );
  connection.languages.semanticTokens.onRange(({ textDocument: { uri }, range }) =>
    ask(uri, { data: [] }, (analysis) => semanticTokensIn(analysis, within(analysis, range))),
  );

  // ---- requests of our own

  connection.onRequest('cutwright/pages', async ({ textDocument: { uri } }: AtText) => {
    const analysis = await ask(uri, null, (one) => one);
    return analysis && pageStore.pagesOf(analysis);
  });
  connection.onRequest('cutwright/rowsAt', (at: AtPlace) => askAt(at, [], rowsAt));
  connection.onRequest('cutwright/placeOf', ({ textDocument: { uri }, frame, level }: AtRow) =>
    ask(uri, null, (one) => placeOf(workspace, one, { frame, level })),
  );
  /** The font that pages are set in, as base64. */
  connection.onRequest('cutwright/font', ({ weight }: { weight: 'regular' | 'bold' }) => {
    const font = host.font(weight === 'bold' ? 'bold' : 'regular');
    return font.ok ? Buffer.from(font.value).toString('base64') : null;
  });
  connection.onShutdown(() => {
    shut = true;
    cancelTimer();
    waiting.clear();
    episodeCheck.end();
  });
  connection.listen();
  return { isShut: () => shut };
}

function clientOf({
  capabilities: { textDocument, workspace } = {},
  initializationOptions,
}: InitializeParams): Client {
  const { commands } = (initializationOptions ?? {}) as { commands?: unknown };
  return {
    commands: new Set(Array.isArray(commands) ? commands.map(String) : []),
    pulls: textDocument?.diagnostic !== undefined,
    refreshes: workspace?.diagnostics?.refreshSupport === true,
    refreshHints: workspace?.inlayHint?.refreshSupport === true,
    watches: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    snippets: textDocument?.completion?.completionItem?.snippetSupport === true,
  };
}

function capabilities(
  positionEncoding: string,
  known: ReadonlySet<string>,
): InitializeResult['capabilities'] {
  return {
    positionEncoding,
    textDocumentSync: {
      openClose: true,
      change: TextDocumentSyncKind.Incremental,
      save: { includeText: false },
    },
    diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false },
    codeActionProvider: {
      codeActionKinds: ['quickfix', 'refactor.extract', 'refactor.rewrite', 'source.fixAll'],
    },
    codeLensProvider: {},
    documentLinkProvider: {},
    // An editor that shows it itself has a command of that name already.
    ...(known.has(EXPLAIN) ? {} : { executeCommandProvider: { commands: [EXPLAIN] } }),
    selectionRangeProvider: true,
    signatureHelpProvider: { triggerCharacters: [' ', '>'] },
    workspaceSymbolProvider: true,
    completionProvider: { triggerCharacters: ['{', '@', '/', '>', ',', '*', '"', ' '] },
    hoverProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    renameProvider: { prepareProvider: true },
    documentHighlightProvider: true,
    documentSymbolProvider: true,
    foldingRangeProvider: true,
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    inlayHintProvider: true,
    semanticTokensProvider: { legend: LEGEND, full: true, range: true },
  };
}
