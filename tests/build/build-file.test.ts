import { expect, test } from 'vitest';
import { type BuildFile, buildFileText, unwritablePath } from '../../src/build/build-file.js';

const FILE: BuildFile = {
  path: 'out/cutwright.ninja',
  folder: 'out',
  options: ['--paper', 'A3'],
  command: ['build', '--output', 'out', '--', "it's $5"],
  inputs: ['episode.yaml', 'cuts'],
  program: 'cutwright 1',
  rules: [
    { output: 'out/a b.pdf', cut: 'cuts/a b.cut', inputs: ['episode.yaml', 'c:1 #$x.cut'] },
    { output: 'out/-2.pdf', cut: '-2.cut', inputs: [] },
  ],
};

test('ninja: blanks, colons and dollars are escaped in paths, and words quoted for the shell', () => {
  expect(buildFileText('ninja', FILE).split('\n').slice(1)).toEqual([
    'ninja_required_version = 1.5',
    'builddir = out',
    '',
    'rule print',
    '  command = $${CUTWRIGHT:-cutwright} build --paper A3 --output $out -- $in # cutwright 1, $inputs',
    '  description = print $in',
    'rule plan',
    "  command = $${CUTWRIGHT:-cutwright} build --output out -- 'it'\\''s $$5' && touch $out",
    '  description = plan',
    '  generator = 1',
    '',
    'build out/a$ b.pdf: print cuts/a$ b.cut | episode.yaml c$:1$ #$$x.cut',
    expect.stringMatching(/^ {2}inputs = 2 [\da-f]{8}$/),
    'build out/-2.pdf: print ./-2.cut',
    expect.stringMatching(/^ {2}inputs = 0 [\da-f]{8}$/),
    '',
    'build out/cutwright.ninja: plan | episode.yaml cuts',
    'build episode.yaml: phony',
    'build cuts: phony',
    '',
  ]);
});

test('make: the same in its own way', () => {
  expect(
    buildFileText('make', { ...FILE, path: 'out/cutwright.mk' })
      .split('\n')
      .slice(1),
  ).toEqual([
    '# cutwright 1',
    'CUTWRIGHT ?= cutwright',
    'MAKEFLAGS += --no-builtin-rules',
    '.SUFFIXES:',
    '.PHONY: all',
    'all: out/a\\ b.pdf out/-2.pdf',
    '',
    'out/a\\ b.pdf: cuts/a\\ b.cut episode.yaml c\\:1\\ \\#$$x.cut',
    "\t$(CUTWRIGHT) build --paper A3 --output 'out/a b.pdf' -- 'cuts/a b.cut'",
    'out/-2.pdf: ./-2.cut',
    '\t$(CUTWRIGHT) build --paper A3 --output out/-2.pdf -- ./-2.cut',
    '',
    'out/cutwright.mk: episode.yaml cuts',
    "\t$(CUTWRIGHT) build --output out -- 'it'\\''s $$5' && touch out/cutwright.mk",
    'episode.yaml:',
    'cuts:',
    '',
  ]);
});

test('a name that a tool cannot be told of', () => {
  expect(unwritablePath('ninja', FILE)).toBeUndefined();
  expect(unwritablePath('make', FILE)).toBeUndefined();
  const odd = { ...FILE, inputs: ['a;b.cut'] };
  expect(unwritablePath('make', odd)).toBe('a;b.cut');
  expect(unwritablePath('ninja', odd)).toBeUndefined();
  expect(unwritablePath('ninja', { ...FILE, inputs: ['a|b.cut', 'a\nb.cut'] })).toBe('a|b.cut');
});

test('ninja prints a cut again that hangs on other files, however their names run together', () => {
  const named = (...inputs: string[]) =>
    /inputs = 2 (\S+)/.exec(
      buildFileText('ninja', { ...FILE, rules: [{ output: 'x.pdf', cut: 'x.cut', inputs }] }),
    )![1];
  expect(named('a', 'bc')).toBe(named('a', 'bc'));
  expect(named('a', 'bc')).not.toBe(named('ab', 'c'));
});

test('both say what made them, and print without options where none were given', () => {
  for (const [tool, print] of [
    ['ninja', 'cutwright} build --output $out -- $in'],
    ['make', '$(CUTWRIGHT) build --output out/-2.pdf -- ./-2.cut'],
  ] as const) {
    const text = buildFileText(tool, { ...FILE, options: [] });
    expect(text.split('\n')[0]).toMatch(
      new RegExp(`^# Made by \`cutwright build --plan ${tool}\`, and made anew`),
    );
    expect(text).toContain(print);
  }
});
