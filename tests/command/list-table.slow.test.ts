/** The whole demo episode on a narrow terminal: its pages are laid out to be counted, which takes long. */

import { expect, test } from 'vitest';
import { demoWorld } from './demo.js';
import { run } from './run.js';

test('the table leaves columns out where the terminal is narrow, and says which', async () => {
  const { out } = await run(Object.assign(demoWorld(), { columns: 80 }), 'list');
  const lines = out.split('\n');
  for (const line of lines.slice(0, 32)) expect(line.length, line).toBeLessThanOrEqual(80);
  expect(lines[0]).toMatch(/^cut +title +scene +time +keys +in-betw\. +drawings +camera +artist$/);
  expect(out).toMatch(/^Left out here, for want of width: levels, breakd\., reused, pages, feet\.$/m);
});
