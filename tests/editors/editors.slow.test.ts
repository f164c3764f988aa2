/** The set-ups of grammar/editors/README.md, run as they stand there in the editors that this machine has. */

import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { laterWordsOf } from '../../src/language/grammar-queries.js';
import { parse } from '../../src/language/parse.js';
import { byWord, statementTable } from '../../src/language/statements/statement-table.js';
import { program } from '../bundle.js';

const FOLDER = 'grammar/editors';
const read = (path: string): string => readFileSync(path, 'utf8');
const has = (program: string): boolean => {
  const there = spawnSync(program, ['--version']).status === 0;
  if (!there) process.stdout.write(`${program} is not here: its set-up is not tried\n`);
  return there;
};
const [nvim, vim, emacs, git] = ['nvim', 'vim', 'emacs', 'git'].map(has);

let work: string;
let env: NodeJS.ProcessEnv;

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'cutwright-editors-'));
  const bin = join(work, 'bin');
  mkdirSync(bin);
  const script = join(bin, 'cutwright');
  writeFileSync(script, `#!/bin/sh\nexec '${process.execPath}' '${program}' "$@"\n`);
  chmodSync(script, 0o755);
  env = {
    ...process.env,
    PATH: `${bin}:${process.env.PATH}`,
    HOME: work,
    XDG_STATE_HOME: work,
    XDG_DATA_HOME: work,
    XDG_CACHE_HOME: work,
    XDG_CONFIG_HOME: work,
  };
});

afterAll(() => rmSync(work, { recursive: true, force: true }));

/** A block of the page, with this folder in the place of /opt/cutwright. */
function block(language: string): string {
  const found = new RegExp(`^\`\`\`${language} tried\\n([\\s\\S]*?)^\`\`\``, 'm').exec(
    read(`${FOLDER}/README.md`),
  );
  return found![1]!.replaceAll('/opt/cutwright', process.cwd());
}

function run(program: string, args: string[]): string {
  const { stdout, stderr } = spawnSync(program, args, { cwd: work, env, timeout: 110_000, encoding: 'utf8' });
  return stdout || stderr;
}

const BROKEN = 'cut 12 "Rooftop"\ntime 1+0\nA "Nao": 1:12 2\n';
/** One line of each kind, with the place of what is looked at in it. */
const COLOURED = `# memo
cut 12 "a # \\" b" # note
note: 1--2 x..
BOOK1「板」： 1..
pan A@1+1 > B@5+0 ease 6
memo "not closed
memo 「a # b」
`;
const at = (line: number, piece: string): { line: number; column: number } => {
  const column = COLOURED.split('\n')[line - 1]!.indexOf(piece);
  if (column < 0) throw new Error(`no ${piece} in line ${line}`);
  return { line, column };
};

describe('the words of the language', () => {
  parse('', 'cut 1');
  const statements = [...byWord.keys()].sort();
  // The sign of an empty level is coloured as a drawing is.
  const options = [...new Set(statementTable.flatMap((entry) => laterWordsOf(entry)))]
    .filter((one) => one !== 'x')
    .sort();

  test('are those that Vim colours', () => {
    const syntax = read(`${FOLDER}/vim/syntax/cut.vim`);
    const list = (group: string) =>
      new RegExp(`^syntax match ${group} .*\\\\%\\(([a-z\\\\|]+)\\\\\\)\\\\>/$`, 'm')
        .exec(syntax)![1]!
        .split('\\|')
        .sort();
    expect(list('cutStatement')).toEqual(statements);
    expect(list('cutOption')).toEqual(options);
  });

  test('are those that Emacs colours', () => {
    const mode = read(`${FOLDER}/cut-mode.el`);
    const list = (name: string) =>
      [...new RegExp(`defconst ${name}\\s+'\\(([^)]*)\\)`).exec(mode)![1]!.matchAll(/"(\w+)"/g)]
        .map(([, one]) => one)
        .sort();
    expect(list('cut-statements')).toEqual(statements);
    expect(list('cut-options')).toEqual(options);
  });
});

