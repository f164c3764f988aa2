/**
 * Sessions with an editor, written down as plain text and played with a real client. One command a line; what it answers stands
 * below it, behind `= `. See `sessions/README.md`.
 */

import { mkdirSync, readFileSync, rmSync, unlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type {
  CompletionItem,
  Diagnostic,
  Location,
  Range,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { DocumentText } from '../../src/lsp/document-text.js';
import { LEGEND } from '../../src/lsp/semantic-tokens.js';
import { Editor, type Wishes } from './client.js';

interface Step {
  readonly command: string;
  /** Lines behind `| `: the content of a file. */
  readonly body: readonly string[];
  /** The lines as they stand: comments, blanks, the command, its body. */
  readonly typed: readonly string[];
}

export function stepsOf(session: string): { steps: Step[]; tail: string[] } {
  const steps: { command: string; body: string[]; typed: string[] }[] = [];
  let before: string[] = [];
  for (const line of session.split('\n')) {
    if (line.startsWith('=')) continue;
    const last = steps.at(-1);
    if (line.startsWith('|') && last) {
      last.body.push(line.slice(2));
      last.typed.push(...before, line);
      before = [];
    } else if (line.trim() === '' || line.startsWith('#')) before.push(line);
    else {
      steps.push({ command: line, body: [], typed: [...before, line] });
      before = [];
    }
  }
  while (before.length > 0 && before.at(-1) === '') before.pop();
  return { steps, tail: before };
}

/** Plays a session; gives it would stand with what the server answers now. */
export async function play(server: readonly string[], session: string, folder: string): Promise<string> {
  const { steps, tail } = stepsOf(session);
  const wishes: Record<string, boolean> = {};
  for (const { command } of steps) {
    if (command.startsWith('client '))
      for (const wish of command.split(' ').slice(1)) wishes[wish.replace('-', '')] = true;
  }
  const player = new Player(server, folder, wishes.unwatched ? { ...wishes, watch: false } : wishes);
  const out: string[] = [];
  try {
    await player.editor.begin();
    for (const step of steps) {
      const answer = await player.step(step).catch((fault: Error) => [`FAILED: ${fault.message}`]);
      out.push(...step.typed, ...(answer ?? []).map((line) => `= ${line}`.trimEnd()));
    }
    const status = await player.editor.end();
    if (status !== 0) out.push(`= the server left with ${status}`);
  } finally {
    player.editor.child.kill();
    rmSync(folder, { recursive: true, force: true });
  }
  return `${[...out, ...tail].join('\n')}\n`;
}

class Player {
  readonly editor: Editor;
  private current = '';
  private seen = new Map<string, number>();

  constructor(
    server: readonly string[],
    private readonly folder: string,
    private readonly wishes: Wishes,
  ) {
    mkdirSync(folder, { recursive: true });
    this.editor = new Editor(server, folder, wishes);
  }

  private get text(): DocumentText {
    return this.editor.text(this.current);
  }

  /** `8:12`, or `"wa^lk"`: where the caret stands in the first place that reads so. */
  private offset(place: string): number {
    const numbers = /^(\d+):(\d+)$/.exec(place);
    if (numbers) return this.text.offset({ line: Number(numbers[1]) - 1, character: Number(numbers[2]) - 1 });
    const needle = JSON.parse(place) as string;
    const caret = needle.indexOf('^');
    const at = this.text.text.indexOf(needle.replace('^', ''));
    if (at < 0) throw new Error(`nothing reads ${place} in ${this.current}`);
    return at + Math.max(0, caret);
  }

  private at(place: string) {
    return {
      textDocument: { uri: this.editor.uri(this.current) },
      position: this.text.position(this.offset(place)),
    };
  }

  private get document() {
    return { textDocument: { uri: this.editor.uri(this.current) } };
  }

  async step({ command, body }: Step): Promise<string[] | null> {
    const [word = '', ...args] = command.match(/"(?:[^"\\]|\\.)*"|\S+/g) ?? [];
    const content = body.map((line) => `${line}\n`).join('');
    const { editor } = this;
    if (word !== 'diagnostics' && word !== 'later' && word !== 'turn-to')
      this.seen = new Map([...editor.sent].map(([uri, { count }]) => [uri, count]));
    switch (word) {
      case 'client':
        return null;
      case 'file': {
        const path = join(this.folder, args[0]!);
        mkdirSync(dirname(path), { recursive: true });
        writeFileSync(path, content);
        return null;
      }
      case 'open':
        this.current = args[0]!;
        await editor.open(
          this.current,
          body.length > 0 ? content : readFileSync(join(this.folder, this.current), 'utf8'),
        );
        return null;
      case 'turn-to':
        this.current = args[0]!;
        return null;
      case 'type': {
        const at = this.offset(args[0]!);
        await editor.change(this.current, at, at, JSON.parse(args[1]!));
        return null;
      }
      case 'replace': {
        const needle = JSON.parse(args[0]!) as string;
        const at = this.offset(args[0]!);
        await editor.change(this.current, at, at + needle.length, JSON.parse(args[1]!));
        return null;
      }
      case 'disk':
        await editor.disk(args[0]!, content);
        return this.wishes.watch === false ? null : this.changed();
      case 'remove':
        unlinkSync(join(this.folder, args[0]!));
        await editor.tell('workspace/didChangeWatchedFiles', {
          changes: [{ uri: editor.uri(args[0]!), type: 3 }],
        });
        return this.changed();
      case 'save':
        writeFileSync(join(this.folder, this.current), this.text.raw);
        await editor.tell('textDocument/didSave', this.document);
        return null;
      case 'close':
        await editor.tell('textDocument/didClose', this.document);
        return null;
      case 'text':
        return this.text.text.replace(/\n$/, '').split('\n');
      case 'diagnostics':
        return this.diagnostics(await editor.diagnostics(this.current));
      case 'later':
        return this.diagnostics(
          await editor.diagnostics(this.current, this.seen.get(editor.uri(this.current)) ?? 0),
        );
      case 'actions':
      case 'fix':
        return this.actions(word, args);
      case 'hover': {
        const answer = await editor.ask('textDocument/hover', this.at(args[0]!));
        return answer
          ? [
              `${this.range(answer.range)}`,
              ...answer.contents.value.split('\n').map((line: string) => line.trimEnd()),
            ]
          : ['nothing'];
      }
      case 'complete':
        return this.complete(args);
      case 'definition':
        return this.locations(await editor.ask('textDocument/definition', this.at(args[0]!)));
      case 'references':
        return this.locations(
          await editor.ask('textDocument/references', {
            ...this.at(args[0]!),
            context: { includeDeclaration: true },
          }),
        );
      case 'highlights':
        return (await editor.ask('textDocument/documentHighlight', this.at(args[0]!))).map(
          ({ range, kind }: { range: Range; kind: number }) =>
            `${this.range(range)} ${kind === 3 ? 'defined' : 'used'}`,
        );
      case 'rename':
        return this.rename(args);
      case 'find':
        return (await editor.ask('workspace/symbol', { query: JSON.parse(args[0]!) })).map(
          ({ name, containerName, location }: { name: string; containerName: string; location: Location }) =>
            `${name} — ${containerName}: ${this.locations([location])[0]}`,
        );
      case 'links':
        return (await editor.ask('textDocument/documentLink', this.document)).map(
          ({ range, target }: { range: Range; target: string }) =>
            `${this.range(range)} ${editor.nameOf(target)}`,
        );
      case 'lenses':
        return (await editor.ask('textDocument/codeLens', this.document)).map(
          ({ range, command }: { range: Range; command: { title: string } }) =>
            `${this.range(range)} ${command.title}`,
        );
      case 'signature': {
        const help = await editor.ask('textDocument/signatureHelp', this.at(args[0]!));
        if (!help) return ['nothing'];
        const { label, parameters } = help.signatures[0];
        const { label: part, documentation } = parameters[help.activeParameter];
        return [label, `${label.slice(...part)}: ${documentation.value}`];
      }
      case 'grow': {
        const [one] = await editor.ask('textDocument/selectionRange', {
          ...this.document,
          positions: [this.at(args[0]!).position],
        });
        const ranges: string[] = [];
        for (let at = one; at; at = at.parent) ranges.push(this.range(at.range));
        return [ranges.join(' < ')];
      }
      case 'elsewhere':
        return this.diagnostics(await editor.elsewhere(args[0]!));
      case 'run':
        return String(
          await editor.ask('workspace/executeCommand', {
            command: args[0],
            arguments: args.slice(1).map((one) => JSON.parse(one)),
          }),
        ).split('\n');
      case 'symbols':
        return (await editor.ask('textDocument/documentSymbol', this.document)).map(
          ({ name, detail, range }: { name: string; detail?: string; range: Range }) =>
            `${this.range(range)} ${name}${detail ? ` — ${detail}` : ''}`,
        );
      case 'folds':
        return (await editor.ask('textDocument/foldingRange', this.document)).map(
          ({ startLine, endLine, kind }: { startLine: number; endLine: number; kind?: string }) =>
            `lines ${startLine + 1}-${endLine + 1}${kind ? ` ${kind}` : ''}`,
        );
      case 'format': {
        const edits = await editor.ask('textDocument/formatting', {
          ...this.document,
          options: { tabSize: 2, insertSpaces: true },
        });
        return this.edited(this.current, edits);
      }
      case 'hints': {
        const range = { start: { line: 0, character: 0 }, end: { line: 1e6, character: 0 } };
        const hints = await editor.ask('textDocument/inlayHint', { ...this.document, range });
        return hints.map(
          ({ position, label }: { position: Range['start']; label: string }) =>
            `${position.line + 1}:${position.character + 1} ${label}`,
        );
      }
      case 'tokens':
        return this.tokens((await editor.ask('textDocument/semanticTokens/full', this.document)).data);
      default:
        throw new Error(`a session has no command \`${word}\``);
    }
  }

  /** What is sent after a change on the disk, text by text. */
  private async changed(): Promise<string[]> {
    const lines: string[] = [];
    for (const uri of this.editor.texts.keys()) {
      const name = this.editor.nameOf(uri);
      try {
        const sent = await Promise.race([
          this.editor.diagnostics(name, this.seen.get(uri) ?? 0),
          new Promise<null>((resolve) => setTimeout(() => resolve(null), 1500)),
        ]);
        if (sent) lines.push(`${name}:`, ...this.diagnostics(sent));
      } catch {}
    }
    return lines.length > 0 ? lines : ['nothing is sent'];
  }

  private range({ start, end }: Range): string {
    const from = `${start.line + 1}:${start.character + 1}`;
    if (start.line === end.line && start.character === end.character) return from;
    return `${from}-${start.line === end.line ? '' : `${end.line + 1}:`}${end.character + 1}`;
  }

  private diagnostics(all: readonly Diagnostic[]): string[] {
    const severities = ['', 'error', 'warning', 'information', 'hint'];
    return all.length === 0
      ? ['none']
      : all.flatMap(({ range, severity, code, message, relatedInformation, tags }) => [
          ...`${this.range(range)} ${severities[severity ?? 0]} ${code}${tags ? ' (grey)' : ''}: ${message}`
            .split('\n')
            .map((line, i) => (i === 0 ? line : `    ${line}`)),
          ...(relatedInformation ?? []).map(
            ({ location, message: said }) =>
              `    ${this.editor.nameOf(location.uri)} ${this.range(location.range)}: ${said}`,
          ),
        ]);
  }

  private async actions(word: string, [place, title]: string[]): Promise<string[]> {
    const at = this.text.position(this.offset(place!));
    const found = await this.editor.ask('textDocument/codeAction', {
      ...this.document,
      range: { start: at, end: at },
      context: { diagnostics: [] },
    });
    if (word === 'actions')
      return found.length === 0
        ? ['none']
        : found.map(
            (one: { title: string; isPreferred?: boolean }) =>
              `${one.title}${one.isPreferred ? '' : ' (not preferred)'}`,
          );
    const wanted =
      title === undefined
        ? found[0]
        : found.find((one: { title: string }) => one.title === JSON.parse(title));
    if (!wanted) return ['no such action'];
    return this.apply(wanted.edit);
  }

  /** The lines that an edit changes, file by file; those of the current text are really changed. */
  private async apply({ changes = {} }: WorkspaceEdit): Promise<string[]> {
    const lines: string[] = [];
    for (const uri of Object.keys(changes).sort()) {
      const name = this.editor.nameOf(uri);
      const shown = this.edited(name, changes[uri]!);
      lines.push(`${name}:`, ...shown);
      if (name === this.current) {
        for (const { range, newText } of sorted(changes[uri]!)) {
          const { text } = this;
          await this.editor.change(name, text.offset(range.start), text.offset(range.end), newText);
        }
      }
    }
    return lines;
  }

  /** The lines that differ, as they come to stand. */
  private edited(name: string, edits: readonly TextEdit[]): string[] {
    const known = this.editor.texts.get(this.editor.uri(name))?.text;
    let text =
      known ??
      new DocumentText(readFileSync(join(this.folder, name), 'utf8'), this.wishes.utf8 ? 'utf-8' : 'utf-16');
    const before = text.text.split('\n');
    for (const { range, newText } of sorted(edits)) text = text.changed(range, newText);
    const after = text.text.split('\n');
    const lines = after.flatMap((line, i) => (before.includes(line) ? [] : [`${i + 1}: ${line}`]));
    return lines.length > 0 ? lines : ['nothing changes'];
  }

  private async complete([place, ...wanted]: string[]): Promise<string[]> {
    const answer = await this.editor.ask('textDocument/completion', this.at(place!));
    const items: CompletionItem[] = answer?.items ?? [];
    const shown = wanted.length > 0 ? items.filter(({ label }) => wanted.includes(label)) : items;
    if (shown.length === 0) return ['nothing'];
    return shown.map(({ label, detail, textEdit }) => {
      const edit = textEdit as TextEdit;
      const inserts = edit.newText === label ? '' : ` → ${JSON.stringify(edit.newText)}`;
      return `${label}${inserts}${detail ? ` — ${detail}` : ''}`;
    });
  }

  private locations(answer: readonly { uri: string; range: Range }[] | null): string[] {
    return answer && answer.length > 0
      ? answer.map(({ uri, range }) => `${this.editor.nameOf(uri)} ${this.range(range)}`)
      : ['none'];
  }

  private async rename([place, name]: string[]): Promise<string[]> {
    try {
      await this.editor.ask('textDocument/prepareRename', this.at(place!));
      return await this.apply(
        await this.editor.ask('textDocument/rename', { ...this.at(place!), newName: name }),
      );
    } catch (fault) {
      return [`refused: ${(fault as Error).message}`];
    }
  }

  private tokens(data: readonly number[]): string[] {
    const lines: string[] = [];
    let line = 0;
    let character = 0;
    for (let i = 0; i < data.length; i += 5) {
      const [down = 0, along = 0, length = 0, type = 0, modifiers = 0] = data.slice(i, i + 5);
      line += down;
      character = down > 0 ? along : character + along;
      const start = this.text.offset({ line, character });
      const typed = this.text.text.slice(start, start + length);
      lines.push(
        `${line + 1}:${character + 1} ${typed} ${LEGEND.tokenTypes[type]}${modifiers ? ' definition' : ''}`,
      );
    }
    return lines;
  }
}

/** From the last to the first, so that the places of those before stay right. */
function sorted(edits: readonly TextEdit[]): TextEdit[] {
  return [...edits].sort(
    (a, b) => b.range.start.line - a.range.start.line || b.range.start.character - a.range.start.character,
  );
}
