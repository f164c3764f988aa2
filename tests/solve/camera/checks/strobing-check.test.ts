import { describe, expect, it } from 'vitest';
import { messageOf, noteOf } from '../../../../src/language/message.js';
import type { Field, Move } from '../../../../src/shot/camera/camera-model.js';
import { codes, FULL, field, leg, level, pan, pull, type Scene, solved, truck, W } from '../build.js';

const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): Scene => ({ levels, moves });

describe('speed', () => {
  it('names the frames that strobe, and what would be safe', () => {
    const { diagnostics } = solved(of(pull(['BG'], 'right', 72, 3, 26)));
    const found = diagnostics.find(({ code }) => code === 'strobing')!;
    expect(messageOf(found, 'en')).toContain(
      'On frames 3-26 the picture passes at up to 3 mm a frame, 1/85 of',
    );
    expect(noteOf(found.notes[0]!, 'en')).toContain('Up to 2.12 mm a frame it is safe, and from 5.29 mm');
    expect(diagnostics.map(({ code }) => code)).not.toContain('judder');
  });

  // Drawn-animation rule attributed to T. White, joshuanava.biz/drawn-animation (fc-utk, info-sfn): in a pan with a truck the
  // outer edges strobe first, though the centre keeps within 0.1 in.
  it('of a truck is that of the fastest point of the picture', () => {
    const of24 = (to: Partial<Field>) => ({
      moves: [truck([leg(FULL, 1, field('T', to), 25)])],
    });
    // To half the width about the right edge: on the last step the left edge passes by the whole change of the width,
    // 1/48 of the full width, from a field that is 1/2 + 1/48 of it: 1/25. On the first ones it strobes.
    const about = of24({ widthMm: W / 2, xMm: W / 4 });
    const found = solved(about).diagnostics.find(({ code }) => code === 'strobing');
    expect(found).toBeUndefined();
    // 10 % smaller and a fifth of a width to the right in 48 frames: the centre passes at 1/240 of the full width, the left
    // edge at (1/5 + 1/20) / 48 of it, 1/192; a wider way strobes at the edge alone.
    const slow = (xMm: number) => ({
      length: 49,
      moves: [truck([leg(FULL, 1, field('T', { widthMm: W * 0.9, xMm }), 49)])],
    });
    expect(codes(slow(W / 5))).not.toContain('strobing');
    // The centre at 0.37/48 = 1/130, under the limit; the left edge at (0.37 + 0.05)/48 = 1/114 of the full width.
    const edge = solved(slow(0.37 * W)).diagnostics.find(({ code }) => code === 'strobing')!;
    expect(messageOf(edge, 'en')).toContain('the edge of the picture passes at up to');
    expect(codes(slow(0.3 * W))).not.toContain('strobing');
  });

  it('is what camera and levels do together', () => {
    const moving = (away: number) => ({
      levels: [level('A')],
      moves: [
        pan([leg(FULL, 1, field('T', { xMm: 72 }), 25)]),
        pull(['A'], away > 0 ? 'right' : 'left', Math.abs(away), 2, 25),
      ],
    });
    // 3 mm a frame strobe; together with a level that goes along nothing passes, against it twice as much does.
    expect(codes(moving(72)).filter((code) => code === 'strobing')).toEqual([]);
    const found = solved(moving(-24)).diagnostics.find(({ code }) => code === 'strobing')!;
    expect(messageOf(found, 'en')).toContain('at up to 4 mm a frame');
  });

  it('is nothing where every level is carried', () => {
    const carried = pan([leg(FULL, 1, field('T', { xMm: 72 }), 25)], { carry: ['A'] });
    expect(codes({ levels: [level('A')], moves: [carried] })).not.toContain('strobing');
    expect(codes({ levels: [level('BG'), level('A')], moves: [carried] })).toContain('strobing');
  });

  it('on twos is that of the whole step', () => {
    // 1.5 mm a frame is under the limit; on twos 3 mm are seen at once.
    const on = (frames: number) => of(pull(['BG'], 'right', 36, 1, 24, { on: frames }));
    expect(codes(on(1))).not.toContain('strobing');
    expect(codes(on(2))).toContain('strobing');
  });

  it('counts on the field that the camera has then', () => {
    const close = { ...of(pull(['BG'], 'right', 24, 1, 24)), rest: field('C', { widthMm: 100 }) };
    expect(codes(close)).toContain('strobing');
    expect(codes(of(pull(['BG'], 'right', 24, 1, 24)))).not.toContain('strobing');
  });
});
