import { describe, expect, test } from 'vitest';
import { LARGEST_FILE } from '../../src/host/host.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { noting, overlay, snapshot } from '../../src/host/overlay-host.js';
import { CUT, run } from '../command/run.js';

const text = (reading: ReturnType<ReturnType<typeof memoryHost>['read']>) =>
  reading.ok ? Buffer.from(reading.value).toString() : reading.reason;

describe('a world with open texts', () => {
  test('reads them in place of the disk, through links too, and the rest as it is', () => {
    const base = memoryHost({ 'a.cut': 'disk', 'b.cut': 'other' });
    base.links.set('/work/link.cut', '/work/a.cut');
    const host = overlay(base, new Map([['/work/a.cut', 'typed']]));
    expect(text(host.read('/work/a.cut'))).toBe('typed');
    expect(text(host.read('/work/link.cut'))).toBe('typed');
    expect(text(host.read('/work/b.cut'))).toBe('other');
    expect(text(host.read('/work/c.cut'))).toBe('no such file');
  });

  test('has those that are not saved yet in their folder', () => {
    const base = memoryHost({ 'cuts/a.cut': '' });
    const host = overlay(base, new Map([['/work/cuts/new.cut', 'x']]));
    expect(host.kind('/work/cuts/new.cut')).toBe('file');
    expect(host.list('/work/cuts')).toEqual({ ok: true, value: ['a.cut', 'new.cut'] });
    expect(host.list('/work/none').ok).toBe(false);
  });

  test('refuses what would be too large on the disk', () => {
    const host = overlay(memoryHost(), new Map([['/work/big.cut', '汐'.repeat(LARGEST_FILE / 3 + 1)]]));
    expect(host.read('/work/big.cut').ok).toBe(false);
  });
});

test('a world that takes notes knows which files and folders were asked for, there or not', () => {
  const base = memoryHost({ 'a.cut': '' });
  base.links.set('/work/link.cut', '/work/a.cut');
  const asked = { files: new Set<string>(), folders: new Set<string>() };
  const host = noting(base, asked);
  host.read('/work/link.cut');
  host.kind('/work/none.cut');
  host.list('/work');
  expect([...asked.files]).toEqual(['/work/a.cut', '/work/none.cut']);
  expect([...asked.folders]).toEqual(['/work']);
});

test('a text is what it was when it was first read; what the run writes is seen', () => {
  const base = memoryHost({ 'a.cut': 'cut 1\n' });
  const world = snapshot(base);
  const read = () => world.read('/work/a.cut');
  expect(read()).toEqual({ ok: true, value: Buffer.from('cut 1\n') });
  base.files.set('/work/a.cut', Buffer.from('cut 2\n'));
  expect(read()).toEqual({ ok: true, value: Buffer.from('cut 1\n') });
  world.write('/work/a.pdf', Buffer.from('new'));
  expect(world.readEnd('/work/a.pdf', 9)).toEqual({
    ok: true,
    value: { bytes: Buffer.from('new'), size: 3 },
  });
});

test('a cut that is saved while a build runs is printed as it was, and the next build prints it as it is', async () => {
  const host = memoryHost({
    'e/episode.yaml': 'cuts: ["*.cut"]\n',
    'e/1.cut': CUT,
    'e/2.cut': CUT.replace('cut 1', 'cut 2'),
  });
  const { write } = host;
  const later = CUT.replace('cut 1', 'cut 2').replace('1{late}', '1{early}');
  let saved = false;
  host.write = (path, bytes) => {
    if (!saved) host.files.set('/work/e/2.cut', Buffer.from(later));
    saved = true;
    return write(path, bytes);
  };
  await run(host, 'build', 'e', '-o', 'out');
  const { error } = await run(host, 'build', 'e', '-o', 'out', '--changed');
  expect(error).toMatch(/^cut 2: .*\nwrote out\/2\.pdf: \d+ pages?\n1 cut unchanged\n$/);
});
