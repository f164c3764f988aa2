import type { IncomingMessage } from 'node:http';
import { describe, expect, test } from 'vitest';
import { admitRequest, LONGEST_ADDRESS, newToken } from '../../src/preview/request-guard.js';

const TOKEN = 'abcdef';
const PORT = 8123;

interface Asked {
  readonly method?: string;
  readonly url?: string;
  readonly headers?: readonly (readonly [string, string])[];
}

function ask({ method = 'GET', url = `/${TOKEN}/`, headers = [['Host', `127.0.0.1:${PORT}`]] }: Asked = {}) {
  const request = {
    method,
    url,
    rawHeaders: headers.flat(),
    headers: Object.fromEntries(headers.map(([name, value]) => [name.toLowerCase(), value])),
  };
  const admitted = admitRequest(request as unknown as IncomingMessage, TOKEN, PORT);
  return 'refused' in admitted ? admitted.refused : [admitted.way, admitted.query.toString()];
}

describe('a request is taken', () => {
  test('for the way behind the token, with what is asked', () => {
    expect(ask()).toEqual(['', '']);
    expect(ask({ url: `/${TOKEN}/page/c1/h1` })).toEqual(['page/c1/h1', '']);
    expect(ask({ url: `/${TOKEN}/at?file=a.cut&line=3` })).toEqual(['at', 'file=a.cut&line=3']);
  });

  test.each(['127.0.0.1', 'localhost', '[::1]', 'LOCALHOST'])('under the name %s', (name) => {
    expect(ask({ headers: [['Host', `${name}:${PORT}`]] })).toEqual(['', '']);
  });

  test('from a page of its own, and for a post to `at`', () => {
    const headers = [
      ['host', `localhost:${PORT}`],
      ['Origin', `http://localhost:${PORT}`],
    ] as const;
    expect(ask({ method: 'POST', url: `/${TOKEN}/at`, headers })).toEqual(['at', '']);
  });
});

describe('a request is refused', () => {
  test.each([
    ['another name', [['Host', `evil.example:${PORT}`]]],
    ['another port', [['Host', '127.0.0.1:1']]],
    ['no name', []],
    [
      'two names',
      [
        ['Host', `127.0.0.1:${PORT}`],
        ['Host', `127.0.0.1:${PORT}`],
      ],
    ],
    [
      'a page of another site',
      [
        ['Host', `127.0.0.1:${PORT}`],
        ['Origin', 'http://evil.example'],
      ],
    ],
    [
      'a page over another protocol',
      [
        ['Host', `127.0.0.1:${PORT}`],
        ['Origin', `https://127.0.0.1:${PORT}`],
      ],
    ],
  ] as const)('with 403 from %s', (_, headers) => {
    expect(ask({ headers })).toBe(403);
  });

  test.each(['/', '/abcdeg/', '/abcde/', '/abcdefg/', '/abcdef', 'abcdef/', '//abcdef/'])(
    'with 404 for the address %s, which lacks the token',
    (url) => {
      expect(ask({ url })).toBe(404);
    },
  );

  test('with 405 for another method, and for a post elsewhere', () => {
    for (const method of ['HEAD', 'PUT', 'DELETE']) expect(ask({ method })).toBe(405);
    expect(ask({ method: 'POST', url: `/${TOKEN}/events` })).toBe(405);
  });

  test('with 414 for a longer address than the longest', () => {
    const longest = `/${TOKEN}/`.padEnd(LONGEST_ADDRESS, 'x');
    expect(ask({ url: longest })).toEqual([longest.slice(TOKEN.length + 2), '']);
    expect(ask({ url: `${longest}x` })).toBe(414);
  });
});

test('a token has 128 bits, and is another one each time', () => {
  expect(Buffer.from(newToken(), 'base64url')).toHaveLength(16);
  expect(newToken()).not.toBe(newToken());
});
