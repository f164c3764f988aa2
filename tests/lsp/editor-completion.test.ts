import { describe, expect, test } from 'vitest';
import { InsertTextFormat } from 'vscode-languageserver';
import { parse } from '../../src/language/parse.js';
import {
  filesOffered,
  headings,
  statementWords,
  tradeWordsOffered,
} from '../../src/lsp/editor-completion.js';
import { loadReference } from '../../src/reference/reference-language.js';
import { englishIn } from '../japanese-text.js';
import { labelsOffered, offeredIn } from './offered.js';
import { opened } from './opened.js';

describe('words that begin a statement', () => {
  test('have their example as a snippet, with stops where it is filled in', () => {
    const mark = statementWords(true, 'en').find(({ label }) => label === 'mark')!;
    expect(mark.insertTextFormat).toBe(InsertTextFormat.Snippet);
    expect(mark.insertText).toMatch(/^mark \$\{1:[^}]+\} \$\{2:[^}]+\}/);
  });

  test.each(statementWords(true, 'en'))(
    '$label, its snippet accepted as it is, can be read',
    ({ detail, insertText }) => {
      const typed = insertText!.replace(/\$\{\d+:((?:\\.|[^}])*)\}/g, '$1').replace(/\\([\\$}])/g, '$1');
      expect(typed).toBe(detail);
      expect(parse('', typed).diagnostics).toEqual([]);
    },
  );

  test('are only the word for an editor that takes no snippets', () => {
    for (const { label, insertText, insertTextFormat } of statementWords(false, 'en'))
      expect([insertText, insertTextFormat]).toEqual([label, undefined]);
  });
});

test('levels without a timeline are offered as the beginning of one, but not the background', async () => {
  const { analysis } = await opened('cut 1\ntime 1+0\nstack BG A B\nA: 1..\n');
  expect(headings(analysis).map(({ label, insertText }) => [label, insertText])).toEqual([['B', 'B: ']]);
});

describe('at the beginning of a line', () => {
  test('are the words of the language, and levels without a timeline', async () => {
    const found = await labelsOffered('cut 1\ntime 1+0\nstack BG A B\nA: 1..\n|');
    expect(found).toEqual(expect.arrayContaining(['time', 'pan', 'voice', 'B']));
    expect(found).not.toContain('A');
  });

  test('what was typed of a word is replaced', async () => {
    const pan = (await offeredIn('cut 1\ntime 1+0\npa|\nA: 1..\n')).find(({ label }) => label === 'pan')!;
    expect(pan.text).toBe('cut 1\ntime 1+0\npan\nA: 1..\n');
  });
});

describe('in a move', () => {
  test('directions stand behind a field that has no frame yet', async () => {
    const cut = (pan: string) => `cut 1\ntime 1+0\nfield near 60%\n${pan}\nA: 1..\n`;
    expect(await labelsOffered(cut('pan full@1 > near |'))).toEqual(['left', 'right', 'up', 'down']);
    expect(await labelsOffered(cut('pan full@1 > near > near r|'))).toContain('right');
  });

  test('fields stand where one goes', async () => {
    expect(await labelsOffered('cut 1\ntime 1+0\nfield near 60%\npan |\nA: 1..\n')).toEqual(
      expect.arrayContaining(['full', 'near']),
    );
  });

  test('levels stand behind `carry`', async () => {
    const found = await labelsOffered(
      'cut 1\ntime 1+0\nstack BG A\nfield B full at 5,0\npan full@1 > B@24 carry |\nA: 1..\n',
    );
    expect(found).toEqual(expect.arrayContaining(['A', 'BG']));
    expect(found).not.toContain('full');
  });

  const begun = 'cut 1\ntime 1+0\nstack BG A\nfield B full at 5,0\n';

  test('options stand in the order of their use, and only those that say something of it', async () => {
    const inOrder = async (move: string) =>
      (await offeredIn(`${begun}${move} |\nA: 1..\n`))
        .sort((a, b) => (a.sortText! < b.sortText! ? -1 : 1))
        .map(({ label }) => label)
        .join(' ');
    expect(await inOrder('pan full@1 > B@24')).toBe(
      'ease curve steps curved carry on graduated left right up down',
    );
    expect(await inOrder('truck level A 100%@1 > 80%@24')).toBe(
      'ease curve steps fair about on graduated log',
    );
    expect(await inOrder('turn level A 0@1 > 90@24')).toBe('ease curve about cw ccw on graduated');
    expect(await inOrder('pull A left 3mm/f 1..24')).toBe('ease curve steps loop on graduated');
  });

  test('a blank is a question only where something has to follow', async () => {
    const blank = { blank: true };
    expect(await labelsOffered(`${begun}pan full@1 > B@24 |\nA: 1..\n`, blank)).toEqual([]);
    expect(await labelsOffered(`${begun}pan full@1 > B@24 carry |\nA: 1..\n`, blank)).toContain('A');
    expect(await labelsOffered(`${begun}pan |\nA: 1..\n`, blank)).toContain('B');
  });

  test('what is half typed is no name', async () => {
    const found = await labelsOffered(`${begun}pan full@1 > nea|@24\nA: 1..\n`);
    expect(found).toContain('full');
    expect(found).not.toContain('nea');
    expect(await labelsOffered(`cut 1\ntime 1+0\nstack BG A HA|\nA: 1..\n`)).toEqual(['BG', 'A']);
  });
});

