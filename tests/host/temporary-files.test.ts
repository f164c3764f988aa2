/** Files that are written piece by piece, and what killed runs leave. */

import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Host, Reading, TemporaryFile } from '../../src/host/host.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { nodeHost } from '../../src/host/node-host.js';
import { machineName } from '../../src/host/temporary-files.js';

let folder: string;
const at = (name: string) => join(folder, name);

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-drafts-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const bytes = (text: string) => Buffer.from(text);
const must = <T>(reading: Reading<T>): T => {
  if (!reading.ok) throw new Error(reading.reason);
  return reading.value;
};
const open = (host: Host, name = 'a.pdf'): TemporaryFile => must(host.openTemporary(at(name)));

describe.each([
  ['on the disk', () => nodeHost()],
  ['in memory', () => memoryHost()],
])('%s', (_, make) => {
  const text = (host: Host, name = 'a.pdf') =>
    bytes(Buffer.from(must(host.read(at(name)))).toString()).toString();

  test('a draft is seen when it is finished, and not before', () => {
    const host = make();
    must(host.write(at('a.pdf'), bytes('old')));
    const draft = open(host);
    must(draft.add(bytes('one ')));
    must(draft.add(bytes('two')));
    expect(text(host)).toBe('old');
    must(draft.finish());
    expect(text(host)).toBe('one two');
  });

  test('files that are written at the same time are all whole, and one that cannot be written is no fault of the others', async () => {
    const host = make();
    must(host.write(at('b.pdf'), bytes('old')));
    const names = ['a.pdf', 'b.pdf', 'c.pdf'];
    const written = await Promise.all([
      ...names.map((name) => host.writeLater(at(name), bytes(`new ${name}`))),
      host.writeLater(folder, bytes('nothing')),
    ]);
    expect(written.map(({ ok }) => ok)).toEqual([true, true, true, false]);
    expect(names.map((name) => text(host, name))).toEqual(names.map((name) => `new ${name}`));
    expect(must(host.list(folder))).toEqual(names);
  });

  test('a draft that is dropped leaves everything as it was', () => {
    const host = make();
    must(host.write(at('a.pdf'), bytes('old')));
    const draft = open(host);
    must(draft.add(bytes('new')));
    draft.drop();
    expect(text(host)).toBe('old');
    expect(must(host.list(folder))).toEqual(['a.pdf']);
  });

  test('a folder is no file to write', () => {
    const host = make();
    must(host.write(at('a.pdf/b'), bytes('x')));
    expect(host.openTemporary(at('a.pdf'))).toEqual({ ok: false, reason: 'is a folder' });
  });

  test('the end of a file, and its size', () => {
    const host = make();
    must(host.write(at('a.pdf'), bytes('0123456789')));
    const end = must(host.readEnd(at('a.pdf'), 4));
    expect([Buffer.from(end.bytes).toString(), end.size]).toEqual(['6789', 10]);
    expect(must(host.readEnd(at('a.pdf'), 100)).bytes).toHaveLength(10);
    expect(host.readEnd(at('b.pdf'), 4)).toEqual({ ok: false, reason: 'no such file' });
    expect(host.readEnd(folder, 4)).toEqual({ ok: false, reason: 'is a folder' });
  });
});

