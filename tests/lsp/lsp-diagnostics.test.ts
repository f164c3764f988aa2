import { describe, expect, test } from 'vitest';
import { DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import { actionsAt, diagnosticsOf, fixAllActions, placeIn } from '../../src/lsp/lsp-diagnostics.js';
import { opened, uri } from './opened.js';

async function shown(typed: string, files: Readonly<Record<string, string>> = {}, name = 'c1.cut') {
  const { workspace, analysis } = await opened(typed, files, { name });
  return diagnosticsOf(workspace, analysis);
}

describe('a problem of the text', () => {
  test('stands at its place, with its code and severity', async () => {
    const [one, ...more] = await shown('cut 1\ntime 1+0\nA: 1:12\n');
    expect(more).toEqual([]);
    expect(one).toMatchObject({
      code: 'timeline-short',
      severity: DiagnosticSeverity.Error,
      source: 'cutwright',
      range: { start: { line: 2, character: 3 }, end: { line: 2, character: 7 } },
    });
  });

  test('that is a hint is information, and grey where nobody refers to something', async () => {
    const found = await shown('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1..\n');
    expect(found.map(({ code, severity, tags }) => [code, severity, tags])).toEqual([
      ['phrase-unused', DiagnosticSeverity.Information, [DiagnosticTag.Unnecessary]],
    ]);
  });

  test('has the places of its notes, and the notes without one behind its message', async () => {
    const found = await shown('cut 1\ntime 1+0\nA: 1..\nmark hit 1+0\nmark hit 1+0\n');
    const twice = found.find(({ code }) => code === 'name-twice');
    expect(
      twice!.relatedInformation!.map(({ location }) => [location.uri, location.range.start.line]),
    ).toEqual([[uri('c1.cut'), 3]]);
  });
});

test('all mends that cannot change the meaning are one action', async () => {
  const { workspace, analysis } = await opened(
    'cut 1\ntime 1 + 0\nA: 1\nSE 1..24 "bell"\n',
    {},
    { name: 'c1.cut' },
  );
  const [action, ...more] = fixAllActions(workspace, analysis);
  expect(more).toEqual([]);
  expect(action!.kind).toBe('source.fixAll');
  expect(JSON.stringify(action!.edit)).toMatch(/"newText":"1\+0".*"newText":"sound"/);
  const clean = await opened('cut 1\ntime 1+0\nA: 1\n', {}, { name: 'c1.cut' });
  expect(fixAllActions(clean.workspace, clean.analysis)).toEqual([]);
});

describe('a problem elsewhere', () => {
  const text = 'cut 1\ntime 1+0\nuse "house.cut"\nA: walk 1..\n';

  test('in a used file stands at the name of that file', async () => {
    const found = await shown(text, { 'house.cut': 'phrase walk = 1-2\nzzz\n' });
    expect(found).toHaveLength(1);
    expect(found[0]!.message).toMatch(/^In house\.cut: /);
    expect(found[0]!.range).toEqual({ start: { line: 2, character: 4 }, end: { line: 2, character: 15 } });
    expect(found[0]!.relatedInformation!.map(({ location }) => location.uri)).toEqual([uri('house.cut')]);
  });

  test('in the manifest stands at the beginning of the text', async () => {
    const [one] = await shown('cut 1\ntime 1+0\nA: 1..\n', { 'episode.yaml': 'fps: fast\n' });
    expect(one!.message).toMatch(/^In episode\.yaml: /);
    expect(one!.range.start).toEqual({ line: 0, character: 0 });
  });

  test('that is no error is not told', async () => {
    expect(
      await shown('cut 1\ntime 1+0\nA: 1..\n', { 'episode.yaml': 'artists: { "A. B": [99] }\n' }),
    ).toEqual([]);
  });

  test('is told at its own place where the manifest itself is open', async () => {
    const [one] = await shown('title: Ferry\nfps: fast\n', { 'episode.yaml': '' }, 'episode.yaml');
    expect([one!.code, one!.range.start.line, String(one!.message).startsWith('In ')]).toEqual([
      'episode-value',
      1,
      false,
    ]);
  });
});

describe('a fix', () => {
  const typed = 'cut 1\ntime 1+0\nA: 1:12 2\nB: 1:12 2\n';

  test('is offered at its problem only, and says what it does', async () => {
    const { workspace, analysis, at } = await opened(typed);
    const here = at('B:') + 8;
    const actions = actionsAt(workspace, analysis, { start: here, end: here });
    expect(actions.map(({ title }) => title)).toEqual(['Hold it until there']);
    expect(actions[0]!.edit!.changes).toEqual({
      [uri('c1.cut')]: [
        {
          range: { start: { line: 3, character: 9 }, end: { line: 3, character: 9 } },
          newText: '..',
        },
      ],
    });
    expect(actions[0]!.diagnostics).toHaveLength(1);
  });

  test('there is none where nothing is wrong', async () => {
    const { workspace, analysis } = await opened(typed);
    expect(actionsAt(workspace, analysis, { start: 0, end: 5 })).toEqual([]);
  });
});

test('a file that nobody has read has no place', async () => {
  const { workspace, analysis } = await opened('cut 1\n');
  expect(placeIn(workspace, analysis, 'other.cut')).toBeNull();
  expect(placeIn(workspace, analysis, 'c1.cut')).toEqual({ uri: uri('c1.cut'), text: analysis.text });
});
