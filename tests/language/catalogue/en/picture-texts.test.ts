import { describe, expect, it, test } from 'vitest';
import type { UnreadableScan } from '../../../../src/language/catalogue/picture-codes.js';
import { diagnose } from '../../../../src/language/diagnostic.js';
import { messageOf } from '../../../../src/language/message.js';

const span = { file: 'a.cut', start: 0, end: 0 };
const unreadable = (reason: UnreadableScan, others = 0) =>
  messageOf(diagnose('scan-unreadable', span, { file: 'A1.png', level: 'A', reason, others }), 'en');

describe('a scan that cannot be read', () => {
  test.each([
    [{ why: 'machine', reason: 'permission denied' }, 'permission denied'],
    [{ why: 'format' }, 'it is no PNG, JPEG or WebP'],
    [{ why: 'broken' }, 'it is cut off or damaged'],
    [
      { why: 'size', width: 20000, height: 300, most: 16384, mostMillions: 128 },
      'it is 20000 × 300 pixels; 16384 on a side and 128 million in all are the most',
    ],
  ] as const)('%j', (reason, words) => {
    expect(unreadable(reason)).toBe(`\`A1.png\` cannot be shown: ${words}.`);
  });

  it('counts those that are like it', () => {
    expect(unreadable({ why: 'broken' }, 1)).toContain('for 1 more drawing of level A.');
    expect(unreadable({ why: 'broken' }, 3)).toContain('for 3 more drawings of level A.');
  });
});

it('says of a scan that lies elsewhere what is allowed, with and without an episode', () => {
  const outside = (inEpisode: boolean) =>
    messageOf(diagnose('scan-outside', span, { path: '../a.png', inEpisode }), 'en');
  expect(outside(true)).toContain('not below the folder of the episode');
  expect(outside(false)).toContain('without an episode.yaml');
});
