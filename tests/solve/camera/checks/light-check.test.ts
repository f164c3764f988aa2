import { describe, expect, it } from 'vitest';
import { messageOf, noteOf } from '../../../../src/language/message.js';
import type { Light } from '../../../../src/shot/camera/camera-model.js';
import { codes, level, said, solved, span } from '../build.js';

const fade = (way: 'in' | 'out', from: number, to: number, white = false): Light => ({
  kind: 'fade',
  way,
  white,
  frames: { from, to },
  span: span(),
});
const glow = (from: number, to: number): Light => ({
  kind: 'glow',
  levels: ['BG'],
  frames: { from, to },
  span: span(),
});
const expose = (from: number, to: number, a: number, b: number): Light => ({
  kind: 'expose',
  levels: ['BG'],
  from,
  to,
  frames: { from: a, to: b },
  span: span(),
});
describe('light', () => {
  it('may not fade twice at once, nor over one frame, nor past the end', () => {
    expect(codes({ light: [fade('in', 1, 24), fade('out', 20, 48)] })).toContain('light-overlaps');
    expect(codes({ light: [fade('in', 1, 24), fade('out', 25, 48)] })).not.toContain('light-overlaps');
    expect(codes({ light: [expose(0, 1, 1, 9), expose(1, 0, 9, 12)] })).toContain('light-overlaps');
    expect(codes({ light: [fade('in', 3, 3)] })).toContain('fade-short');
    expect(codes({ light: [fade('in', 40, 60)] })).toContain('move-past-end');
  });
});
describe('flashes', () => {
  it('are never called harmless: a hint says that the picture is not measured, and the sheet bears a caution', () => {
    const quiet = { light: [fade('in', 1, 12), fade('out', 37, 48)] };
    expect(codes(quiet)).not.toContain('flash-unmeasured');
    expect(solved(quiet).solved.flashes).toBe(false);
    for (const light of [
      [glow(5, 6)],
      [fade('in', 1, 12, true)],
      [expose(0, 0, 9, 9), expose(0, 0, 11, 11)],
    ]) {
      expect(codes({ light })).toContain('flash-unmeasured');
      expect(solved({ light }).solved.flashes).toBe(true);
    }
  });

  it('more than three in any second are a caution that names its standards and is no measurement', () => {
    const four = [glow(5, 6), glow(11, 12), glow(17, 18), glow(28, 29)];
    expect(codes({ light: four.slice(0, 3) })).not.toContain('flashes');
    const { diagnostics } = solved({ light: four });
    const found = diagnostics.find(({ code }) => code === 'flashes')!;
    expect(found.severity).toBe('warning');
    expect(messageOf(found, 'en')).toMatch(
      /4 times within a second, on frames 5 to 28.*WCAG 2\.3\.1, ITU-R BT\.1702/,
    );
    expect(noteOf(found.notes[0]!, 'en')).toMatch(/no measurement.*broadcaster/);
  });

  it('a second apart are none too many', () => {
    expect(codes({ light: [glow(5, 6), glow(11, 12), glow(17, 18), glow(29, 30)] })).not.toContain('flashes');
  });

  it('count white out and in again once, dips to black too, and what flashes together once', () => {
    const white = (at: number) => [fade('out', at, at + 1, true), fade('in', at + 2, at + 3, true)];
    expect(codes({ light: [...white(1), ...white(5), ...white(9)] })).not.toContain('flashes');
    expect(said({ light: [...white(1), ...white(5), ...white(9), ...white(13)] }, 'flashes')[0]).toContain(
      '4 times',
    );
    // WCAG 2.3.1: a flash is a pair of opposing changes, whichever comes first.
    const dips = [1, 5, 9, 13].flatMap((f) => [fade('out', f, f + 1), fade('in', f + 2, f + 3)]);
    expect(codes({ light: dips })).toContain('flashes');
    expect(codes({ light: dips.slice(0, 6) })).not.toContain('flashes');
    const C = level('C', { appears: (frame) => [5, 11, 17].includes(frame) });
    const both = { levels: [level('BG'), C], flashing: ['C'], light: [glow(5, 6), glow(11, 12)] };
    expect(codes(both)).not.toContain('flashes');
    expect(said({ ...both, light: [glow(5, 6), glow(12, 13)] }, 'flashes')[0]).toContain('4 times');
  });

  it('count each drawing of a flashing level that appears', () => {
    const C = level('C', { timed: true, appears: (frame) => frame % 6 === 1 });
    expect(codes({ levels: [C], flashing: ['C'] })).toContain('flashes');
    expect(codes({ levels: [C], flashing: [] })).not.toContain('flashes');
  });
});
