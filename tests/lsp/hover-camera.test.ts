import { describe, expect, test } from 'vitest';
import { fieldText, moveText } from '../../src/lsp/hover-camera.js';
import { opened } from './opened.js';

const cut = (lines: string) => `cut 1\ntime 2+0\nstack BG A\n${lines}\nA: 1..\n`;
const field = async (lines: string, name: string) => fieldText((await opened(cut(lines))).analysis, name);

describe('a field', () => {
  test('is told in millimetres, in percent, and on the chart', async () => {
    // Half of 254 × 142.875 mm; 12 fields; a step of the chart is a 24th of the standard width: 254 / 24 = 10.58 mm.
    expect(await field('field A 50% at 21.1667,0', 'A')).toBe(
      'Field `A`: 127 × 71.44 mm, 50 % of the standard field  \ncentre 21.17, 0 mm; on the 12-field chart 6F 2E',
    );
  });

  test('`full` is the standard field, and needs no statement', async () => {
    expect(await field('', 'full')).toBe(
      'Field `full`: 254 × 142.88 mm, 100 % of the standard field  \ncentre 0, 0 mm; on the 12-field chart 12F',
    );
  });

  test('nobody has defined says nothing', async () => {
    expect(await field('', 'wide')).toBeNull();
  });

  test('says its turn, and whether that is clockwise', async () => {
    expect(await field('field A 50% cw 5', 'A')).toContain(', turned 5° clockwise; ');
    expect(await field('field A 50% ccw 5', 'A')).toContain(', turned 5° counter-clockwise; ');
  });
});

describe('a move', () => {
  const text = async (lines: string) => {
    const { analysis, at } = await opened(cut(lines));
    return moveText(analysis, at('pan '), 'c1.cut');
  };

  test('says its frames, its way, its speed and its largest step', async () => {
    // 110 mm over 22 steps are 5 mm a frame, and 5 / 254 = 1.97 %.
    expect(await text('field A full\nfield B full at 110,0\npan A@1 > B@23')).toMatch(
      /^Pan: frames 2–23, 22 frames \(0\+22\) in 22 steps {2}\nway 110 mm, 5 mm\/f throughout {2}\nlargest step 5 mm on frame 2: 1\.97 % /,
    );
  });

  test('of a statement that is none says nothing', async () => {
    const { analysis } = await opened(cut('field A full\nfield B full at 110,0\npan A@1 > B@23'));
    expect(moveText(analysis, 0, 'c1.cut')).toBeNull();
    expect(moveText(analysis, analysis.text.text.indexOf('pan '), 'other.cut')).toBeNull();
  });
});
