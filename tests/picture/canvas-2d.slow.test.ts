/** The painter's part of the canvas interface is one that a browser's canvas really has. */

import ts from 'typescript';
import { expect, it } from 'vitest';

const PROBE = 'tests/picture/probe.ts';

/** What the compiler says of a text beside this file, with the types of a browser. */
function faultsOf(text: string): string[] {
  const options: ts.CompilerOptions = {
    strict: true,
    exactOptionalPropertyTypes: true,
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    lib: ['lib.es2023.d.ts', 'lib.dom.d.ts'],
    types: [],
    skipLibCheck: true,
    noEmit: true,
  };
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (name, target) =>
    name === PROBE ? ts.createSourceFile(name, text, target) : getSourceFile.call(host, name, target);
  host.fileExists = (name) => name === PROBE || fileExists.call(host, name);
  host.readFile = (name) => (name === PROBE ? text : readFile.call(host, name));
  const program = ts.createProgram([PROBE], options, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, '\n'));
}

const IMPORT = "import type { Canvas2D } from '../../src/picture/canvas-2d.js';\n";

it('is satisfied by the context of a browser', () => {
  expect(
    faultsOf(
      `${IMPORT}export const use = (c: CanvasRenderingContext2D): Canvas2D<CanvasImageSource> => c;\n`,
    ),
  ).toEqual([]);
  expect(
    faultsOf(
      `${IMPORT}export const use = (c: OffscreenCanvasRenderingContext2D): Canvas2D<ImageBitmap> => c;\n`,
    ),
  ).toEqual([]);
});

it('is not satisfied by just anything', () => {
  expect(
    faultsOf(`${IMPORT}export const use = (c: ImageBitmapRenderingContext): Canvas2D<ImageBitmap> => c;\n`),
  ).toHaveLength(1);
});
