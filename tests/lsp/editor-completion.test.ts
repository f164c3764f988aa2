import { describe, expect, test } from 'vitest';
import { InsertTextFormat } from 'vscode-languageserver';
import type { Item } from '../../src/language/tree.js';
import {
  completionsAt,
  filesOffered,
  headings,
  itemLabel,
  line,
  namesOffered,
  statementWords,
} from '../../src/lsp/editor-completion.js';
import { opened } from './opened.js';

describe('a statement in one line', () => {
  test('has its line ends and its blanks drawn together', () => {
    expect(line('  phrase walk =\n    1--2--  ')).toBe('phrase walk = 1--2--');
  });

  test('is cut where it is longer than 60 characters', () => {
    expect(line('x'.repeat(60))).toBe('x'.repeat(60));
    expect(line('x'.repeat(61))).toBe(`${'x'.repeat(59)}…`);
  });
});

describe('names', () => {
  test('have what defines them as their detail, wherever that stands', async () => {
    const { analysis } = await opened('cut 1\ntime 1+0\nA: walk..\nphrase walk = 1--2--\nmark hit 1+0\n');
    expect(namesOffered(analysis, 'phrase').map(({ label, detail }) => [label, detail])).toEqual([
      ['walk', 'phrase walk = 1--2--'],
    ]);
    expect(namesOffered(analysis, 'mark').map(({ label }) => label)).toEqual(['hit']);
  });

  test('of fields have the standard field among them', async () => {
    const { analysis } = await opened('cut 1\ntime 1+0\nfield near 60%\nA: 1..\n');
    expect(namesOffered(analysis, 'field').map(({ label, detail }) => [label, detail])).toEqual([
      ['full', 'the standard field'],
      ['near', 'field near 60%'],
    ]);
  });
});

describe('words that begin a statement', () => {
  test('have their example as a snippet, with stops where it is filled in', () => {
    const mark = statementWords(true).find(({ label }) => label === 'mark')!;
    expect(mark.insertTextFormat).toBe(InsertTextFormat.Snippet);
    expect(mark.insertText).toMatch(/^mark \$\{1:[^}]+\} \$\{2:[^}]+\}/);
  });

  test('are only the word for an editor that takes no snippets', () => {
    for (const { label, insertText, insertTextFormat } of statementWords(false))
      expect([insertText, insertTextFormat]).toEqual([label, undefined]);
  });
});

test('levels without a timeline are offered as the beginning of one, but not the background', async () => {
  const { analysis } = await opened('cut 1\ntime 1+0\nstack BG A B\nA: 1..\n');
  expect(headings(analysis).map(({ label, insertText }) => [label, insertText])).toEqual([['B', 'B: ']]);
});

test('an item is called by what it shows', async () => {
  const { analysis } = await opened('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1-2 1>2.1 x (3) walk..\n');
  const statement = analysis.compiled!.tree!.statements.find(({ kind }) => kind === 'timeline')!;
  const { items } = statement as unknown as { items: readonly Item[] };
  expect(items.map(itemLabel)).toEqual([
    '1',
    'the in-between',
    '2',
    '1>2.1',
    'the empty level',
    'the group',
    'walk',
  ]);
});

interface Asking {
  readonly files?: Readonly<Record<string, string>>;
  readonly blank?: boolean;
}

/** Labels and what an editor would put in for them. */
async function offered(typed: string, { files = {}, blank = false }: Asking = {}) {
  const { workspace, analysis, cursor } = await opened(typed, files);
  const { items } = completionsAt(workspace, analysis, cursor, { snippets: false, blank });
  return items.map(({ label, textEdit, detail }) => {
    const { range, newText } = textEdit as {
      range: Parameters<typeof analysis.text.changed>[0];
      newText: string;
    };
    return { label, detail, text: analysis.text.changed(range, newText).text };
  });
}
const labels = async (typed: string, asking?: Asking) =>
  (await offered(typed, asking)).map(({ label }) => label);

describe('at the beginning of a line', () => {
  test('are the words of the language, and levels without a timeline', async () => {
    const found = await labels('cut 1\ntime 1+0\nstack BG A B\nA: 1..\n|');
    expect(found).toEqual(expect.arrayContaining(['time', 'pan', 'voice', 'B']));
    expect(found).not.toContain('A');
  });

  test('what was typed of a word is replaced', async () => {
    const pan = (await offered('cut 1\ntime 1+0\npa|\nA: 1..\n')).find(({ label }) => label === 'pan')!;
    expect(pan.text).toBe('cut 1\ntime 1+0\npan\nA: 1..\n');
  });
});

