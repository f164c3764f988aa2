import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { factsOf } from '../../src/command/completion.js';
import { allCommands, main } from '../../src/command/main.js';
import { memoryHost } from '../../src/host/memory-host.js';

let folder: string;

async function script(shell: string): Promise<string> {
  const host = memoryHost();
  expect(await main(['completion', shell], host)).toBe(0);
  return host.printed();
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
  for (const shell of ['bash', 'zsh', 'fish']) writeFileSync(join(folder, shell), await script(shell));
  mkdirSync(join(folder, 'at/cuts'), { recursive: true });
  for (const file of ['c012.cut', 'c013.cut', 'c012.pdf', 'episode.yaml'])
    writeFileSync(join(folder, 'at', file), '');
});
afterAll(() => rmSync(folder, { recursive: true }));

test('another shell is refused with a guess', async () => {
  const host = memoryHost();
  expect(await main(['completion', 'fihs'], host)).toBe(2);
  expect(host.complaints()).toContain('did you mean `fish`?');
  const none = memoryHost();
  expect(await main(['completion'], none)).toBe(2);
  expect(none.complaints()).toContain('`cutwright completion` needs a shell');
});

describe('command facts', () => {
  let folder: string;

  async function script(shell: string): Promise<string> {
    const host = memoryHost();
    expect(await main(['completion', shell], host)).toBe(0);
    return host.printed();
  }

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
    for (const shell of ['bash', 'zsh', 'fish']) writeFileSync(join(folder, shell), await script(shell));
    mkdirSync(join(folder, 'at/cuts'), { recursive: true });
    for (const file of ['c012.cut', 'c013.cut', 'c012.pdf', 'episode.yaml'])
      writeFileSync(join(folder, 'at', file), '');
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test('the facts hold every command, and the words that an option takes', async () => {
    const facts = factsOf(await allCommands(memoryHost()));
    expect(facts.map(({ name }) => name)).toEqual(expect.arrayContaining(['build', 'check', 'completion']));
    const build = facts.find(({ name }) => name === 'build')!;
    expect(build.options.find(({ long }) => long === '--paper')).toMatchObject({
      short: '-p',
      value: 'size',
      words: expect.arrayContaining(['A3', 'legal']),
    });
    expect(build.options.find(({ long }) => long === '--true-size')).toMatchObject({
      value: null,
      words: null,
    });
  });
});

describe('completion scripts', () => {
  const has = (program: string) => spawnSync(program, ['--version']).error === undefined;
  let folder: string;

  async function script(shell: string): Promise<string> {
    const host = memoryHost();
    expect(await main(['completion', shell], host)).toBe(0);
    return host.printed();
  }

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
    for (const shell of ['bash', 'zsh', 'fish']) writeFileSync(join(folder, shell), await script(shell));
    mkdirSync(join(folder, 'at/cuts'), { recursive: true });
    for (const file of ['c012.cut', 'c013.cut', 'c012.pdf', 'episode.yaml'])
      writeFileSync(join(folder, 'at', file), '');
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  /** What bash offers behind these words; the last is the one being typed. */
  function offered(...words: string[]): string[] {
    const line = words.map((word) => `'${word}'`).join(' ');
    const program = `source '${join(folder, 'bash')}'; COMP_WORDS=(cutwright ${line}); COMP_CWORD=${words.length}; _cutwright; printf '%s\\n' "\${COMPREPLY[@]}"`;
    return execFileSync('bash', ['-c', program], { cwd: join(folder, 'at'), encoding: 'utf8' })
      .split('\n')
      .filter(Boolean);
  }

  describe('in bash', () => {
    test('commands', () => {
      expect(offered('bu')).toEqual(['build']);
      expect(offered('')).toEqual(expect.arrayContaining(['check', 'list', 'help']));
      expect(offered('help', 'comp')).toEqual(['compare', 'completion']);
    });
    test('options, and the words that they take', () => {
      expect(offered('build', '--pa')).toEqual(['--paper', '--parts', '--pages']);
      expect(offered('build', 'c012.cut', '--paper', 'A')).toEqual(['A4', 'A3']);
      expect(offered('build', '-c', '')).toEqual(['japan', 'west']);
      expect(offered('completion', 'f')).toEqual(['fish']);
    });
    test('behind explain the statements, the words inside them and the codes', () => {
      expect(offered('explain', 'timeline-')).toEqual(
        expect.arrayContaining(['timeline-short', 'timeline-long']),
      );
      expect(offered('explain', 'pa')).toContain('pan');
      expect(offered('explain', 'ease')).toEqual(['ease', 'ease-long']);
    });
    test('texts and folders, and no printed files', () => {
      expect(offered('check', '').sort()).toEqual(['c012.cut', 'c013.cut', 'cuts', 'episode.yaml']);
      expect(offered('check', 'c012')).toEqual(['c012.cut']);
      expect(offered('check', 'nothing')).toEqual([]);
    });
  });

  test.skipIf(!has('shellcheck'))('the bash script is clean for shellcheck', () => {
    const { stdout, status } = spawnSync('shellcheck', ['-s', 'bash', join(folder, 'bash')], {
      encoding: 'utf8',
    });
    expect(stdout).toBe('');
    expect(status).toBe(0);
  });

  test.skipIf(!has('zsh'))('zsh reads its script, and knows the command', () => {
    const program = `autoload -U compinit; compinit -u -d '${join(folder, 'dump')}'; source '${join(folder, 'zsh')}'; print $_comps[cutwright]`;
    const { stdout, stderr } = spawnSync('zsh', ['-f', '-c', program], { encoding: 'utf8' });
    expect({ stdout: stdout.trim(), stderr }).toEqual({ stdout: '_cutwright', stderr: '' });
  });

  test.skipIf(!has('fish'))('fish completes words, options and what they take', () => {
    const complete = (line: string): string[] =>
      execFileSync('fish', ['--no-config', '-c', `source '${join(folder, 'fish')}'; complete -C'${line}'`], {
        encoding: 'utf8',
      })
        .split('\n')
        .filter(Boolean)
        .map((one) => one.split('\t')[0]!);
    expect(complete('cutwright bu')).toEqual(['build']);
    expect(complete('cutwright build --pap')).toEqual(['--paper']);
    expect(complete('cutwright build --paper A')).toEqual(expect.arrayContaining(['A3', 'A4']));
  });
});
