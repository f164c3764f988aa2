/** The problems of the texts of an episode that are not open: looked at one after another while nobody types. */

import { join } from 'node:path';
import type { Diagnostic } from 'vscode-languageserver';
import { MANIFEST } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { ownDiagnosticsOf } from './lsp-diagnostics.js';
import { NameScope } from './name-scope.js';
import type { Analysis, Workspace } from './workspace.js';

/** Milliseconds without a keystroke before the next text is looked at. */
const QUIET = 400;
/** Of a longer episode only the open texts have problems: one look at the others would keep the machine busy for minutes. */
const MOST_TEXTS = 300;

export class EpisodeCheck {
  private cancelTimer = (): void => {};
  /** Folders of episodes whose texts have been listed. */
  private readonly listed = new Set<string>();
  /** Uris that problems were sent of. */
  private readonly told = new Set<string>();
  private ended = false;

  constructor(
    private readonly workspace: Workspace,
    private readonly host: Pick<Host, 'after'>,
    private readonly send: (uri: string, diagnostics: Diagnostic[]) => Promise<void>,
  ) {}

  /** A text of an episode has been looked at: from now on its others are, too. */
  found(analysis: Analysis): void {
    const { folder } = analysis.episode;
    if (folder === null || this.listed.has(folder)) return;
    this.listed.add(folder);
    const paths = new NameScope(this.workspace, analysis).texts();
    if (paths.length > MOST_TEXTS) return;
    for (const path of [join(folder, MANIFEST), ...paths])
      if (!this.isOpen(path)) this.workspace.unchecked.add(path);
    this.wait();
  }

  /** Something was typed, or has changed on the disk. */
  wait(): void {
    this.cancelTimer();
    if (this.listed.size > 0 && !this.ended)
      this.cancelTimer = this.host.after(QUIET, () => void this.next());
  }

  /** The text has been opened: what is sent of it from now on is its own. `pulls`: the client asks for that. */
  async opened(uri: string, pulls: boolean): Promise<void> {
    if (this.told.delete(uri) && pulls) await this.send(uri, []);
  }

  end(): void {
    this.ended = true;
    this.cancelTimer();
  }

  private async next(): Promise<void> {
    const [path] = this.workspace.unchecked;
    if (path === undefined || this.ended) return;
    const analysis = this.isOpen(path) ? null : await this.workspace.closedAnalysis(path);
    this.workspace.unchecked.delete(path);
    const uri = this.workspace.uriOf(path);
    const diagnostics = analysis ? ownDiagnosticsOf(this.workspace, analysis) : [];
    if (!this.isOpen(path) && (diagnostics.length > 0 || this.told.has(uri))) {
      if (diagnostics.length > 0) this.told.add(uri);
      else this.told.delete(uri);
      await this.send(uri, diagnostics);
    }
    if (!this.ended) this.cancelTimer = this.host.after(0, () => void this.next());
  }

  private isOpen(path: string): boolean {
    return this.workspace.open.has(this.workspace.uriOf(path));
  }
}
