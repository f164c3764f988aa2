import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Compiled } from '../../src/episode/compile-cut.js';
import { jsonText, pixelsOf, toJson } from '../../src/export/cut-json.js';
import { defaults } from '../../src/shot/settings.js';
import type { PlacementFrame } from '../../src/solve/camera/solved-camera.js';
import { compileFiles, compileText } from '../compile.js';

const schema = JSON.parse(readFileSync('src/export/schema.json', 'utf8'));
const validate = new Ajv({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);

const exported = ({ solved, diagnostics, sources }: Compiled) => toJson(solved!, diagnostics, sources);

/** Complaints of the schema, none where it is content. */
function faults(value: unknown): string[] {
  validate(value);
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}

test('levels that are drawn to one another, and masks, are named only where there are some', () => {
  const text = 'cut 3\ntime 1+0\nstack BG A B C\nlevel B with A\nlevel C masks A,B\nA: 1..\nB: 1..\nC: 1..\n';
  const [, a, b, c] = toJson(compileText(text).solved!, []).levels;
  expect([a!.drawnWith, b!.drawnWith, c!.drawnWith]).toEqual([['B'], ['A'], undefined]);
  expect([a!.masks, c!.masks]).toEqual([undefined, ['A', 'B']]);
});

describe('the examples', () => {
  let cuts: Map<string, Compiled>;
  beforeAll(async () => {
    cuts = await compileFiles('examples/saltmarsh', 'examples/west');
  });

  test('fit the schema', () => {
    expect(cuts.size).toBeGreaterThanOrEqual(13);
    for (const [name, cut] of cuts) expect(faults(JSON.parse(jsonText(exported(cut)))), name).toEqual([]);
  });

  test('have one exposure a frame, and a drawing for each number that is shown', () => {
    for (const cut of cuts.values()) {
      const { levels, length, camera, placement } = exported(cut);
      expect(camera.map(({ frame }) => frame)).toEqual(Array.from({ length }, (_, i) => i + 1));
      expect(Object.keys(placement).sort()).toEqual(levels.map(({ name }) => name).sort());
      for (const { exposures, drawings } of levels.filter((level) => level.exposures.length > 0)) {
        expect(exposures.map(({ frame }) => frame)).toEqual(Array.from({ length }, (_, i) => i + 1));
        const shown = new Set(exposures.flatMap(({ cel }) => cel ?? []));
        expect(new Set(drawings.map(({ cel }) => cel))).toEqual(shown);
        for (const { cel, firstFrame } of drawings) {
          expect(exposures.findIndex((one) => one.cel === cel) + 1).toBe(firstFrame);
        }
      }
    }
  });
});

describe('the fixed parts', () => {
  // Worked out by hand: twos, so 1 on 1-2, the in-between on 3-4, 2 on 5-6, empty on 7-8, 2 again from 9 on.
  const cut = compileText('cut 12A "Rooftop, dusk"\ntime 0+12\nfps 24\nA "Nao": 1{late}-2 x 2..\n');

  test('stand as the design has them', () => {
    expect(exported(cut)).toMatchObject({
      version: 1,
      cut: '12A',
      title: 'Rooftop, dusk',
      fps: 24,
      time: 12,
      length: 12,
      handles: { head: 0, tail: 0 },
      counts: { keys: 2, breakdowns: 0, inbetweens: 1, drawings: 3 },
    });
    const level = exported(cut).levels.find(({ name }) => name === 'A')!;
    expect(level.title).toBe('Nao');
    expect(level.exposures.map(({ kind, drawing, cel, starts }) => [kind, drawing, cel, starts])).toEqual([
      ['key', '1', 1, true],
      ['key', '1', 1, false],
      ['inbetween', '1.1', 2, true],
      ['inbetween', '1.1', 2, false],
      ['key', '2', 3, true],
      ['key', '2', 3, false],
      ['empty', null, null, true],
      ['empty', null, null, false],
      ['key', '2', 3, true],
      ['key', '2', 3, false],
      ['key', '2', 3, false],
      ['key', '2', 3, false],
    ]);
    expect(level.drawings).toEqual([
      { cel: 1, drawing: '1', kind: 'key', firstFrame: 1 },
      { cel: 2, drawing: '1.1', kind: 'inbetween', firstFrame: 3 },
      { cel: 3, drawing: '2', kind: 'key', firstFrame: 5 },
    ]);
    expect(level.passages).toEqual([{ from: '1', to: '2', fractions: [0.75] }]);
  });

  test('a cut without a move has the camera on the standard field throughout', () => {
    const { camera, artwork } = exported(cut);
    // Standard field 254 × 142.875 mm (recommended layout paper of Japan's producers' association), a 12-field chart.
    expect(camera).toHaveLength(12);
    expect(camera[5]).toEqual({ frame: 6, x: 0, y: 0, width: 254, percent: 100, field: 12, rotation: 0 });
    expect(artwork.A).toMatchObject({ neededWidth: 254, neededHeight: 142.875, neededX: 0, neededY: 0 });
  });

  test('remarks carry their line and column', () => {
    const { diagnostics } = exported(compileText('cut 1\ntime 1+0\nA: 1--2..\nB: x..\n'));
    expect(diagnostics).toMatchObject([
      { code: 'level-empty', severity: 'warning', file: 'this.cut', line: 4 },
    ]);
  });
});

describe('the schema is strict', () => {
  const good = () => JSON.parse(jsonText(exported(compileText('cut 1\ntime 1+0\nA: 1--2 x..\n'))));
  const changed = (change: (value: ReturnType<typeof good>) => void) => {
    const value = good();
    change(value);
    return faults(value);
  };

  test('it takes what is exported', () => {
    expect(faults(good())).toEqual([]);
  });

  test.each<[string, (value: ReturnType<typeof good>) => void]>([
    ['a further key', (value) => (value.more = 1)],
    ['a further key in an exposure', (value) => (value.levels.at(-1).exposures[0].more = 1)],
    ['a missing key', (value) => delete value.time],
    ['another version', (value) => (value.version = 2)],
    ['frame 0', (value) => (value.levels.at(-1).exposures[0].frame = 0)],
    ['a key without a number', (value) => (value.levels.at(-1).exposures[0].cel = null)],
    ['an empty frame with a number', (value) => (value.levels.at(-1).exposures.at(-1).cel = 3)],
    ['an unknown kind', (value) => (value.levels.at(-1).drawings[0].kind = 'sketch')],
    ['a fraction of 1', (value) => (value.levels.at(-1).passages[0].fractions[0] = 1)],
  ])('it refuses %s', (_, change) => {
    expect(changed(change)).not.toEqual([]);
  });
});

describe('the text', () => {
  test('is the value, whatever stands in it', () => {
    const odd = exported(
      compileText('cut 1 "a: \\"b, c\\\\ \u2028 {あ}"\ntime 1+0\nmemo ":,"\nA ",:": 1..\n'),
    );
    expect(JSON.parse(jsonText(odd))).toEqual(odd);
    expect(odd.title).toBe('a: "b, c\\ \u2028 {あ}');
  });

  test('has a line a frame, so that two exports can be compared line by line', () => {
    const text = jsonText(exported(compileText('cut 1\ntime 1+0\nA: 1..\n')));
    expect(text.match(/^ *\{ ?"frame": \d+, "kind": "key", .*\},?$/gm)).toHaveLength(24);
  });
});

const at = (screenX: number, screenY: number): PlacementFrame => ({ screenX, screenY }) as PlacementFrame;
const settings = {
  ...defaults,
  field: { widthMm: 200, heightMm: 100 },
  output: { width: 1920, height: 1080 },
};

describe('millimetres of the field as pixels of the picture', () => {
  test('the edges of the field are the edges of the picture', () => {
    expect(pixelsOf(at(100, 50), settings)).toEqual({ pixelX: 960, pixelY: 540 });
    expect(pixelsOf(at(-100, -50), settings)).toEqual({ pixelX: -960, pixelY: -540 });
  });

  test('the centre is 0, 0', () => {
    expect(pixelsOf(at(0, 0), settings)).toEqual({ pixelX: 0, pixelY: 0 });
  });

  test('fractions are kept', () => {
    expect(pixelsOf(at(0.01, 0.01), settings).pixelX).toBeCloseTo(0.096, 12);
    expect(pixelsOf(at(0.01, 0.01), settings).pixelY).toBeCloseTo(0.108, 12);
  });
});
