import { expect, it } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { openCanvas } from '../../src/shoot/canvas-kit.js';

it('paints with the shipped font, in both weights', () => {
  const kit = openCanvas(memoryHost())!;
  const context = kit.createCanvas(300, 60).getContext('2d');
  const widths = ['regular', 'bold'].map((weight) => {
    context.font = `${weight === 'bold' ? 'bold ' : ''}40px ${kit.family}`;
    return context.measureText('潮が満ちる Wait').width;
  });
  expect(kit.family).not.toBe('sans-serif');
  expect(widths[1]).toBeGreaterThan(widths[0]!);
});

it('is null where the package is not installed', () => {
  const host = memoryHost();
  host.withoutCanvas = true;
  expect(openCanvas(host)).toBeNull();
});
