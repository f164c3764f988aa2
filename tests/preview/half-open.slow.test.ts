/** Connections that say nothing, or half of something, hold the places of others for a few seconds only. */

import { connect, type Socket } from 'node:net';
import { expect, test } from 'vitest';
import { openPreview } from '../../src/preview/preview-server.js';
import { ask } from './raw.js';
import { shipped } from './shipped.js';

test('as many half-open connections as there are places are closed within seconds', async () => {
  const preview = await openPreview(0, shipped());
  const { port, pathname } = new URL(preview.url);
  const sockets: Socket[] = [];
  try {
    const start = Date.now();
    const gone = Array.from({ length: 128 }, (_, i) => {
      const socket = connect(
        Number(port),
        '127.0.0.1',
        () => i % 2 === 0 && socket.write('GET / HTTP/1.1\r\nX'),
      );
      sockets.push(socket);
      socket.on('error', () => {});
      socket.resume();
      return new Promise((resolve) => socket.once('close', resolve));
    });
    await Promise.all(gone);
    const { status } = await ask(Number(port), `GET ${pathname}`, [`Host: 127.0.0.1:${port}`]);
    expect(status).toBe(200);
    // Node's own interval is 30 s; the time-out of a header is three.
    expect(Date.now() - start).toBeLessThan(20_000);
  } finally {
    for (const socket of sockets) socket.destroy();
    await preview.close();
  }
});
