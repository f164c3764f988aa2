/** The server of the live view: on this machine's own address, from memory, for who knows its word. */

import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { EpisodePlay } from './play-data.js';
import { type CutAnswer, type CutSummary, PreviewStore } from './preview-store.js';
import type { ServedFile, ShownCut } from './shown-cut.js';

export interface Preview {
  /** Where a browser finds it; ends in `/`. */
  readonly url: string;
  /** Shows a cut, in place of its earlier self. */
  put(cut: ShownCut): void;
  /** Which cuts there are, by their ids, in story order. */
  list(ids: readonly string[]): void;
  /** Who knows the episode that a cut (by its id) lies in; null: there is no such cut. */
  episodes(of: (id: string) => EpisodePlay | null): void;
  close(): Promise<void>;
}

const LOOPBACK = '127.0.0.1';
/** Pages that follow the events at the same time. */
const MOST_FOLLOWERS = 32;
/** A line now and then, ms, so that nobody between takes a quiet connection for a dead one. */
const KEEP_ALIVE = 15_000;

/** Of a line, a column or a row: from 1. */
const NUMBER = /^[1-9]\d{0,6}$/;

const JSON_TYPE = 'application/json; charset=utf-8';
const PLAIN = 'text/plain; charset=utf-8';

/** What the installation brings; both throw where it has lost a file. */
export interface ShippedFiles {
  font(weight: 'regular' | 'bold'): Uint8Array;
  page(name: PageFile): Uint8Array;
}

/** A page of the live view that follows the events. */
interface Follower {
  readonly response: ServerResponse;
  /** As it calls itself when it asks for a cut; '': it never says. */
  readonly name: string;
  /** The cut that it has asked for last, with the keys of the pages that it has of it or is about to ask for; null: none yet. */
  shows: { readonly id: string; readonly keys: ReadonlySet<string> } | null;
}

/** Rejects where the port is not to be had. */
export function openPreview(port: number, shipped: ShippedFiles): Promise<Preview> {
  const server = new PreviewServer(shipped);
  return server.listen(port);
}

class PreviewServer {
  private readonly store = new PreviewStore();
  private readonly token = newToken();
  private readonly assets: ReadonlyMap<string, Asset>;
  private readonly followers = new Set<Follower>();
  private readonly beat = setInterval(() => this.toAll(':\n\n'), KEEP_ALIVE);
  private port = 0;
  private episodeOf: (id: string) => EpisodePlay | null = () => null;
  private readonly server = createServer(
    {
      maxHeaderSize: 16 * 1024,
      requestTimeout: 10_000,
      headersTimeout: 3_000,
      keepAliveTimeout: 5_000,
      // Node looks at the two time-outs only so often, by itself every half minute.
      connectionsCheckingInterval: 500,
    },
    (request, response) => {
      this.answer(request, response).catch(() => plainly(response, 500));
    },
  );

  constructor(private readonly shipped: ShippedFiles) {
    this.assets = pageAssets(shipped.page);
    this.beat.unref();
    this.server.maxConnections = 128;
  }

  listen(port: number): Promise<Preview> {
    return new Promise((resolve, reject) => {
      this.server.once('error', (fault) => {
        clearInterval(this.beat);
        reject(fault);
      });
      this.server.listen(port, LOOPBACK, () => {
        this.port = (this.server.address() as AddressInfo).port;
        resolve({
          url: `http://${LOOPBACK}:${this.port}/${this.token}/`,
          put: (cut) => {
            const { fresh, summary } = this.store.put(cut);
            if (fresh) this.event('cuts', this.store.summaries());
            else this.renew(summary);
          },
          list: (ids) => {
            this.store.list(ids);
            this.event('cuts', this.store.summaries());
          },
          episodes: (of) => {
            this.episodeOf = of;
          },
          close: () => this.close(),
        });
      });
    });
  }

  private close(): Promise<void> {
    clearInterval(this.beat);
    for (const { response } of this.followers) response.end();
    return new Promise((resolve) => {
      this.server.close(() => resolve());
      this.server.closeAllConnections();
    });
  }