describe('of other cuts', () => {
  const files = {
    'episode.yaml': '',
    'c8.cut': 'cut 8 "The ferry"\ntime 1+0\nC "Oda": 1..\nD: 1..\n',
    'c10.cut': 'cut 10\ntime 1+0\nA: 1..\n',
  };

  test('are the numbers, in story order and without this cut', async () => {
    const found = await offeredIn('cut 1\ntime 1+0\nlevel A reuse |\nA: 1..\n', { files });
    expect(found.map(({ label, detail }) => [label, detail])).toEqual([
      ['8', 'The ferry'],
      ['10', ''],
    ]);
    expect(found[0]!.text).toContain('level A reuse 8/\n');
  });

  test('are the levels of the one that stands before the slash', async () => {
    const found = await offeredIn('cut 1\ntime 1+0\nlevel A reuse 8/|\nA: 1..\n', { files });
    expect(found.map(({ label, detail }) => [label, detail])).toEqual([
      ['C', 'Oda'],
      ['D', ''],
    ]);
  });
});

describe('in quotes', () => {
  const files = {
    'episode.yaml': '',
    'house.cut': 'phrase walk = 1-2\n',
    'more/shared.cut': 'phrase run = 1-2\n',
    'c8.cut': 'cut 8\ntime 1+0\nA: 1..\n',
  };

  test('behind `track` are recordings of the episode', async () => {
    const recorded = { ...files, 'sound/c1.wav': 'x', 'sound/notes.txt': 'x' };
    expect(await labelsOffered('cut 1\ntime 1+0\ntrack "|\nA: 1..\n', { files: recorded })).toEqual([
      'sound/c1.wav',
    ]);
  });

  test('behind `use` are shared files, and no cuts', async () => {
    expect(await labelsOffered('cut 1\ntime 1+0\nuse "|\nA: 1..\n', { files })).toEqual([
      'house.cut',
      'more/shared.cut',
    ]);
  });

  test('behind `use` is nothing that says a cut, however it is written, and nothing that is used already', async () => {
    const more = {
      ...files,
      'old/take.cut': 'cut　８\ntime 1+0\nA: 1..\n',
      'empty.cut': '',
      'b.cut': 'A: 1..\n',
    };
    expect(await labelsOffered('cut 1\nuse "house.cut"\nuse "|\nA: 1..\n', { files: more })).toEqual([
      'more/shared.cut',
    ]);
  });

  test('behind `artist` are those of the manifest', async () => {
    const staffed = { ...files, 'episode.yaml': 'artists:\n  M. Arai: [1, 2]\n  R. Oda: [3]\n' };
    expect(await labelsOffered('cut 1\nartist "|\ntime 1+0\nA: 1..\n', { files: staffed })).toEqual([
      'M. Arai',
      'R. Oda',
    ]);
  });

  test('behind `voice` are the speakers, each once and without the one that is being typed', async () => {
    expect(
      await labelsOffered('cut 1\ntime 1+0\nA: 1..\nvoice "Nao" 1..6 "Oh"\nvoice "Na|" 7..9 "Ah"\n'),
    ).toEqual(['Nao']);
  });

  test('behind `voice` are the speakers, each once', async () => {
    const lines = 'voice "Nao" 1..6 "Oh"\nvoice "Pim" 7..9 "Ah"\nvoice "Nao" 10..12 "So"\n';
    expect(await labelsOffered(`cut 1\ntime 1+0\nA: 1..\n${lines}voice "|\n`)).toEqual(['Nao', 'Pim']);
  });

  test('of any other text there is nothing', async () => {
    expect(await labelsOffered('cut 1 "|\ntime 1+0\nA: 1..\n')).toEqual([]);
  });

  test('a text that is no file yet has none beside it', async () => {
    const { workspace, analysis } = await opened('cut 1\n', files);
    expect(filesOffered(workspace, { ...analysis, open: { ...analysis.open, path: null } }, 0)).toEqual([]);
  });
});

test('what a first word does is said in the language of the editor', async () => {
  await loadReference('ja');
  const items = [...statementWords(true, 'ja'), ...tradeWordsOffered('t', true, 'ja')];
  for (const { documentation } of items)
    expect(englishIn(String(documentation), ''), String(documentation)).toEqual([]);
  expect(items.find(({ label }) => label === 'fix')!.documentation).toBe('カメラの位置（FIX）');
});
