/** Who gets what from the live view's server, asked over bare sockets. */

import { get as httpGet, type IncomingMessage } from 'node:http';
import { networkInterfaces } from 'node:os';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  admitRequest,
  LONGEST_ADDRESS,
  newToken,
  openPreview,
  type Preview,
} from '../../src/preview/preview-server.js';
import type { ShownCut } from '../../src/preview/shown-cut.js';
import { page, text } from '../print/documents.js';
import { answer } from './player/answers.js';
import { ask, raw } from './raw.js';
import { shipped } from './shipped.js';

let preview: Preview;
let port: number;
let token: string;

const shown = (id: string, more: Partial<ShownCut> = {}): ShownCut => ({
  id,
  file: `${id}.cut`,
  number: '1',
  title: '<b>"Pim" & Oda</b>',
  state: 'good',
  fault: '',
  problems: [],
  stamp: 'abc',
  pages: () => [{ hash: 'h1', page: page([text('<script>alert(1)</script>')]) }],
  rowsAt: (file, line, column) =>
    file === `${id}.cut`
      ? {
          frames: [{ from: line, to: line + 1 }],
          items: [{ level: 'A', from: line, to: column ?? line + 1 }],
        }
      : null,
  placeOf: (frame, level) =>
    frame > 24 ? null : { file: `${id}.cut`, line: 3, column: frame, text: `${level}: 1..` },
  play: () => null,
  scan: () => null,
  sound: () => null,
  ...more,
});

beforeAll(async () => {
  preview = await openPreview(0, shipped(Uint8Array.of(0, 1, 0, 0)));
  const url = new URL(preview.url);
  port = Number(url.port);
  token = url.pathname.split('/')[1]!;
  preview.list(['c1', 'c2']);
  const wav = { type: 'audio/wav', bytes: Buffer.from('RIFF') };
  const { id: _, version: __, ...play } = answer('c1', 24);
  preview.put(
    shown('c1', {
      play: () => play,
      scan: (level, number) =>
        level === 2 && number === 14 ? { type: 'image/png', bytes: Buffer.from('PNG') } : null,
      sound: () => wav,
    }),
  );
  preview.episodes((id) => (id === 'c1' ? { fps: 24, frames: 0, cuts: [], word: 'none' } : null));
  preview.put(shown('c2', { state: 'broken', fault: '1 error', pages: () => [] }));
});
afterAll(() => preview.close());

const own = () => [`Host: 127.0.0.1:${port}`];
const get = (way: string, headers = own()) => ask(port, `GET /${token}/${way}`, headers);

/** Follows the events; `next`: all of the next one. */
async function listen(url: string): Promise<{ next(): Promise<string> }> {
  let said = '';
  let check = () => {};
  const next = () =>
    new Promise<string>((resolve) => {
      check = () => {
        if (said.endsWith('\n\n')) resolve(said.replace(/^retry.*\n/, ''));
      };
      said = '';
    });
  const begun = next();
  httpGet(url, (events) => {
    events.setEncoding('utf8').on('data', (part: string) => {
      said += part;
      check();
    });
  });
  await begun;
  return { next };
}

