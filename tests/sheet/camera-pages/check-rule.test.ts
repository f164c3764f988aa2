import { describe, expect, test } from 'vitest';
import { checkRule, RULE_ROOM } from '../../../src/sheet/camera-pages/check-rule.js';
import { smallestTextMm } from '../../../src/sheet/paper-sizes.js';
import { wordsOf } from '../../../src/words/words.js';
import { boundsOf, linesOf, lookOf, textsOf } from '../laid.js';

const body = { x: 12, y: 40, width: 150, height: 100 };

describe.each(['en', 'ja'] as const)('the rule (%s)', (labels) => {
  const look = lookOf({ labels });
  const marks = checkRule(body, look, wordsOf(look.settings).cameraPages);
  const lines = linesOf(marks);

  test('is 100 mm long, with a stroke every 10 mm and a longer one every 50', () => {
    const [rule, ...strokes] = lines;
    expect(Math.abs(rule!.x2 - rule!.x1)).toBe(100);
    expect(rule!.y1).toBe(rule!.y2);
    expect(strokes.map(({ x1 }) => x1 - rule!.x1)).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100]);
    for (const { x1, x2, y1 } of strokes) expect([x1, y1]).toEqual([x2, rule!.y1]);
    const heights = strokes.map(({ y1, y2 }) => y1 - y2);
    const long = heights.map((high) => high > 3);
    expect(long).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100].map((mm) => mm % 50 === 0));
  });

  test('stands with its words in the room that is left for it', () => {
    const [text, ...more] = textsOf(marks);
    expect(more).toEqual([]);
    const { left, right, top, bottom } = boundsOf(text!);
    expect(left).toBeGreaterThan(lines[0]!.x2);
    expect(right).toBeLessThanOrEqual(body.x + body.width);
    expect(text!.sizeMm).toBeGreaterThanOrEqual(smallestTextMm(look.settings.paper));
    const ys = [top, bottom, ...lines.flatMap(({ y1, y2 }) => [y1, y2])];
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(body.y + body.height - RULE_ROOM);
    expect(Math.max(...ys)).toBeLessThanOrEqual(body.y + body.height);
  });
});
