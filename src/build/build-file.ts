/** `build --plan`: a file for ninja or make with a rule for each cut, so that these, or many machines, print an episode. */

import { createHash } from 'node:crypto';

/** Programs that a build file can be for. */
export const BUILD_TOOLS = ['ninja', 'make'] as const;
export type BuildTool = (typeof BUILD_TOOLS)[number];

/** What a build file says; paths lead from the folder in which the tool is run. */
export interface BuildFile {
  /** Its own path. */
  readonly path: string;
  /** Where the outputs go. */
  readonly folder: string;
  /** Options of `build` that every cut is printed with, as words. */
  readonly options: readonly string[];
  /** Words behind `cutwright` that make this file anew. */
  readonly command: readonly string[];
  /** Texts, and folders in which texts may appear, that it is made of. */
  readonly inputs: readonly string[];
  /** In which version of the program; another one prints everything anew. */
  readonly program: string;
  readonly rules: readonly BuildRule[];
}

export interface BuildRule {
  readonly output: string;
  readonly cut: string;
  /** All that the print hangs on besides. */
  readonly inputs: readonly string[];
}

/** The name of the file by its tool. */
export const BUILD_FILES: Readonly<Record<BuildTool, string>> = {
  ninja: 'cutwright.ninja',
  make: 'cutwright.mk',
};

/** Characters that a path cannot have there, however it is written. */
const IMPOSSIBLE: Readonly<Record<BuildTool, RegExp>> = {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  ninja: /[|\u0000-\u001f]/,
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  make: /[|\\;=%*?[\]&~\u0000-\u001f]/,
};

/** A path that the tool cannot be told of; undefined: there is none. Cuts are inputs, and outputs are called after them. */
export function unwritablePath(tool: BuildTool, { path, inputs }: BuildFile): string | undefined {
  return [path, ...inputs].find((one) => IMPOSSIBLE[tool].test(one));
}

export function buildFileText(tool: BuildTool, file: BuildFile): string {
  return tool === 'ninja' ? ninjaText(file) : makeText(file);
}

const HEAD = (tool: BuildTool): string =>
  `# Made by \`cutwright build --plan ${tool}\`, and made anew when a text changes; CUTWRIGHT says how the program is called.`;

/** Ninja reads `$`, blanks and colons in paths, and nothing else. */
function ninjaText({ path, folder, options, command, inputs, program, rules }: BuildFile): string {
  const at = (one: string): string => dashed(one).replace(/[$ :]/g, '$$$&');
  const shell = (words: readonly string[]): string => words.map(quoted).join(' ').replaceAll('$', '$$$$');
  const all = (paths: readonly string[]): string => paths.map(at).join(' ');
  const lines = [
    HEAD('ninja'),
    'ninja_required_version = 1.5',
    `builddir = ${folder.replaceAll('$', '$$$$')}`,
    '',
    'rule print',
    `  command = $\${CUTWRIGHT:-cutwright} build ${shell(options)}${options.length > 0 ? ' ' : ''}--output $out -- $in # ${program}, $inputs`,
    '  description = print $in',
    'rule plan',
    `  command = $\${CUTWRIGHT:-cutwright} ${shell(command)} && touch $out`,
    '  description = plan',
    '  generator = 1',
    '',
    ...rules.flatMap((rule) => [
      `build ${at(rule.output)}: print ${at(rule.cut)}${rule.inputs.length > 0 ? ` | ${all(rule.inputs)}` : ''}`,
      // Ninja prints again where a command has changed: a cut that is gone leaves no time behind.
      `  inputs = ${rule.inputs.length} ${nameOf(rule.inputs)}`,
    ]),
    '',
    `build ${at(path)}: plan | ${all(inputs)}`,
    // A text that is gone is no error: this file is made anew then.
    ...inputs.map((one) => `build ${at(one)}: phony`),
    '',
  ];
  return lines.join('\n');
}

function makeText({ path, options, command, inputs, program, rules }: BuildFile): string {
  const at = (one: string): string => dashed(one).replace(/[ #:]/g, '\\$&').replaceAll('$', '$$$$');
  const shell = (words: readonly string[]): string => words.map(quoted).join(' ').replaceAll('$', '$$$$');
  const all = (paths: readonly string[]): string => paths.map(at).join(' ');
  const prints = rules.flatMap(({ output, cut, inputs: more }) => [
    `${at(output)}: ${all([cut, ...more])}`,
    `\t$(CUTWRIGHT) build ${shell([...options, '--output', dashed(output), '--', dashed(cut)])}`,
  ]);
  const lines = [
    HEAD('make'),
    `# ${program}`,
    'CUTWRIGHT ?= cutwright',
    'MAKEFLAGS += --no-builtin-rules',
    '.SUFFIXES:',
    '.PHONY: all',
    `all: ${all(rules.map(({ output }) => output))}`,
    '',
    ...prints,
    '',
    `${at(path)}: ${all(inputs)}`,
    `\t$(CUTWRIGHT) ${shell(command)} && touch ${shell([dashed(path)])}`,
    // A text that is gone is no error: this file is made anew then.
    ...inputs.map((one) => `${at(one)}:`),
    '',
  ];
  return lines.join('\n');
}

/** A short name for a list of files. */
function nameOf(paths: readonly string[]): string {
  return createHash('sha256').update(paths.join('\n')).digest('hex').slice(0, 8);
}

/** A word as a shell reads it back. */
function quoted(word: string): string {
  return /^[\w./:=@%+,-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
}

/** No path may pass for an option. */
function dashed(path: string): string {
  return path.startsWith('-') ? `./${path}` : path;
}