  private async answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const admitted = admitRequest(request, this.token, this.port);
    if ('refused' in admitted) {
      request.resume();
      return plainly(response, admitted.refused);
    }
    const { way, query } = admitted;
    const asset = this.assets.get(way);
    if (asset) return send(response, asset.type, asset.bytes);
    const [kind, id = '', key = '', ...more] = way.split('/');
    if (more.length > 0) return plainly(response, 404);
    switch (kind) {
      case 'events':
        return id === ''
          ? this.follow(request, response, query.get('follower') ?? '')
          : plainly(response, 404);
      case 'cut':
        return key === '' ? this.cut(response, id, query.get('follower') ?? '') : plainly(response, 404);
      case 'page':
        return give(response, 'image/svg+xml', this.store.page(id, key));
      case 'play':
        return give(response, JSON_TYPE, key === '' ? this.store.play(id) : null);
      case 'episode': {
        const episode = key === '' ? this.episodeOf(id) : null;
        return give(response, JSON_TYPE, episode && JSON.stringify(episode));
      }
      case 'scan':
        return handOver(response, this.store.scan(id, key));
      case 'sound':
        return handOver(response, key === '' ? this.store.sound(id) : null);
      case 'font':
        if (key !== '' || (id !== 'regular' && id !== 'bold')) return plainly(response, 404);
        return send(response, 'font/ttf', this.shipped.font(id), {
          'Cache-Control': 'private, max-age=86400',
        });
      case 'at':
        return id === '' ? this.at(request, response, query) : plainly(response, 404);
      case 'source':
        return key === '' ? this.source(response, id, query) : plainly(response, 404);
      default:
        return plainly(response, 404);
    }
  }

  /** The page asks where the text says what a row shows; editors that follow the events hear the answer. */
  private source(response: ServerResponse, id: string, query: URLSearchParams): void {
    const frame = query.get('frame') ?? '';
    if (!NUMBER.test(frame)) {
      plainly(response, 400);
      return;
    }
    const place = this.store.source(id, Number(frame), query.get('level'));
    if (place) this.event('source', place);
    give(response, JSON_TYPE, place && JSON.stringify(place));
  }

  /** An editor asks for the rows of a line, or of what stands at a column of it. */
  private async at(
    request: IncomingMessage,
    response: ServerResponse,
    query: URLSearchParams,
  ): Promise<void> {
    const body = request.method === 'POST' ? await bodyOf(request) : '';
    if (body === null) return plainly(response, 413);
    const asked = new URLSearchParams(body);
    const file = query.get('file') ?? asked.get('file') ?? '';
    const line = query.get('line') ?? asked.get('line') ?? '';
    const column = query.get('column') ?? asked.get('column');
    if (!NUMBER.test(line) || file === '') return plainly(response, 400);
    if (column !== null && !NUMBER.test(column)) return plainly(response, 400);
    const lit = this.store.lit(file, Number(line), column === null ? null : Number(column));
    if (!lit) return plainly(response, 404);
    this.event('at', lit);
    return give(response, JSON_TYPE, JSON.stringify(lit));
  }

  private cut(response: ServerResponse, id: string, name: string): void {
    const answer = this.store.cut(id);
    for (const follower of this.followers)
      if (name !== '' && follower.name === name) follower.shows = shownBy(answer);
    give(response, JSON_TYPE, answer && JSON.stringify(answer));
  }

  /**
   * A cut is another one now. Who shows it gets all that is new of it at once, before the program goes on to other work; all others
   * hear of it.
   */
  private renew(summary: CutSummary): void {
    for (const follower of this.followers) {
      const { response, shows } = follower;
      // Who has not yet read what was sent before asks for it later, however often it is saved until then.
      const answer =
        shows?.id === summary.id && !response.writableNeedDrain ? this.store.cut(summary.id) : null;
      if (!answer) {
        response.write(eventText('cut', summary));
        continue;
      }
      const fresh = answer.pages.filter(({ key }) => !shows!.keys.has(key));
      const drawings = Object.fromEntries(fresh.map(({ key }) => [key, this.store.page(answer.id, key)]));
      follower.shows = shownBy(answer);
      response.write(eventText('shown', { ...answer, drawings }));
    }
  }

  private follow(request: IncomingMessage, response: ServerResponse, name: string): void {
    if (this.followers.size >= MOST_FOLLOWERS) {
      plainly(response, 503);
      return;
    }
    response.writeHead(200, { ...HEADERS, 'Content-Type': 'text/event-stream; charset=utf-8' });
    response.write(`retry: 1000\n${eventText('cuts', this.store.summaries())}`);
    const follower: Follower = { response, name, shows: null };
    this.followers.add(follower);
    request.once('close', () => this.followers.delete(follower));
  }

  private event(name: string, data: unknown): void {
    this.toAll(eventText(name, data));
  }

  private toAll(text: string): void {
    for (const { response } of this.followers) response.write(text);
  }
}

function shownBy(answer: CutAnswer | null): Follower['shows'] {
  return answer && { id: answer.id, keys: new Set(answer.pages.map(({ key }) => key)) };
}

function eventText(name: string, data: unknown): string {
  return `event: ${name}\ndata: ${JSON.stringify(data)}\n\n`;
}