describe('whoever has the word gets', () => {
  test('the page, its style, its program and its fonts', async () => {
    const types = {
      '': 'text/html',
      'live.css': 'text/css',
      'live.js': 'text/javascript',
      'page-modules.js': 'text/javascript',
      'font/bold': 'font/ttf',
    };
    for (const [way, type] of Object.entries(types)) {
      const { status, headers, body } = await get(way);
      expect([status, headers.get('content-type')?.split(';')[0]], way).toEqual([200, type]);
      expect(body.length).toBeGreaterThan(0);
    }
  });

  test('a cut with its pages, and each page as SVG in which texts are texts', async () => {
    const cut = JSON.parse((await get('cut/c1')).body);
    expect(cut).toMatchObject({ id: 'c1', state: 'good', pages: [{ key: 'h1', label: '1', width: 210 }] });
    const svg = await get('page/c1/h1');
    expect(svg.headers.get('content-type')).toBe('image/svg+xml');
    expect(svg.body).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(svg.body).not.toMatch(/<script|style=/);
  });

  test('a broken cut with what is wrong', async () => {
    expect(JSON.parse((await get('cut/c2')).body)).toMatchObject({
      state: 'broken',
      fault: '1 error',
      pages: [],
    });
  });

  test('what the player shows of a cut, and of its episode', async () => {
    expect(JSON.parse((await get('play/c1')).body)).toMatchObject({
      id: 'c1',
      version: 1,
      picture: { fps: 24, runs: [[0, 24]] },
    });
    expect(JSON.parse((await get('episode/c1')).body)).toEqual({
      fps: 24,
      frames: 0,
      cuts: [],
      word: 'none',
    });
  });

  test('the scan of a drawing, and the track, as what they are', async () => {
    const scan = await get('scan/c1/2.14');
    expect([scan.status, scan.headers.get('content-type'), scan.body]).toEqual([200, 'image/png', 'PNG']);
    const sound = await get('sound/c1');
    expect([sound.status, sound.headers.get('content-type'), sound.body]).toEqual([200, 'audio/wav', 'RIFF']);
  });

  test('the events of the watch, beginning with the cuts', async () => {
    const { status, headers } = await get('events');
    expect([status, headers.get('content-type')]).toEqual([200, 'text/event-stream; charset=utf-8']);
  });

  test('all that is new of the cut that it shows, when that is another one', async () => {
    const view = await openPreview(0, shipped(Uint8Array.of(0)));
    view.list(['c1', 'c2']);
    view.put(shown('c1'));
    view.put(shown('c2'));
    const heard = await listen(`${view.url}events?follower=f1`);
    const asks = (way: string) => fetch(`${view.url}${way}`).then((answer) => answer.text());
    const sheet = (id: string, ...words: string[]) =>
      shown(id, {
        pages: () => words.map((word) => ({ hash: `h ${word}`, page: page([text(word)]) })),
      });
    const newest = async (cut: ShownCut) => {
      const next = heard.next();
      view.put(cut);
      const [, name, data] = /^event: (.*)\ndata: (.*)\n\n$/.exec(await next)!;
      return { name, data: JSON.parse(data!) };
    };
    // It has not said which one it shows.
    const first = await newest(sheet('c1', 'tide', 'ebb'));
    expect([first.name, first.data.pages]).toEqual(['cut', undefined]);
    await asks('cut/c1?follower=f1');
    const changed = await newest(sheet('c1', 'tide', 'flood'));
    expect(changed.name).toBe('shown');
    expect(changed.data).toMatchObject({ id: 'c1', stamp: 'abc', problems: [] });
    expect(changed.data.pages.map(({ key }: { key: string }) => key)).toEqual(['h tide', 'h flood']);
    expect(Object.keys(changed.data.drawings)).toEqual(['h flood']);
    expect(changed.data.drawings['h flood']).toMatch(/^<svg [\s\S]*flood/);
    // A page that it had before the last one may be gone from it.
    expect(Object.keys((await newest(sheet('c1', 'ebb'))).data.drawings)).toEqual(['h ebb']);
    expect((await newest(shown('c2', { state: 'broken', pages: () => [] }))).name).toBe('cut');
    // Another page of the same browser asks for another cut.
    await asks('cut/c2?follower=f2');
    expect((await newest(sheet('c1', 'tide'))).name).toBe('shown');
    await asks('cut/c2?follower=f1');
    expect((await newest(sheet('c1', 'ebb'))).name).toBe('cut');
    await view.close();
  });

  test('the rows of a line, asked by address or by form', async () => {
    const items = [{ level: 'A', from: 7, to: 8 }];
    const wanted = { line: 7, cuts: [{ id: 'c1', frames: [{ from: 7, to: 8 }], items }] };
    expect(JSON.parse((await get('at?file=c1.cut&line=7')).body)).toEqual(wanted);
    const form = 'file=c1.cut&line=7';
    const posted = await ask(
      port,
      `POST /${token}/at`,
      [...own(), 'Content-Type: application/x-www-form-urlencoded', `Content-Length: ${form.length}`],
      form,
    );
    expect(JSON.parse(posted.body)).toEqual(wanted);
  });

  test('the rows of a column of a line', async () => {
    const { body } = await get('at?file=c1.cut&line=7&column=9');
    expect(JSON.parse(body).cuts[0].items).toEqual([{ level: 'A', from: 7, to: 9 }]);
  });

  test('the place in the text of a row, which all who follow the events hear', async () => {
    const place = { file: 'c1.cut', line: 3, column: 20, text: 'A: 1..' };
    const heard = new Promise<string>((resolve) => {
      let all = '';
      const following = httpGet(`${preview.url}events`, (events) => {
        events.setEncoding('utf8').on('data', (text: string) => {
          all += text;
          if (!/event: source\ndata: .*\n\n/.test(all)) return;
          following.destroy();
          resolve(all);
        });
        void get('source/c1?frame=20&level=A').then(({ body }) => expect(JSON.parse(body)).toEqual(place));
      });
    });
    expect(await heard).toContain(`event: source\ndata: ${JSON.stringify(place)}\n\n`);
    expect(JSON.parse((await get('source/c1?frame=20')).body).text).toBe('null: 1..');
  });

  test('the same under each name of this machine', async () => {
    for (const host of [`localhost:${port}`, `LOCALHOST:${port}`, `[::1]:${port}`])
      expect((await get('', [`Host: ${host}`])).status, host).toBe(200);
  });
});

