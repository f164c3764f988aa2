/** Requests as bytes, which no client would send. */

import { connect } from 'node:net';

export interface Raw {
  readonly status: number;
  readonly headers: ReadonlyMap<string, string>;
  readonly body: string;
}

/** Sends bytes and reads until the server closes, or until the headers of a stream are there. */
export function raw(port: number, bytes: string, address = '127.0.0.1'): Promise<Raw> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, address);
    let text = '';
    const done = () => {
      socket.destroy();
      const [head = '', ...rest] = text.split('\r\n\r\n');
      const [first = '', ...lines] = head.split('\r\n');
      const headers = lines
        .map((line) => line.split(/: (.*)/s))
        .map(([name, value]) => [name!.toLowerCase(), value!]);
      resolve({
        status: Number(first.split(' ')[1] ?? 0),
        headers: new Map(headers as [string, string][]),
        body: rest.join('\r\n\r\n'),
      });
    };
    socket.on('connect', () => socket.write(bytes, 'latin1'));
    socket.on('data', (chunk) => {
      text += chunk.toString('utf8');
      if (/text\/event-stream/.test(text) && text.includes('\r\n\r\n')) done();
    });
    socket.on('end', done);
    socket.on('error', (fault: NodeJS.ErrnoException) =>
      fault.code === 'ECONNRESET' || fault.code === 'EPIPE' ? done() : reject(fault),
    );
  });
}

/** A request of lines; `Connection: close` is added. */
export function ask(port: number, line: string, headers: readonly string[], body = ''): Promise<Raw> {
  return raw(port, [`${line} HTTP/1.1`, ...headers, 'Connection: close', '', body].join('\r\n'));
}
