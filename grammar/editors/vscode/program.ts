/** How the program is called. */

import { spawn } from 'node:child_process';

export interface Call {
  readonly command: string;
  readonly args: string[];
  /** On Windows an installed program is a script, which only a shell runs. */
  readonly shell: boolean;
}

/** `words`: the program and what stands before its command. */
export function callOf(
  words: readonly string[],
  more: readonly string[],
  platform: string = process.platform,
): Call {
  const all = words.length > 0 ? [...words, ...more] : ['cutwright', ...more];
  const shell = platform === 'win32';
  const [command = '', ...args] = shell ? all.map(quoted) : all;
  return { command, args, shell };
}

/** A shell of Windows takes a word with blanks in it apart. */
function quoted(word: string): string {
  return /^[\w.:\\/+-]+$/.test(word) ? word : `"${word.replaceAll('"', '')}"`;
}

export interface Outcome {
  /** Null: it could not be run. */
  readonly status: number | null;
  readonly output: string;
  readonly errors: string;
}

export function runProgram(words: readonly string[], more: readonly string[]): Promise<Outcome> {
  const { command, args, shell } = callOf(words, more);
  return new Promise((resolve) => {
    const child = spawn(command, args, { shell, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    let errors = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      output += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      errors += text;
    });
    child.on('error', ({ message }) =>
      resolve({ status: null, output, errors: `\`${command}\` cannot be run: ${message}` }),
    );
    child.on('close', (status) => resolve({ status: status ?? 1, output, errors }));
  });
}
