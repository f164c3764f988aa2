/** As much of VS Code as the extension asks for: what it registers, says and opens is noted, everything else does nothing. */

type Callback = (...args: never[]) => unknown;

export interface Stub {
  readonly api: unknown;
  readonly commands: Map<string, Callback>;
  readonly listeners: Map<string, Callback>;
  readonly said: string[];
  readonly opened: string[];
  /** What the person answers to a message. */
  answer: string | undefined;
  active: { readonly document: object } | undefined;
}

class Disposable {
  static from(...all: { dispose(): unknown }[]): Disposable {
    const joined = new Disposable();
    joined.dispose = () => {
      for (const one of all) one.dispose();
    };
    return joined;
  }
  dispose(): void {}
}
class EventEmitter extends Disposable {
  private readonly heard: ((event: unknown) => unknown)[] = [];
  readonly event = (callback: (event: unknown) => unknown): Disposable => {
    this.heard.push(callback);
    return new Disposable();
  };
  fire(event: unknown): void {
    for (const callback of this.heard) callback(event);
  }
}
class CancellationTokenSource extends Disposable {
  readonly token = { isCancellationRequested: false, onCancellationRequested: () => new Disposable() };
  cancel(): void {}
}
class Uri {
  readonly scheme = 'file';
  constructor(
    readonly fsPath: string,
    private readonly text: string,
  ) {}
  static file(path: string): Uri {
    return new Uri(path, `file://${path}`);
  }
  static parse(text: string): Uri {
    return new Uri(text, text);
  }
  toString(): string {
    return this.text;
  }
}

/** Any name that is asked for: something to call, to extend, to make, or to ask further. */
function anything(known: Record<string, unknown> = {}): unknown {
  const target = class extends Disposable {};
  return new Proxy(target, {
    get: (own, name) => {
      if (name in known) return known[name as string];
      if (name === 'prototype' || name === 'name' || name === 'length' || typeof name === 'symbol')
        return Reflect.get(own, name);
      // What is nothing to wait for.
      if (name === 'then') return undefined;
      known[name] = /^on[A-Z]/.test(name) ? () => new Disposable() : anything();
      return known[name];
    },
    apply: () => anything(),
  });
}

export function vscodeStub(settings: Readonly<Record<string, unknown>>): Stub {
  const commands = new Map<string, Callback>();
  const listeners = new Map<string, Callback>();
  const said: string[] = [];
  const opened: string[] = [];
  const say = async (message: string): Promise<string | undefined> => {
    said.push(message);
    return stub.answer;
  };
  const hear = (name: string) => (callback: Callback) => {
    listeners.set(name, callback);
    return new Disposable();
  };
  const stub: Stub = {
    commands,
    listeners,
    said,
    opened,
    answer: undefined,
    active: undefined,
    api: anything({
      Uri,
      Disposable,
      EventEmitter,
      CancellationTokenSource,
      version: '1.91.0',
      env: anything({ openExternal: async (uri: Uri) => opened.push(uri.toString()), language: 'en' }),
      commands: anything({
        registerCommand: (name: string, run: Callback) => {
          commands.set(name, run);
          return new Disposable();
        },
        executeCommand: async (...words: string[]) => void opened.push(words.join(' ')),
      }),
      window: new Proxy(
        anything({
          onDidChangeTextEditorSelection: hear('selection'),
          showErrorMessage: say,
          showInformationMessage: say,
          createOutputChannel: () => anything({ append: (text: string) => said.push(text) }),
          visibleTextEditors: [],
          tabGroups: anything({ all: [] }),
        }) as object,
        { get: (own, name) => (name === 'activeTextEditor' ? stub.active : Reflect.get(own, name)) },
      ),
      workspace: anything({
        onDidChangeConfiguration: hear('configuration'),
        getConfiguration: () => ({ get: (name: string) => settings[name], inspect: () => undefined }),
        workspaceFolders: [],
        textDocuments: [],
        notebookDocuments: [],
      }),
      languages: anything({ match: () => 0 }),
    }),
  };
  return stub;
}
