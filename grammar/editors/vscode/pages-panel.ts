/** The pages of a cut beside its text, as the editor has it, saved or not; jumps both ways. */

import { randomBytes } from 'node:crypto';
import { Range, type TextDocument, Uri, ViewColumn, type WebviewPanel, window, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import type { AtPlace, AtRow, AtText, CutPages, ShownRows } from '../../../src/lsp/cut-pages.js';

/** Milliseconds after a keystroke before the pages are asked for again; and that the cursor rests before its rows are lit. */
const TYPING = 200;
const RESTING = 60;

/** One tab, which shows the cut that is edited. */
export class PagesPanel {
  private panel: WebviewPanel | null = null;
  private document: TextDocument | null = null;
  private timers = new Map<string, NodeJS.Timeout>();

  /** `client`: null while the server does not run. */
  constructor(
    private readonly extension: Uri,
    private readonly client: () => LanguageClient | null,
  ) {}

  show(document: TextDocument): void {
    this.document = document;
    if (this.panel) this.panel.reveal(undefined, true);
    else this.open();
    void this.draw();
  }

  /** The text was changed, or another cut is edited now. */
  changed(document: TextDocument, active: boolean): void {
    if (!this.panel || (document !== this.document && !active)) return;
    this.document = document;
    this.later('draw', TYPING, () => void this.draw());
  }

  follow(document: TextDocument, line: number, character: number): void {
    if (!this.panel || document !== this.document) return;
    this.later('follow', RESTING, async () => {
      const asked: AtPlace = { ...at(document), position: { line, character } };
      const lit = await this.ask<ShownRows[]>('cutwright/rowsAt', asked);
      if (lit) void this.panel?.webview.postMessage({ lit });
    });
  }

  end(): void {
    for (const timer of this.timers.values()) clearTimeout(timer);
    this.panel?.dispose();
  }

  private open(): void {
    const panel = window.createWebviewPanel(
      'cutwright.pages',
      'Pages',
      { viewColumn: ViewColumn.Beside, preserveFocus: true },
      { enableScripts: true, localResourceRoots: [this.extension], retainContextWhenHidden: true },
    );
    this.panel = panel;
    panel.onDidDispose(() => {
      this.panel = null;
    });
    panel.webview.onDidReceiveMessage((said: { ready?: true } & Partial<AtRow>) => {
      if (said.ready) void this.begin();
      else void this.jump(said.frame!, said.level ?? null);
    });
    const script = panel.webview.asWebviewUri(Uri.joinPath(this.extension, 'pages-view.js'));
    panel.webview.html = pageHtml(script.toString(), panel.webview.cspSource);
  }

  private async begin(): Promise<void> {
    await this.draw();
    const [regular, bold] = await Promise.all([
      this.ask<string>('cutwright/font', { weight: 'regular' }),
      this.ask<string>('cutwright/font', { weight: 'bold' }),
    ]);
    void this.panel?.webview.postMessage({ fonts: { regular, bold } });
  }

  private async draw(): Promise<void> {
    const { panel, document } = this;
    if (!panel || !document) return;
    const cut = await this.ask<CutPages>('cutwright/pages', at(document));
    if (!cut || document !== this.document) return;
    panel.title = cut.title ? `Pages of ${cut.title}` : 'Pages';
    void panel.webview.postMessage({ cut });
  }

  private async jump(frame: number, level: string | null): Promise<void> {
    const { document } = this;
    if (!document) return;
    const asked: AtRow = { ...at(document), frame, level };
    const place = await this.ask<{
      uri: string;
      range: { start: { line: number; character: number }; end: { line: number; character: number } };
    }>('cutwright/placeOf', asked);
    if (!place) return;
    const { start, end } = place.range;
    const column = window.visibleTextEditors.find((one) => one.document === document)?.viewColumn;
    await window.showTextDocument(await workspace.openTextDocument(Uri.parse(place.uri)), {
      selection: new Range(start.line, start.character, end.line, end.character),
      ...(column ? { viewColumn: column } : {}),
    });
  }

  /** Null where the server does not answer. */
  private async ask<T>(request: string, asked: unknown): Promise<T | null> {
    return (
      (await this.client()
        ?.sendRequest<T | null>(request, asked)
        .catch(() => null)) ?? null
    );
  }

  private later(what: string, ms: number, act: () => void): void {
    clearTimeout(this.timers.get(what));
    this.timers.set(what, setTimeout(act, ms));
  }
}

const at = (document: TextDocument): AtText => ({ textDocument: { uri: document.uri.toString() } });

function pageHtml(script: string, source: string): string {
  const nonce = randomBytes(16).toString('base64');
  return `<!doctype html><html><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src ${source}; style-src 'nonce-${nonce}'">
<style nonce="${nonce}">
body { margin: 0; padding: 0 12px; }
#word:not(:empty) { position: sticky; top: 0; padding: 4px 8px; color: var(--vscode-inputValidation-warningForeground, inherit); background: var(--vscode-inputValidation-warningBackground, #fd8); }
figure { margin: 12px 0; background: #fff; box-shadow: 0 1px 6px rgb(0 0 0 / 0.4); }
svg { display: block; width: 100%; height: 100%; }
svg g { font-kerning: none; font-variant-ligatures: none; font-synthesis: none; white-space: pre; }
.row { pointer-events: all; cursor: pointer; }
.lit { pointer-events: none; }
.stale figure { filter: grayscale(1); opacity: 0.7; }
</style></head><body><div id="word" role="status"></div><main id="pages"></main><script src="${script}"></script></body></html>`;
}
