/** The program as it is shipped: what starts the server, and an editor from outside, Neovim's own client, without a line of ours between. */

import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bundle, program } from '../bundle.js';
import { Editor } from './client.js';

const there = spawnSync('nvim', ['--version']).status === 0;
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-editor-'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.each([[[]], [['--stdio']], [['--stdio', `--clientProcessId=${process.pid}`]]])(
  'cutwright lsp %j serves an editor',
  async (options) => {
    const editor = new Editor([program, 'lsp', ...options], folder);
    await editor.begin();
    expect(editor.result.serverInfo?.name).toBe('cutwright');
    await editor.open('a.cut', 'cut 1\ntime 1+0\nA: 1\n');
    expect((await editor.diagnostics('a.cut')).map(({ code }) => code)).toEqual(['timeline-short']);
    expect(await editor.end()).toBe(0);
    expect(editor.errors).toBe('');
  },
);

test('the other commands do without the server', () => {
  writeFileSync(join(folder, 'b.cut'), 'cut 1\ntime 1+0\nA: 1..\n');
  const without = join(folder, 'without');
  cpSync(bundle, without, { recursive: true });
  rmSync(join(without, 'dist/lsp.cjs'));
  const run = (command: string) =>
    spawnSync(process.execPath, [join(without, 'bin/cutwright.js'), command, 'b.cut'], { cwd: folder });
  expect(run('check').status).toBe(0);
  expect(run('lsp').status).not.toBe(0);
});

/** Opens the cut, waits for its problems, mends the first by hand, and asks for a hover and the layout. */
const LUA = `
local out = {}
local function say(...) table.insert(out, table.concat({...}, ' ')) end
local function wait(what, done) if not vim.wait(60000, done, 20) then say('never', what) end end
vim.cmd('edit c012.cut')
local id = vim.lsp.start_client({ name = 'cutwright', cmd = { NODE, PROGRAM, 'lsp' }, root_dir = vim.fn.getcwd() })
vim.lsp.buf_attach_client(0, id)
wait('diagnostics', function() return #vim.diagnostic.get(0) > 0 end)
for _, one in ipairs(vim.diagnostic.get(0)) do say(one.lnum, one.col, one.code, one.source) end
vim.api.nvim_buf_set_lines(0, 2, 3, true, { 'A "Nao":   1:12 2..' })
wait('their end', function() return #vim.diagnostic.get(0) == 0 end)
local answer = vim.lsp.buf_request_sync(0, 'textDocument/hover',
  { textDocument = vim.lsp.util.make_text_document_params(), position = { line = 2, character = 16 } }, 60000)
say((answer[id].result.contents.value:gsub('%s*\\n.*', '')))
vim.lsp.buf.formatting_sync({}, 60000)
say(vim.api.nvim_buf_get_lines(0, 2, 3, true)[1])
vim.lsp.stop_client(id)
wait('its end', function() return vim.lsp.client_is_stopped(id) end)
vim.fn.writefile(out, 'out.txt')
vim.cmd('qall!')
`;

if (!there) process.stdout.write('nvim is not here: the editor that comes with Debian is not tried\n');

test.skipIf(!there)('Neovim shows problems, a hover and the layout', () => {
  writeFileSync(join(folder, 'c012.cut'), 'cut 12 "Rooftop"\ntime 1+0\nA "Nao": 1:12 2\n');
  const values = { NODE: process.execPath, PROGRAM: program };
  const script = Object.entries(values).reduce(
    (lua, [name, value]) => lua.replace(name, JSON.stringify(value)),
    LUA,
  );
  writeFileSync(join(folder, 'try.lua'), script);
  const { stdout, stderr } = spawnSync('nvim', ['--headless', '-n', '--clean', '-c', 'luafile try.lua'], {
    cwd: folder,
    timeout: 110_000,
    env: {
      ...process.env,
      XDG_STATE_HOME: folder,
      XDG_DATA_HOME: folder,
      XDG_CACHE_HOME: folder,
      HOME: folder,
    },
  });
  const said = spawnSync('cat', [join(folder, 'out.txt')]).stdout.toString();
  expect(said || `${stdout}${stderr}`).toBe(
    ['2 14 timeline-short cutwright', '**A 2**: key drawing, number A2', 'A "Nao": 1:12 2..', ''].join('\n'),
  );
});