describe('refused is', () => {
  test.each(['evil.example', '127.0.0.1', 'localhost:1', '127.0.0.1.evil.example:80', ''])(
    'a host that is another: %j',
    async (host) => {
      const { status, body } = await get('', [`Host: ${host}`]);
      expect(status).toBe(403);
      expect(body).toBe('not for you\n');
    },
  );

  test('a request with no host, or with two', async () => {
    expect((await get('', [])).status).toBe(400);
    expect((await ask(port, `GET /${token}/`, [...own(), 'Host: evil.example'])).status).toBe(403);
    expect((await raw(port, `GET /${token}/ HTTP/1.0\r\n\r\n`)).status).toBe(403);
  });

  test('a request from a page of another site', async () => {
    expect((await get('cut/c1', [...own(), 'Origin: http://evil.example'])).status).toBe(403);
    expect((await get('cut/c1', [...own(), 'Origin: null'])).status).toBe(403);
    expect((await get('cut/c1', [...own(), `Origin: http://127.0.0.1:${port}`])).status).toBe(200);
  });

  test('whoever lacks the word', async () => {
    const near = `${token.slice(0, -1)}${token.endsWith('A') ? 'B' : 'A'}`;
    for (const way of ['/', '', '/x/', `/${near}/`, `/${token}`, `//${token}/`, `/x/${token}/`, '*'])
      expect((await ask(port, `GET ${way || '/'}`, own())).status, way).toBe(404);
    const whole = `GET http://127.0.0.1:${port}/${token}/`;
    expect((await ask(port, whole, own())).status).toBe(404);
  });

  test.each(['PUT', 'DELETE', 'OPTIONS', 'HEAD', 'TRACE', 'PATCH'])('the method %s', async (method) => {
    const { status, headers } = await ask(port, `${method} /${token}/`, own());
    expect([status, headers.get('allow')]).toEqual([405, 'GET, POST']);
  });

  test('posting anywhere but to /at', async () => {
    expect((await ask(port, `POST /${token}/cut/c1`, [...own(), 'Content-Length: 0'])).status).toBe(405);
  });

  test.each([
    '../package.json',
    '..%2f..%2fetc%2fpasswd',
    'font/../../package.json',
    'font/regular/x',
    'page/c1/../../x',
    'cut/c1/x',
    'live.css/',
    'live.html',
    'c1.cut',
    'cut/__proto__',
    'page/c1/h2',
    'page/c3/h1',
    'play/c2',
    'play/c1/x',
    'play/__proto__',
    'episode/c2',
    'scan/c1/2.15',
    'scan/c1/2.14/x',
    'scan/c1/2',
    'scan/c1/-1.14',
    'scan/c1/..%2f..%2fsecret.png',
    'scan/c2/2.14',
    'sound/c2',
    'sound/c1/c.wav',
    'events/x',
    'at/x',
    'source/c9?frame=1',
    'source/c1?frame=25',
    'source/c1/x?frame=1',
    '%00',
  ])('a way that is none: %s', async (way) => {
    const { status, body } = await get(way);
    expect([status, body]).toEqual([404, 'not here\n']);
  });

  test('a file that is not watched, without saying its name again', async () => {
    for (const file of ['/etc/passwd', '../c1.cut', '%3Cscript%3E', 'c3.cut']) {
      const { status, body } = await get(`at?file=${file}&line=1`);
      expect([status, body], file).toEqual([404, 'not here\n']);
    }
  });

  test('a line that is none', async () => {
    for (const line of ['0', '-1', '1e3', '99999999', '', '1.5'])
      expect((await get(`at?file=c1.cut&line=${line}`)).status, line).toBe(400);
    expect((await get('at')).status).toBe(400);
    for (const column of ['0', '-1', 'x', '']) {
      expect((await get(`at?file=c1.cut&line=1&column=${column}`)).status, column).toBe(400);
      expect((await get(`source/c1?frame=${column}`)).status, column).toBe(400);
    }
  });

  test('an address, a header or a body that is too long', async () => {
    expect((await get(`at?file=${'a'.repeat(5000)}`)).status).toBe(414);
    expect((await get(`at?file=${'a'.repeat(40_000)}`)).status).toBe(431);
    expect((await get('', [...own(), `X: ${'a'.repeat(40_000)}`])).status).toBe(431);
    const long = [...own(), 'Content-Length: 10000'];
    expect((await ask(port, `POST /${token}/at`, long, 'a'.repeat(10_000))).status).toBe(413);
  });

  test('what is no HTTP', async () => {
    expect((await raw(port, '\x16\x03\x01\x02\x00\x01\x00\r\n\r\n')).status).toBe(400);
    expect((await raw(port, 'hello\r\n\r\n')).status).toBe(400);
    expect((await get('')).status).toBe(200);
  });
});

