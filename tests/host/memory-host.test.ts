import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { bytes, hostContract, words } from './host-contract.js';

describe('the host in memory', () => {
  hostContract(() => ({ host: memoryHost({ '/work/.keep': '' }), at: '/work' }));

  test('has a disk that can be full, and keeps the file that was there', () => {
    const host = memoryHost({ 'c012.pdf': 'good' });
    host.room = 3;
    expect(host.write('c012.pdf', bytes('longer'))).toEqual({ ok: false, reason: 'the disk is full' });
    expect(words(host, '/work/c012.pdf')).toBe('good');
  });

  test('follows links, of folders too', () => {
    const host = memoryHost({ '/shared/house.cut': 'time 1+0' });
    host.links.set('/work/house', '../shared');
    expect(host.real('house/house.cut')).toBe('/shared/house.cut');
    expect(words(host, 'house/house.cut')).toBe('time 1+0');
    expect(host.kind('house')).toBe('folder');
  });

  test('locks files and folders', () => {
    const host = memoryHost({ 'shut/c1.cut': '' });
    host.locked.add('/work/shut');
    expect(words(host, 'shut/c1.cut')).toBe('permission denied');
    expect(host.write('shut/c2.cut', bytes(''))).toEqual({ ok: false, reason: 'permission denied' });
  });

  test('calls timers when its clock is moved on, in order, and none that was cancelled', () => {
    const host = memoryHost();
    const done: string[] = [];
    const note = (what: string) => () => void done.push(`${what} at ${host.elapsedMs()}`);
    host.after(20, note('second'));
    host.after(5, () => {
      note('first')();
      host.after(10, note('made by the first'));
    });
    const cancel = host.after(6, note('never'));
    cancel();
    host.passMs(4);
    expect(done).toEqual([]);
    host.passMs(30);
    expect(done).toEqual(['first at 5', 'made by the first at 15', 'second at 20']);
    expect(host.elapsedMs()).toBe(34);
  });
});
