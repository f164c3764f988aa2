import { expect, it } from 'vitest';
import { canvasPackage } from '../../src/host/canvas-package.js';

it('is the package that is installed', () => {
  const canvas = canvasPackage()!.createCanvas(3, 2);
  expect([canvas.width, canvas.height]).toEqual([3, 2]);
});
