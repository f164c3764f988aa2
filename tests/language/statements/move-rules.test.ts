import { describe, expect, test } from 'vitest';
import { bare, readOne, told } from '../read-text.js';

describe('how a leg is spread', () => {
  const spacing = (text: string) => bare(readOne('pull', `pull A up 9mm 1..24 ${text}`).spacing);

  test.each([
    ['ease 12', [{ form: 'ease', leave: { value: 12 }, arrive: { value: 12 } }]],
    ['ease 6 12', [{ form: 'ease', leave: { value: 6 }, arrive: { value: 12 } }]],
    [
      'curve 0.3 -1 0.6 2',
      [{ form: 'curve', values: [{ value: 0.3 }, { value: -1 }, { value: 0.6 }, { value: 2 }] }],
    ],
    [
      'steps 1 2*3 0.5cm',
      [
        {
          form: 'steps',
          steps: [
            { mm: { value: 1 }, times: 1 },
            { mm: { value: 2 }, times: 3 },
            { mm: { value: 5 }, times: 1 },
          ],
        },
      ],
    ],
    ['fair ア@9 65%', [{ form: 'fair', mark: { text: 'ア' }, at: { frames: 9 }, share: { value: 65 } }]],
  ])('%s', (text, read) => {
    expect(spacing(text)).toEqual(
      JSON.parse(
        JSON.stringify(read).replace('{"frames":9}', '{"kind":"position","form":"frames","frames":9}'),
      ),
    );
  });
});

describe('legs', () => {
  test('each have what stands behind them; options are of the whole move', () => {
    const pan = readOne('pan', 'pan A@1 > B@24 ease 6 carry A,B > C@48 on 2');
    expect(bare(pan.from)).toMatchObject({ value: { text: 'A' }, at: { frames: 1 } });
    expect(pan.legs.map(({ spacing }) => spacing.map(({ form }) => form))).toEqual([['ease'], []]);
    expect(bare(pan.options)).toMatchObject({ carry: [{ text: 'A' }, { text: 'B' }], on: { value: 2 } });
  });

  test('an option said twice, behind whichever legs, is reported, and the first holds', () => {
    expect(told('pan A@1 > B@24 on 2 > C@48 on 3')).toMatchObject([{ code: 'part-twice', at: '3' }]);
    expect(told('pan A@1 > B@24 carry A carry B')).toMatchObject([{ code: 'part-twice', at: 'B' }]);
    expect(told('truck A@1 > B@24 log log')).toMatchObject([{ code: 'part-twice', at: 'log' }]);
    expect(told('turn level A 0@1 > 9@9 cw ccw')).toMatchObject([{ code: 'part-twice', at: 'ccw' }]);
  });

  test('of a move that says nothing else have no options', () => {
    expect(readOne('pan', 'pan A@1 > B@24').options).toEqual({
      on: null,
      curved: null,
      graduated: null,
      log: null,
      carry: [],
      about: null,
      sense: null,
      loop: null,
      sideways: null,
    });
  });
});
