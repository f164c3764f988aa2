import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { program } from '../bundle.js';
import { play } from './session.js';

const sessions = fileURLToPath(new URL('sessions', import.meta.url));
let work: string;

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'cutwright-lsp-'));
});

afterAll(() => rmSync(work, { recursive: true, force: true }));

describe('a session with an editor', () => {
  const names = readdirSync(sessions).filter((name) => name.endsWith('.txt'));

  // UPDATE=1 writes down what the server answers now; read the difference before it is committed.
  test.each(names)('%s', async (name) => {
    const path = join(sessions, name);
    const written = readFileSync(path, 'utf8');
    const played = await play([program, 'lsp'], written, join(work, name.replace(/\.txt$/, '')));
    if (process.env.UPDATE) writeFileSync(path, played);
    else expect(played).toBe(written);
  });
});