test.skipIf(!nvim)('Neovim starts the server by itself and shows what is wrong with a cut', () => {
  writeFileSync(join(work, 'broken.cut'), BROKEN);
  writeFileSync(join(work, 'init.lua'), block('lua'));
  cpSync('examples/saltmarsh', join(work, 'saltmarsh'), { recursive: true });
  writeFileSync(
    join(work, 'try.lua'),
    `local out = {}
local function problems() return vim.diagnostic.get(0) end
vim.cmd('edit broken.cut')
vim.wait(60000, function() return #problems() > 0 end, 20)
for _, one in ipairs(problems()) do table.insert(out, one.lnum .. ' ' .. one.code) end
vim.cmd('edit saltmarsh/cuts/c012.cut')
table.insert(out, vim.bo.filetype .. ' ' .. vim.b.current_syntax .. ' ' .. #vim.lsp.get_active_clients())
vim.lsp.buf_request_sync(0, 'textDocument/documentSymbol', { textDocument = vim.lsp.util.make_text_document_params() }, 60000)
table.insert(out, 'problems ' .. #problems())
table.insert(out, vim.bo.omnifunc .. ' ' .. vim.fn.maparg('K') .. vim.fn.maparg('<C-s>', 'i'))
vim.fn.writefile(out, 'nvim.out')
vim.cmd('qall!')
`,
  );
  const said = run('nvim', ['--headless', '-n', '-i', 'NONE', '-u', 'init.lua', '-c', 'luafile try.lua']);
  expect(spawnSync('cat', [join(work, 'nvim.out')], { encoding: 'utf8' }).stdout || said).toEqual(
    expect.stringMatching(/^2 timeline-short\ncut cut 1\nproblems 0\nv:lua\.vim\.lsp\.omnifunc .+\n$/),
  );
});

test.skipIf(!vim)('Vim colours a cut, lays it out and lists what is wrong', () => {
  writeFileSync(join(work, 'coloured.cut'), COLOURED);
  writeFileSync(join(work, 'broken.cut'), BROKEN);
  writeFileSync(join(work, 'vimrc'), `set encoding=utf-8 shortmess+=at\n${block('vim')}`);
  const places: [number, string][] = [
    ...([
      [1, 'memo'],
      [2, 'cut'],
      [2, '12'],
      [2, ' # '],
      [2, '\\"'],
      [2, '# note'],
      [3, 'note'],
      [3, '--'],
    ] as const),
    ...([
      [3, 'x'],
      [4, 'BOOK1'],
      [4, '板'],
      [5, 'pan'],
      [5, '1+1'],
      [5, 'ease'],
      [6, 'memo'],
      [6, 'not'],
    ] as const),
    ...([
      [7, 'memo'],
      [7, '# b'],
    ] as const),
  ].map(([line, piece]) => [line, piece]);
  const asked = places.map(([line, piece]) => {
    const { column } = at(line, piece);
    const bytes = Buffer.byteLength(COLOURED.split('\n')[line - 1]!.slice(0, column));
    return `call add(out, synIDattr(synID(${line}, ${bytes + 1}, 1), 'name'))`;
  });
  writeFileSync(
    join(work, 'try.vim'),
    `let out = []
edit coloured.cut
${asked.join('\n')}
edit broken.cut
make!
for one in getqflist()
  if one.valid
    call add(out, one.lnum . ':' . one.col . ' ' . one.type . ' ' . one.text)
  endif
endfor
call setline(3, 'A   "Nao" :1:12   2..')
normal gggqG
call add(out, getline(3))
call append('$', ['phrase wander = 1-2', 'pa'])
call cursor(line('$'), 3)
exe "normal! A\\<C-X>\\<C-O>\\<Esc>"
call setline('.', getline('.') . ' wa')
exe "normal! A\\<C-X>\\<C-O>\\<Esc>"
call add(out, getline('.'))
call writefile(out, 'vim.out')
qall!
`,
  );
  const said = run('vim', ['-es', '-N', '-n', '-i', 'NONE', '-u', 'vimrc', '-S', 'try.vim']);
  const out = spawnSync('cat', [join(work, 'vim.out')], { encoding: 'utf8' }).stdout;
  expect(out.trim().split('\n'), said).toEqual([
    ...[
      'cutComment',
      'cutStatement',
      'cutNumber',
      'cutText',
      'cutEscape',
      'cutComment',
      'cutLevel',
      'cutOperator',
    ],
    ...[
      'cutEmpty',
      'cutLevel',
      'cutText',
      'cutStatement',
      'cutNumber',
      'cutOption',
      'cutStatement',
      'cutUnclosed',
    ],
    ...['cutStatement', 'cutText'],
    '3:15 E Level A shows 14 of 24 frames: 10 frames missing, from frame 15 on.',
    'A "Nao": 1:12 2..',
    'pan wander',
  ]);
});

