/** Edits that the checks of the camera offer, made and checked again. */

import { describe, expect, test } from 'vitest';
import { withEdits } from '../../../src/language/statement-reader.js';
import { compileText } from '../../compile.js';

/** The text after the edit that a message offers, or null. */
function mended(text: string, code: string, files: Record<string, string> = {}): string | null {
  const found = compileText(text, files).diagnostics.filter((one) => one.code === code);
  expect(found).toHaveLength(1);
  const { fix } = found[0]!;
  if (!fix) return null;
  return withEdits(
    text,
    fix.edits.map(({ span, text: by }) => ({ ...span, text: by })),
  );
}

const codes = (text: string) => compileText(text).diagnostics.map(({ code }) => code);

describe('artwork whose edge shows', () => {
  const pan = 'field A full at 60,0\npan full@1 > A@2+0\n';

  test.each([
    // 254 wide, 60 to the right of the home: 2 x (60 + 127).
    ['level BG size 300x150mm', 'level BG size 374x150mm'],
    // The home is where the pan ends: 2 x (127 + 60) again, to the other side.
    ['level BG at 60,0 size 300x150mm', 'level BG at 60,0 size 374x150mm'],
    ['level BG size 300x100mm carry', 'level BG size 300x143mm carry'],
    ['level BG size 10inx14cm at 30,0', 'level BG size 314x143mm at 30,0'],
  ])('%s is to be painted larger about its centre', (line, wanted) => {
    const text = `cut 1\ntime 2+0\nA: 1..\nlevel A free\n${line}\n${pan}`;
    const after = mended(text, 'artwork-edge')!;
    expect(after).toBe(text.replace(line, wanted));
    expect(codes(after)).not.toContain('artwork-edge');
  });

  test('is large enough after the edit whatever moves', () => {
    for (const moves of [
      'turn level BG 0@1 > 33@2+0 cw about 20,10',
      'truck level BG 100%@1 > 61%@2+0 about -40,12',
      'field A 120% at 33,-21 cw 17\ntruck full@1 > A@2+0',
      'shake 7mm 1..2+0\npull BG left 31.7mm 1..2+0',
    ]) {
      const text = `cut 1\ntime 2+0\nA: 1..\nlevel A free\nlevel BG size 200x100mm at 3,4\n${moves}\n`;
      expect(codes(mended(text, 'artwork-edge')!), moves).not.toContain('artwork-edge');
    }
  });

  test('is left alone where no size is written, or a house file says it', () => {
    expect(mended(`cut 1\ntime 2+0\nA: 1..\n${pan}`, 'artwork-edge')).toBeNull();
    const house = { 'house.cut': 'level BG size 300x150mm\n' };
    const text = `use "house.cut"\ncut 1\ntime 2+0\nstack BG A\nlevel A free\nA: 1..\n${pan}`;
    expect(mended(text, 'artwork-edge', house)).toBeNull();
  });
});