describe('in a timeline', () => {
  test('are phrases and the two words', async () => {
    expect(await labels('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1.. |\n')).toEqual(
      expect.arrayContaining(['walk', 'on', 'x']),
    );
  });

  test('behind `@` are the marks, and nothing else', async () => {
    expect(
      await labels('cut 1\ntime 2+0\nmark hit 1+0\nmark miss 1+6\nphrase walk = 1-2\nA: 1 @|\n'),
    ).toEqual(['hit', 'miss']);
  });

  test('inside a brace are the charts', async () => {
    expect(await labels('cut 1\ntime 1+0\nA: 1--{|\n')).toEqual(['even', 'early', 'late', 'both']);
  });

  test('`..` holds the last drawing of a timeline that is too short', async () => {
    const [first] = await offered('cut 1\ntime 1+0\nA: 1:12 2 |\n');
    expect(first).toEqual({
      label: '..',
      detail: 'hold 2 to the end: 10 frames',
      text: 'cut 1\ntime 1+0\nA: 1:12 2..\n',
    });
  });

  test('a blank is no question but for `..`', async () => {
    const phrase = 'phrase walk = 1-2\n';
    expect(await labels(`cut 1\ntime 1+0\n${phrase}A: 1.. |\n`, { blank: true })).toEqual([]);
    expect(await labels(`cut 1\ntime 1+0\n${phrase}A: 1 |\n`, { blank: true })).toEqual(['..']);
  });
});

describe('in a move', () => {
  test('fields stand where one goes', async () => {
    expect(await labels('cut 1\ntime 1+0\nfield near 60%\npan |\nA: 1..\n')).toEqual(
      expect.arrayContaining(['full', 'near']),
    );
  });

  test('levels stand behind `carry`', async () => {
    const found = await labels(
      'cut 1\ntime 1+0\nstack BG A\nfield B full at 5,0\npan full@1 > B@24 carry |\nA: 1..\n',
    );
    expect(found).toEqual(expect.arrayContaining(['A', 'BG']));
    expect(found).not.toContain('full');
  });
});

describe('of other cuts', () => {
  const files = {
    'episode.yaml': '',
    'c8.cut': 'cut 8 "The ferry"\ntime 1+0\nC "Oda": 1..\nD: 1..\n',
    'c10.cut': 'cut 10\ntime 1+0\nA: 1..\n',
  };

  test('are the numbers, in story order and without this cut', async () => {
    const found = await offered('cut 1\ntime 1+0\nlevel A reuse |\nA: 1..\n', { files });
    expect(found.map(({ label, detail }) => [label, detail])).toEqual([
      ['8', 'The ferry'],
      ['10', ''],
    ]);
    expect(found[0]!.text).toContain('level A reuse 8/\n');
  });

  test('are the levels of the one that stands before the slash', async () => {
    const found = await offered('cut 1\ntime 1+0\nlevel A reuse 8/|\nA: 1..\n', { files });
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
    expect(await labels('cut 1\ntime 1+0\ntrack "|\nA: 1..\n', { files: recorded })).toEqual([
      'sound/c1.wav',
    ]);
  });

  test('behind `use` are shared files, and no cuts', async () => {
    expect(await labels('cut 1\ntime 1+0\nuse "|\nA: 1..\n', { files })).toEqual([
      'house.cut',
      'more/shared.cut',
    ]);
  });

  test('behind `voice` are the speakers, each once', async () => {
    const lines = 'voice "Nao" 1..6 "Oh"\nvoice "Pim" 7..9 "Ah"\nvoice "Nao" 10..12 "So"\n';
    expect(await labels(`cut 1\ntime 1+0\nA: 1..\n${lines}voice "|\n`)).toEqual(['Nao', 'Pim']);
  });

  test('of any other text there is nothing', async () => {
    expect(await labels('cut 1 "|\ntime 1+0\nA: 1..\n')).toEqual([]);
  });

  test('a text that is no file yet has none beside it', async () => {
    const { workspace, analysis } = await opened('cut 1\n', files);
    expect(filesOffered(workspace, { ...analysis, open: { ...analysis.open, path: null } })).toEqual([]);
  });
});