describe('sweeping', () => {
  const own = machineName();
  const dead = () => spawnSync(process.execPath, ['-e', '']).pid;
  const put = (name: string) => {
    writeFileSync(at(name), 'half');
    return name;
  };

  test('takes what a killed run has left, and nothing else', () => {
    const gone = put(`.cutwright-${own}-${dead()}-3.tmp`);
    const same = put(`.cutwright-${own}-${process.pid}-99999.tmp`);
    const kept = [
      put(`.cutwright-${own}-${process.ppid}-1.tmp`),
      put(`.cutwright-${own}-0-1.tmp`),
      put(`.cutwright-${own}-x-1.tmp`),
      put(`.cutwright-${own}-${dead()}-3.tmp.pdf`),
      put('a.pdf'),
    ];
    nodeHost().removeStaleTemporaries(folder);
    const left = readdirSync(folder);
    expect(left).not.toContain(gone);
    expect(left).not.toContain(same);
    expect(left.sort()).toEqual(kept.sort());
  });

  test('leaves what this process is at work on', () => {
    const host = nodeHost();
    const draft = open(host);
    must(draft.add(bytes('whole')));
    host.removeStaleTemporaries(folder);
    must(draft.finish());
    expect(readFileSync(at('a.pdf'), 'utf8')).toBe('whole');
  });

  test('takes of another machine only what has not been touched for a day', () => {
    const pid = dead();
    const aged = (machine: string, hours: number) => {
      const name = put(`.cutwright-${machine}-${pid}-${hours}.tmp`);
      const then = Date.now() / 1000 - hours * 3600;
      utimesSync(at(name), then, then);
      return name;
    };
    const kept = [aged('attic-2', 0), aged('attic-2', 23)];
    for (const gone of [aged('attic-2', 25), aged('cellar', 0), aged('cellar', 25)])
      expect(existsSync(at(gone))).toBe(true);
    nodeHost('cellar').removeStaleTemporaries(folder);
    expect(readdirSync(folder).sort()).toEqual(kept.sort());
  });

  test('two machines whose processes have the same number write into one folder', () => {
    const names = ['attic', 'cellar'];
    const hosts = names.map((name) => nodeHost(name));
    const drafts = hosts.map((host, i) => open(host, `${names[i]}.pdf`));
    const written = readdirSync(folder);
    expect(written.map((name) => name.split('-').slice(0, 3).join('-')).sort()).toEqual(
      names.map((name) => `.cutwright-${name}-${process.pid}`),
    );
    for (const host of hosts) host.removeStaleTemporaries(folder);
    for (const [i, draft] of drafts.entries()) {
      must(draft.add(bytes(names[i]!)));
      must(draft.finish());
    }
    expect(names.map((name) => readFileSync(at(`${name}.pdf`), 'utf8'))).toEqual(names);
  });

  test('a folder that is not there, or that may not be changed, is passed over', () => {
    const host = nodeHost();
    expect(() => host.removeStaleTemporaries(at('none'))).not.toThrow();
    put(`.cutwright-${own}-${dead()}-1.tmp`);
    chmodSync(folder, 0o500);
    try {
      expect(() => host.removeStaleTemporaries(folder)).not.toThrow();
    } finally {
      chmodSync(folder, 0o700);
    }
  });

  test('nothing stays of a draft that cannot be written', () => {
    const host = nodeHost();
    const draft = open(host);
    rmSync(folder, { recursive: true });
    expect(draft.finish().ok).toBe(false);
    expect(existsSync(at('a.pdf'))).toBe(false);
  });
});

test('a file that is written anew keeps its mode, whatever the mask of the process', () => {
  const before = process.umask(0o022);
  try {
    for (const mode of [0o664, 0o600, 0o666, 0o755]) {
      writeFileSync(at('a.cut'), 'cut 1\n');
      chmodSync(at('a.cut'), mode);
      const { gid } = statSync(at('a.cut'));
      must(nodeHost().write(at('a.cut'), bytes('cut 2\n')));
      const after = statSync(at('a.cut'));
      expect([(after.mode & 0o777).toString(8), after.gid]).toEqual([mode.toString(8), gid]);
      expect(readFileSync(at('a.cut'), 'utf8')).toBe('cut 2\n');
    }
  } finally {
    process.umask(before);
  }
});

test('a process clears a folder of what others have left before it first writes there', () => {
  const { pid } = spawnSync(process.execPath, ['-e', '0']);
  const left = `.cutwright-${machineName()}-${pid}-1.tmp`;
  writeFileSync(at(left), 'half');
  must(nodeHost().write(at('a.cut'), bytes('whole')));
  expect(readdirSync(folder)).toEqual(['a.cut']);
});
