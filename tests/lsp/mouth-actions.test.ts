import { describe, expect, test } from 'vitest';
import { mouthActions } from '../../src/lsp/mouth-actions.js';
import { compileText } from '../compile.js';
import { opened, uri } from './opened.js';

async function actions(typed: string) {
  const { analysis, cursor } = await opened(typed);
  return mouthActions(analysis, { start: cursor, end: cursor });
}

const LINE = 'voice "Nao" 7..1+20 "Wait for me!"\n';

describe('a mouth is made a timeline', () => {
  test.each([
    'mouth C "Nao" 1 2 3',
    'mouth C "Nao" 1 a 2 i 3 u 4 e 5 o 6 on 1',
    'mouth C "Nao" 1 2 3 on 3 flaps',
    'mouth C "Nao" 1 2 2 lead 3',
  ])('that gives the same frames: %s', async (mouth) => {
    const text = `cut 1\ntime 2+0\n${mouth}\n${LINE}`;
    const [one, ...more] = await actions(text.replace('mouth C', 'mouth| C'));
    expect(more).toEqual([]);
    expect(one).toMatchObject({ title: 'Make it a timeline', kind: 'refactor.rewrite' });
    const [edit] = one!.edit!.changes![uri('c1.cut')]!;
    expect(edit!.range).toEqual({
      start: { line: 2, character: 0 },
      end: { line: 2, character: mouth.length },
    });
    const typed = compileText(text.replace(mouth, edit!.newText));
    expect(typed.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(typed.solved!.levels[1]!.exposures.map(({ again, ...shown }) => shown)).toEqual(
      compileText(text).solved!.levels[1]!.exposures.map(({ again, ...shown }) => shown),
    );
    expect(typed.solved!.levels[1]!.drawings).toEqual(compileText(text).solved!.levels[1]!.drawings);
  });

  test('elsewhere nothing is offered', async () => {
    expect(await actions(`cut 1\ntime 2+0\nmouth C "Nao" 1 2 3\n|${LINE}`)).toEqual([]);
  });

  test('nor for one that has no timeline', async () => {
    expect(await actions(`cut 1\ntime 2+0\nC: 1..\nmouth C| "Nao" 1 2 3\n${LINE}`)).toEqual([]);
  });
});