describe.skipIf(!emacs)('Emacs', () => {
  const lisp = (text: string): string => JSON.stringify(text);

  test('compiles the mode without a warning', () => {
    cpSync(`${FOLDER}/cut-mode.el`, join(work, 'cut-mode.el'));
    const args = [
      '-Q',
      '--batch',
      '--eval',
      '(setq byte-compile-error-on-warn t)',
      '-f',
      'batch-byte-compile',
      'cut-mode.el',
    ];
    const { status, stderr } = spawnSync('emacs', args, { cwd: work, env, encoding: 'utf8' });
    expect(`${stderr}${status}`).toBe('0');
  });

  test('colours a cut, comments a line and puts lines under their statements', () => {
    writeFileSync(join(work, 'coloured.cut'), COLOURED);
    writeFileSync(join(work, 'init.el'), block('elisp'));
    const long = 'A "Nao": 1:12\n 2--\n  3..\npan A@1\n> B@2\n\n# a note\n   carry A\n';
    writeFileSync(join(work, 'long.cut'), long);
    const places: [number, string][] = [
      [1, 'memo'],
      [2, 'cut'],
      [2, '12'],
      [2, ' # '],
      [2, '# note'],
      [3, 'note'],
      [3, 'x'],
      [4, 'BOOK1'],
      [4, '板'],
      [5, 'pan'],
      [5, '1+1'],
      [5, 'ease'],
      [6, 'memo'],
      [6, 'not'],
      [7, 'memo'],
      [7, '# b'],
    ];
    const offsets = places.map(([line, piece]) => {
      const before = COLOURED.split('\n')
        .slice(0, line - 1)
        .join('\n');
      return before.length + (line > 1 ? 1 : 0) + at(line, piece).column + 1;
    });
    writeFileSync(
      join(work, 'try.el'),
      `(set-language-environment "UTF-8")
(load (expand-file-name "init.el") nil t)
(find-file "coloured.cut")
(font-lock-ensure)
(princ (format "%s\\n" major-mode))
(dolist (place '(${offsets.join(' ')})) (princ (format "%s\\n" (get-text-property place 'face))))
(find-file "long.cut")
(indent-region (point-min) (point-max))
(princ (buffer-string))
(goto-char (point-min))
(forward-line 1) (comment-region (line-beginning-position) (line-end-position))
(princ (format "%s\\n" (buffer-substring (line-beginning-position) (line-end-position))))
(goto-char (point-max)) (insert "fix B") (newline) (princ (format "%d\\n" (current-column)))
(with-temp-buffer (insert ${lisp(read('examples/saltmarsh/cuts/c012.cut'))}) (cut-mode)
  (let ((before (buffer-string))) (indent-region (point-min) (point-max))
    (princ (if (equal before (buffer-string)) "kept\\n" (buffer-string)))))
`,
    );
    const said = run('emacs', ['-Q', '--batch', '-l', 'try.el']);
    const faces = (names: string) =>
      names.split(' ').map((one) => (one === 'nil' ? one : `font-lock-${one}-face`));
    expect(said.split('\n')).toEqual([
      'cut-mode',
      ...faces('comment keyword constant string comment-delimiter variable-name constant variable-name'),
      ...faces('string keyword constant type keyword nil keyword string'),
      ...['A "Nao": 1:12', '         2--', '         3..', 'pan A@1', '> B@2', '', '# a note', '    carry A'],
      '         # 2--',
      '0',
      'kept',
      '',
    ]);
  });
});

test.skipIf(!git)('git says which statement a change lies in', () => {
  const folder = join(work, 'repository');
  mkdirSync(folder);
  const sh = (script: string): string =>
    execFileSync('sh', ['-e', '-c', script], {
      cwd: folder,
      encoding: 'utf8',
      env: { ...env, GIT_CONFIG_NOSYSTEM: '1' },
    });
  const lines = Array.from({ length: 9 }, (_, i) => `   ${i + 1}--`);
  const text = `cut 1\n# a comment\nA "Nao": x:8\n${lines.join('\n')}\n`;
  writeFileSync(join(folder, 'c.cut'), text);
  sh(`git init -q && ${block('sh').trim().replaceAll('\n', ' && ')} && git add .`);
  writeFileSync(join(folder, 'c.cut'), text.replace('   8--', '   8---'));
  expect(sh('git diff')).toContain('@@ A "Nao": x:8\n');
});
