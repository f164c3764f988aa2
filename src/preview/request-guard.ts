/** Who may ask for what: the pages of unpublished work are for the eyes at this machine only. */

import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** The longest address, in characters, and the longest body, in bytes. */
export const LONGEST_ADDRESS = 4096;
export const LONGEST_BODY = 4096;

/** On every answer. Nothing from elsewhere is loaded, nobody else may frame or read it. */
export const HEADERS: Readonly<Record<string, string>> = {
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
