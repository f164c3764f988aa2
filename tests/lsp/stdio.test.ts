import { EventEmitter } from 'node:events';
import { describe, expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { HeaderedMessageReader } from '../../src/lsp/stdio.js';

const framed = (body: string): string => `Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`;

function reading() {
  const host = memoryHost();
  const stream = new EventEmitter();
  const lost: string[] = [];
  const reader = new HeaderedMessageReader(stream, host.after, (reason) => lost.push(reason));
  const messages: unknown[] = [];
  let errors = 0;
  reader.onError(() => errors++);
  reader.listen((message) => messages.push(message));
  return {
    send: (text: string | Buffer) => stream.emit('data', Buffer.from(text)),
    passMs: host.passMs,
    lost,
    messages,
    errors: () => errors,
  };
}

test('messages are read however their bytes are cut', () => {
  const bytes = Buffer.from(
    framed('{"a":"屋上"}') + framed('{"b":2}').replace('Content', 'Content-Type: x\r\ncontent'),
  );
  for (const size of [1, 2, 7, 19, 1000]) {
    const { send, lost, messages } = reading();
    for (let at = 0; at < bytes.length; at += size) send(bytes.subarray(at, at + size));
    expect(messages).toEqual([{ a: '屋上' }, { b: 2 }]);
    expect(lost).toEqual([]);
  }
});

test('a body that is no JSON is an error, and the next message is read', () => {
  const { send, lost, messages, errors } = reading();
  send(framed('{"a": oops') + framed('{"b":2}'));
  expect([errors(), messages, lost]).toEqual([1, [{ b: 2 }], []]);
});

describe('nothing more is read', () => {
  test.each([
    ['a header is none', 'hello there\r\n\r\n'],
    ['a header has no length', 'Content-Type: text\r\n\r\n'],
    ['the length of a message is none', 'Content-Length: much\r\n\r\n'],
    ['the length of a message is none', 'Content-Length: -5\r\n\r\n'],
    ['the length of a message is none', 'Content-Length: 0x10\r\n\r\n'],
    ['the length of a message is none', 'Content-Length: 999999999\r\n\r\n'],
    ['a header does not end', 'x'.repeat(5000)],
    // The end of the first body is taken for a header, as the first length is too small.
    ['a header is none', `Content-Length: 3\r\n\r\n{"a":1}${framed('{"b":2}')}`],
  ])('after a wrong header: %s', (reason, sent) => {
    const { send, lost, messages } = reading();
    send(sent);
    send(framed('{"c":3}'));
    expect(lost).toEqual([reason]);
    expect(messages).toEqual([]);
  });

  test('where the rest of a message does not come', () => {
    const { send, lost, messages, passMs } = reading();
    send('Content-Length: 99\r\n\r\n{"a"');
    passMs(59_000);
    send(':1');
    passMs(59_000);
    expect(lost).toEqual([]);
    passMs(2_000);
    expect(lost).toEqual(['the rest of a message does not come']);
    expect(messages).toEqual([]);
  });
});
