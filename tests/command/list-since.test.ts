/** `list --since`: the episode against a revision of it. */

import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { CUT, run } from './run.js';

const cut = (number: number, time: string, line = 'A: 1..') =>
  `cut ${number} "Kite over roof ${number}"\ntime ${time}\n${line}\n`;

function world() {
  const manifest = (budget: string) => `title: Wind\nbudget: ${budget}\n`;
  const host = memoryHost({
    'episode.yaml': manifest('8+0'),
    'c1.cut': cut(1, '3+0'),
    'c2.cut': cut(2, '4+6', 'A: 1--2..'),
    'c4.cut': cut(4, '1+0'),
  });
  host.revisions.set(
    'v1',
    memoryHost({
      'episode.yaml': manifest('9+0'),
      'c1.cut': cut(1, '3+0'),
      'c2.cut': cut(2, '4+0'),
      'c3.cut': cut(3, '0+18'),
    }),
  );
  host.revisions.set('empty', memoryHost({ 'a.txt': '' }));
  host.revisions.set('broken', memoryHost({ 'episode.yaml': '', 'c1.cut': CUT.replace(/^time.*$/m, '') }));
  return host;
}

describe('list --since', () => {
  test('lists what differs, both totals, and what that does to the budget', async () => {
    const { status, out, error } = await run(world(), 'list', '--since', 'v1');
    expect([status, error]).toEqual([0, '']);
    expect(out.split('\n')).toEqual([
      'cut  title                   time at v1  now  change  drawings at v1  now',
      '---  ----------------  ----  ----------  ---  ------  --------------  ---',
      '2    Kite over roof 2               4+0  4+6    +0+6               1    4',
      '3    Kite over roof 3  gone        0+18        -0+18               1',
      '4    Kite over roof 4  new               1+0    +1+0                    1',
      '',
      '3 cuts differ; 1 with the same time and number of drawings',
      "v1: 3 cuts, 3 drawings, running time 7+18 (11'10); budget 9+0: 1+6 under",
      "now: 3 cuts, 6 drawings, running time 8+6 (12'06); budget 8+0: 0+6 over",
      'it runs 0+12 longer',
      'the budget is 1+0 smaller',
      '',
    ]);
  });

  test('as CSV and JSON, also by the ending of a file', async () => {
    const host = world();
    const { out } = await run(host, 'list', '--since', 'v1', '--csv');
    expect(out).toContain('\r\n2,Kite over roof 2,changed,96,102,6,1,4\r\n');
    expect((await run(host, 'list', '--since', 'v1', '-o', 'since.json')).error).toBe(
      'wrote since.json: 3 cuts\n',
    );
    const json = JSON.parse(Buffer.from(host.files.get('/work/since.json')!).toString());
    expect(json).toMatchObject({ since: 'v1', before: { running: 186 }, now: { running: 198, over: 6 } });
  });

  test('with --check fails over the budget', async () => {
    const { status, error } = await run(world(), 'list', '--since', 'v1', '--check');
    expect(status).toBe(1);
    expect(error).toContain('0+6');
  });

  test('a time that was not known then is no difference in numbers', async () => {
    const { out } = await run(world(), 'list', '--since', 'broken', 'c1.cut');
    expect(out).toMatch(/^1 +Kite over roof 1 +\? +3\+0 +\?/m);
    expect(out).toContain('broken: 1 cut, ');
    expect(out).toContain('running time at least 0+0');
    expect(out).not.toContain('it runs');
  });

  test('nothing differs', async () => {
    const host = world();
    host.revisions.set('same', world());
    expect((await run(host, 'list', '--since', 'same')).out).toMatch(
      /^no cut differs; 3 with the same time and number of drawings\n/,
    );
  });

  test.each([
    [['nix'], 'git knows no revision `nix`'],
    [['empty'], 'There were no cuts yet at `empty`'],
    [['v1', '--output', 'x.pdf'], '`--since` and `--output x.pdf` do not go together'],
  ])('--since %j: one clear error', async (words, message) => {
    const { status, out, error } = await run(world(), 'list', '--since', ...words);
    expect([status, out]).toEqual([2, '']);
    expect(error).toContain(message);
  });
});
