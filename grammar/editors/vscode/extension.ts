/** What VS Code runs: it starts `cutwright lsp`, and offers to print a cut, to show its pages, and to explain a message. */

import { basename } from 'node:path';
import {
  commands,
  type ExtensionContext,
  env,
  languages,
  type TextDocument,
  Uri,
  window,
  workspace,
} from 'vscode';
import { LanguageClient } from 'vscode-languageclient/node';
import { PagesPanel } from './pages-panel.js';
import { callOf, runProgram } from './program.js';
import { Shows } from './shows.js';

let client: LanguageClient | null = null;
let shows: Shows | null = null;
let panel: PagesPanel | null = null;

/** Commands that the server offers where they help; they are carried out here. */
const COMMANDS = ['cutwright.print', 'cutwright.preview', 'cutwright.explain'];
const EXPLANATIONS = 'cutwright-explain';

export async function activate(context: ExtensionContext): Promise<void> {
  const output = window.createOutputChannel('Cutwright');
  const showing = new Shows(words);
  shows = showing;
  const pages = new PagesPanel(context.extensionUri, () => client);
  panel = pages;
  context.subscriptions.push(
    output,
    commands.registerCommand('cutwright.print', () => print(output.append.bind(output), () => output.show())),
    commands.registerCommand('cutwright.show', () => show(showing)),
    commands.registerCommand('cutwright.preview', () => preview(pages)),
    commands.registerCommand('cutwright.explain', explain),
    workspace.registerTextDocumentContentProvider(EXPLANATIONS, {
      provideTextDocumentContent: ({ path }) => explanation(path.replace(/^\/|\.md$/g, '')),
    }),
    window.onDidChangeTextEditorSelection(({ textEditor: { document }, selections: [first] }) => {
      if (!first) return;
      const { line, character } = first.active;
      showing.follow(document.uri.fsPath, line + 1);
      pages.follow(document, line, character);
    }),
    window.onDidChangeActiveTextEditor((editor) => {
      if (editor?.document.languageId === 'cut') pages.changed(editor.document, true);
    }),
    workspace.onDidChangeTextDocument(({ document }) => pages.changed(document, false)),
    workspace.onDidChangeConfiguration(async (change) => {
      if (!change.affectsConfiguration('cutwright.command')) return;
      await stop();
      await start();
    }),
  );
  await start();
}

export async function deactivate(): Promise<void> {
  shows?.end();
  shows = null;
  panel?.end();
  panel = null;
  await stop();
}

const words = (): readonly string[] => workspace.getConfiguration('cutwright').get<string[]>('command') ?? [];

async function start(): Promise<void> {
  const { status, errors } = await runProgram(words(), ['--version']);
  if (status !== 0) return complain(errors.trim() || `\`${words().join(' ')}\` is not cutwright.`);
  const { command, args, shell } = callOf(words(), ['lsp']);
  client = new LanguageClient(
    'cutwright',
    'Cutwright',
    { command, args, options: { shell } },
    {
      documentSelector: [
        { language: 'cut', scheme: 'file' },
        { language: 'cut', scheme: 'untitled' },
        { pattern: '**/episode.yaml', scheme: 'file' },
      ],
      initializationOptions: { commands: COMMANDS },
    },
  );
  // Where it cannot start, the client says so itself.
  await client.start().catch(() => {});
}

async function stop(): Promise<void> {
  const old = client;
  client = null;
  // One that has died already cannot be stopped.
  await old?.stop().catch(() => {});
}

async function complain(message: string): Promise<void> {
  const settings = 'Open settings';
  const chosen = await window.showErrorMessage(message, settings);
  if (chosen === settings)
    await commands.executeCommand('workbench.action.openSettings', 'cutwright.command');
}

/** The cut in the active editor, saved; null where there is none. */
async function activeCut(): Promise<TextDocument | null> {
  const document = window.activeTextEditor?.document;
  if (document?.languageId !== 'cut' || document.uri.scheme !== 'file') {
    await window.showInformationMessage('Open a cut first.');
    return null;
  }
  return !document.isDirty || (await document.save()) ? document : null;
}

async function print(note: (text: string) => void, open: () => void): Promise<void> {
  const cut = await activeCut();
  if (!cut) return;
  const file = cut.uri.fsPath;
  const pdf = `${file.replace(/\.cut$/i, '')}.pdf`;
  const { status, errors } = await runProgram(words(), ['build', file, '--output', pdf]);
  note(errors);
  if (status === null) return complain(errors);
  if (status !== 0) {
    const chosen = await window.showErrorMessage(
      `${basename(file)} has errors and was not printed.`,
      'Show them',
    );
    if (chosen) open();
    return;
  }
  const chosen = await window.showInformationMessage(`${basename(pdf)} is printed.`, 'Open it');
  if (chosen) await env.openExternal(Uri.file(pdf));
}

async function show(showing: Shows): Promise<void> {
  const cut = await activeCut();
  if (!cut) return;
  try {
    await env.openExternal(Uri.parse(await showing.address(cut.uri.fsPath)));
  } catch (fault) {
    await complain(fault instanceof Error ? fault.message : String(fault));
  }
}

/** The pages of the cut in the active editor, in a tab beside it. */
async function preview(pages: PagesPanel): Promise<void> {
  const document = window.activeTextEditor?.document;
  if (document?.languageId === 'cut') pages.show(document);
  else await window.showInformationMessage('Open a cut first.');
}

/** What a message means, beside the text; without a code, that of the problem at the cursor. */
async function explain(code?: unknown): Promise<void> {
  const wanted = typeof code === 'string' ? code : codeAtCursor();
  if (!wanted) {
    await window.showInformationMessage('There is no problem of cutwright at the cursor.');
    return;
  }
  const uri = Uri.parse(`${EXPLANATIONS}:/${wanted}.md`);
  await commands.executeCommand('markdown.showPreviewToSide', uri);
}

function codeAtCursor(): string | null {
  const editor = window.activeTextEditor;
  if (!editor) return null;
  const found = languages
    .getDiagnostics(editor.document.uri)
    .find(({ source, range }) => source === 'cutwright' && range.contains(editor.selection.active));
  return found ? String(found.code) : null;
}

async function explanation(code: string): Promise<string> {
  const { output, errors } = await runProgram(words(), ['explain', code]);
  return output ? `\`\`\`\`text\n${output}\`\`\`\`\n` : errors;
}
