import { describe, expect, test } from 'vitest';
import type { UserLanguage } from '../../src/language/user-language.js';
import { hoverAt } from '../../src/lsp/hover.js';
import { opened } from './opened.js';

async function said(typed: string, language: UserLanguage = 'en'): Promise<string | null> {
  const { workspace, analysis, cursor } = await opened(typed, {}, { language });
  const hover = hoverAt(workspace, analysis, cursor);
  return hover && (hover.contents as { value: string }).value;
}

describe('a line of dialogue', () => {
  test('says what it is made of, how long it wants to be and how long it has', async () => {
    expect(await said('cut 1\ntime 4+0\nA: 1..\nvoice "Nao" 1..24 "さくら、さ|くら"\n')).toBe(
      '6 morae: the line wants about 1+4; it has 1+0, 6 a second',
    );
  });

  test('that goes on over the end of the cut has no length', async () => {
    expect(await said('cut 1\ntime 4+0\nA: 1..\nvoice "Nao" 1.. "Wait for |me!"\n')).toBe(
      '3 syllables: the line wants about 0+14',
    );
  });

  test('says nothing where nobody can read it', async () => {
    expect(await said('cut 1\ntime 4+0\nA: 1..\nvoice "Nao" 1..24 "行|く"\n')).toBeNull();
  });
});

describe('a mouth', () => {
  const head = 'cut 1\ntime 2+0\n';

  test('says whose it is, and how long each of its drawings is seen', async () => {
    const text = await said(`${head}mouth C "Nao" 1 |2 3 on 3\nvoice "Nao" 13..36 "ああああ"\n`);
    expect(text).toBe(
      [
        'Mouth of “Nao”: 1 line; 2 drawings, on 3, leads by 1 frame',
        'closed 1: C1, 25 frames (1+1)',
        'half 2: not seen',
        'open 3: C2, 23 frames (0+23)',
      ].join('  \n'),
    );
  });

  test('says how many of its lines only flap', async () => {
    const text = await said(
      `${head}|mouth C "Nao" 1 2 3\nvoice "Nao" 1..12 "ああ"\nvoice "Nao" 13..36 "行く"\n`,
    );
    expect(text).toContain('2 lines, 1 not read;');
    expect(text).toContain('**mouth**');
  });
});

test('both are told in Japanese', async () => {
  expect(await said('cut 1\ntime 4+0\nA: 1..\nvoice "Nao" 1..24 "さくら、さ|くら"\n', 'ja')).toBe(
    '6モーラ：セリフの目安は約 1+4。今は 1+0、1秒に 6',
  );
  expect(
    await said('cut 1\ntime 2+0\nmouth C "Nao" 1 |2 3 on 3\nvoice "Nao" 13..36 "ああああ"\n', 'ja'),
  ).toBe(
    [
      '「Nao」の口：セリフ 1、絵2枚、3コマ打ち、1コマ先行',
      '閉じ口 1：C1、25コマ（1+1）',
      '中開き 2：見えない',
      '開き口 3：C2、23コマ（0+23）',
    ].join('  \n'),
  );
});
