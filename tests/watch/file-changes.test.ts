import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { FileStates, PendingChanges } from '../../src/watch/file-changes.js';

const A = '/work/a.cut';

function world(text: string) {
  const host = memoryHost({ 'a.cut': text });
  const texts = new FileStates(host);
  texts.host.read(A);
  let now = 0;
  const pending = new PendingChanges(texts, () => now);
  return {
    host,
    texts,
    put: (text: string) => void host.files.set(A, Buffer.from(text)),
    /** Hears of the file, and looks `after` ms later. */
    hear: (after = 0) => {
      pending.add(A);
      now += after;
      return pending.changes().map(({ kind }) => kind);
    },
    waiting: () => pending.waiting,
  };
}

test('a file that is as it was read has not changed, however often it is heard of', () => {
  const { hear, put, texts } = world('one');
  expect(hear()).toEqual([]);
  put('two');
  // Whoever reads it meanwhile, for another cut, does not settle it.
  texts.host.read(A);
  expect(hear()).toEqual(['text']);
  expect(hear()).toEqual([]);
});

test('a file that is empty or gone is waited for, and then believed', () => {
  for (const lose of [
    (w: ReturnType<typeof world>) => w.put(''),
    (w: ReturnType<typeof world>) => void w.host.files.delete(A),
  ]) {
    const one = world('one');
    lose(one);
    expect(one.hear(10)).toEqual([]);
    expect(one.waiting()).toBe(true);
    expect(one.hear(300)).toHaveLength(1);
    expect(one.waiting()).toBe(false);
    const other = world('one');
    lose(other);
    expect(other.hear(10)).toEqual([]);
    other.put('two');
    expect(other.hear(10)).toEqual(['text']);
  }
});

test('a file that comes back as it was has not changed', () => {
  const { host, hear, put, waiting } = world('one');
  host.files.delete(A);
  expect(hear(10)).toEqual([]);
  put('one');
  expect(hear(10)).toEqual([]);
  expect(waiting()).toBe(false);
});

test('gone and new are told apart', () => {
  const { host, hear, put } = world('one');
  host.files.delete(A);
  hear(0);
  expect(hear(300)).toEqual(['gone']);
  put('two');
  expect(hear()).toEqual(['new']);
});

test('a file that may not be read any more has changed, once', () => {
  const { host, hear } = world('one');
  host.locked.add(A);
  expect(hear()).toEqual(['text']);
  expect(hear()).toEqual([]);
});
