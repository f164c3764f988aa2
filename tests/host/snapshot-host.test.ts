import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { snapshot } from '../../src/host/snapshot-host.js';
import { CUT, run } from '../command/run.js';

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