/** Null: it is too long. */
async function bodyOf(request: IncomingMessage): Promise<string | null> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request) {
    length += (chunk as Buffer).length;
    if (length > LONGEST_BODY) return null;
    chunks.push(chunk as Buffer);
  }
  return Buffer.concat(chunks).toString('utf8');
}

function give(response: ServerResponse, type: string, text: string | null): void {
  if (text === null) plainly(response, 404);
  else send(response, type, Buffer.from(text));
}

function handOver(response: ServerResponse, file: ServedFile | null): void {
  if (file === null) plainly(response, 404);
  else send(response, file.type, file.bytes);
}

function send(
  response: ServerResponse,
  type: string,
  bytes: Uint8Array,
  more: Readonly<Record<string, string>> = {},
): void {
  response.writeHead(200, { ...HEADERS, 'Content-Type': type, 'Content-Length': bytes.length, ...more });
  response.end(bytes);
}

const WORDS: Readonly<Record<number, string>> = {
  400: 'not understood',
  403: 'not for you',
  404: 'not here',
  405: 'GET only',
  413: 'too long',
  414: 'too long',
  500: 'the program failed',
  503: 'too many',
};

/** Refuses, and says nothing of what was asked. */
function plainly(response: ServerResponse, status: number): void {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  const words = `${WORDS[status]}\n`;
  response.writeHead(status, {
    ...HEADERS,
    'Content-Type': PLAIN,
    'Content-Length': words.length,
    Connection: 'close',
    ...(status === 405 ? { Allow: 'GET, POST' } : {}),
  });
  response.end(words);
}

// ---- who may ask for what: the pages of unpublished work are for the eyes at this machine only

/** The longest address, in characters, and the longest body, in bytes. */
export const LONGEST_ADDRESS = 4096;
const LONGEST_BODY = 4096;

/** On every answer. Nothing from elsewhere is loaded, nobody else may frame or read it. */
const HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cache-Control': 'no-store',
};

/** 128 bits that nobody guesses. */
export function newToken(): string {
  return randomBytes(16).toString('base64url');
}

/** What a request is for: the way behind the token, and what is asked. Or the status that it is refused with. */
export type Admission =
  | { readonly way: string; readonly query: URLSearchParams }
  | { readonly refused: 403 | 404 | 405 | 414 };

/** `port`: where the server listens. */
export function admitRequest(request: IncomingMessage, token: string, port: number): Admission {
  const { method, url = '', rawHeaders } = request;
  const hosts = rawHeaders.filter((_, i) => i % 2 === 0 && rawHeaders[i]!.toLowerCase() === 'host');
  const own = [`127.0.0.1:${port}`, `localhost:${port}`, `[::1]:${port}`];
  // A page of another site whose name was made to lead here still says that name.
  if (hosts.length !== 1 || !own.includes(request.headers.host?.toLowerCase() ?? '')) return { refused: 403 };
  const { origin } = request.headers;
  if (origin !== undefined && !own.some((host) => origin === `http://${host}`)) return { refused: 403 };
  if (method !== 'GET' && method !== 'POST') return { refused: 405 };
  if (url.length > LONGEST_ADDRESS) return { refused: 414 };
  const [path = '', query = ''] = split(url);
  const [empty, word = '', ...rest] = path.split('/');
  if (empty !== '' || rest.length === 0 || !equal(word, token)) return { refused: 404 };
  const way = rest.join('/');
  if (method === 'POST' && way !== 'at') return { refused: 405 };
  return { way, query: new URLSearchParams(query) };
}

function split(url: string): [string, string] {
  const mark = url.indexOf('?');
  return mark < 0 ? [url, ''] : [url.slice(0, mark), url.slice(mark + 1)];
}

function equal(a: string, b: string): boolean {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
}

// ---- the files of the page itself, by their ways

const TYPES = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
} as const;

interface Asset {
  readonly type: string;
  readonly bytes: Uint8Array;
}

const WAYS = {
  '': 'live.html',
  'live.css': 'live.css',
  'live.js': 'live.js',
  'page-modules.js': 'page-modules.js',
} as const;

type PageFile = (typeof WAYS)[keyof typeof WAYS];

/** `read` throws where the installation has lost one. */
function pageAssets(read: (name: PageFile) => Uint8Array): ReadonlyMap<string, Asset> {
  return new Map(
    Object.entries(WAYS).map(([way, name]) => {
      const ending = name.slice(name.lastIndexOf('.') + 1) as keyof typeof TYPES;
      return [way, { type: TYPES[ending], bytes: read(name) }];
    }),
  );
}
