import { spawn, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { lockFolder, lockOf } from '../../src/host/folder-lock.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-claim-'));
});
afterEach(() => {
  rmSync(lockOf(folder), { force: true });
  rmSync(folder, { recursive: true, force: true });
});

/** A process that has run and is gone. */
const gone = (): number => spawnSync(process.execPath, ['-e', '0']).pid;
const litter = () => readdirSync(tmpdir()).filter((name) => name.startsWith(`${basename(lockOf(folder))}.`));

test('a folder belongs to who locks it first, until it is released', () => {
  const first = lockFolder(folder);
  expect(first.ok).toBe(true);
  expect(lockFolder(folder)).toEqual({ ok: false, by: process.pid, reason: '' });
  if (first.ok) first.release();
  expect(existsSync(lockOf(folder))).toBe(false);
  expect(lockFolder(folder).ok).toBe(true);
  expect(litter()).toEqual([]);
});

test('it is the same folder under another name', () => {
  const link = `${folder}-link`;
  symlinkSync(folder, link);
  expect(lockFolder(folder).ok).toBe(true);
  expect(lockFolder(link).ok).toBe(false);
  rmSync(link);
});

test('another process that runs is named', () => {
  const child = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 1e6)']);
  const stat = existsSync('/proc') ? readFileSync(`/proc/${child.pid}/stat`, 'utf8') : '';
  const start = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
  writeFileSync(lockOf(folder), start ? `${child.pid} ${start}` : `${child.pid}`);
  expect(lockFolder(folder)).toEqual({ ok: false, by: child.pid, reason: '' });
  child.kill();
});

test.each(['', 'x', '0', '-1', '99999999999999999999'])('a lock that is none is taken over: %j', (text) => {
  writeFileSync(lockOf(folder), text);
  expect(lockFolder(folder).ok).toBe(true);
  expect(litter()).toEqual([]);
});

test('the lock of a dead process is taken over, also where its number has come round again', () => {
  writeFileSync(lockOf(folder), `${gone()} 1`);
  expect(lockFolder(folder).ok).toBe(true);
  writeFileSync(lockOf(folder), `${process.pid} 1`);
  if (existsSync('/proc')) expect(lockFolder(folder).ok).toBe(true);
});

test('what was taken over is not released by who had it before', () => {
  const first = lockFolder(folder);
  writeFileSync(lockOf(folder), 'of another');
  if (first.ok) first.release();
  expect(readFileSync(lockOf(folder), 'utf8')).toBe('of another');
});
