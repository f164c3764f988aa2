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
});