describe('every answer', () => {
  test.each([
    '',
    'cut/c1',
    'page/c1/h1',
    'nothing',
    'live.js',
    'events',
    'play/c1',
    'scan/c1/2.14',
    'sound/c1',
  ])('forbids what it does not need: %j', async (way) => {
    const { headers } = await get(way);
    expect(headers.get('content-security-policy')).toMatch(/^default-src 'none'; /);
    expect(headers.get('content-security-policy')).not.toMatch(/unsafe|\*|data:|http/);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    expect([...headers.keys()].filter((name) => name.startsWith('access-control'))).toEqual([]);
  });

  test('comes from this machine only', async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((all) => all ?? [])
      .filter(({ internal, family }) => !internal && family === 'IPv4')
      .map(({ address }) => address);
    for (const address of [...others, '127.0.0.2'])
      await expect(raw(port, 'GET / HTTP/1.1\r\n\r\n', address), address).rejects.toThrow(/ECONNREFUSED/);
  });
});

test('two views have two words, and a port that is taken is refused', async () => {
  const other = await openPreview(0, shipped());
  expect(other.url.split('/')[3]).toMatch(/^[\w-]{22}$/);
  expect(other.url.split('/')[3]).not.toBe(token);
  await expect(openPreview(port, shipped())).rejects.toThrow(/EADDRINUSE/);
  await other.close();
  await expect(raw(Number(new URL(other.url).port), 'GET / HTTP/1.1\r\n\r\n')).rejects.toThrow(
    /ECONNREFUSED/,
  );
});

describe('request guard', () => {
  const TOKEN = 'abcdef';
  const PORT = 8123;

  interface Asked {
    readonly method?: string;
    readonly url?: string;
    readonly headers?: readonly (readonly [string, string])[];
  }

  function ask({
    method = 'GET',
    url = `/${TOKEN}/`,
    headers = [['Host', `127.0.0.1:${PORT}`]],
  }: Asked = {}) {
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
});
