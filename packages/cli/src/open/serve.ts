import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import sirv from 'sirv';

/** The page being served on this machine only. */
export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/**
 * Serves the built page in `folder` to this machine (loopback). Port 0 lets the system choose a free one. `job` is what a
 * job file holds, for the page to ask for at /job.json; null: there is none.
 * Rejects where the port is taken or not allowed, with the system's own error.
 */
export function servePage(folder: string, port: number, job: Buffer | null = null): Promise<Served> {
  const files = sirv(folder, { etag: true, single: true, setHeaders: (response) => setHeaders(response) });
  const server = createServer((request, response) => {
    if (!isAskedByItsAddress(request)) return refuse(response, 421, 'Asked by a name that is not its own');
    if (job === null || request.url !== '/job.json') {
      return files(request, response, () => refuse(response, 404, 'Not found'));
    }
    setHeaders(response);
    response.setHeader('Content-Type', 'application/json');
    response.end(job);
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      const { port: taken } = server.address() as AddressInfo;
      resolve({
        url: `http://127.0.0.1:${taken}/`,
        close: () =>
          new Promise((closed, failed) => {
            server.closeAllConnections();
            server.close((error) => (error === undefined ? closed() : failed(error)));
          }),
      });
    });
  });
}

/** A strange page whose own name was made to lead to this machine asks by that name, and gets no job. */
function isAskedByItsAddress({ headers }: IncomingMessage): boolean {
  return /^(127\.0\.0\.1|localhost)(:\d+)?$/.test(headers.host ?? '');
}

function refuse(response: ServerResponse, status: number, words: string): void {
  response.statusCode = status;
  response.end(words);
}

/** The page asks nothing of any other machine, and no other page may frame it. */
function setHeaders(response: ServerResponse): void {
  response.setHeader(
    'Content-Security-Policy',
    "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; worker-src 'self'; frame-ancestors 'none'",
  );
  response.setHeader('X-Content-Type-Options', 'nosniff');
  response.setHeader('Referrer-Policy', 'no-referrer');
  response.setHeader('Cache-Control', 'no-cache');
}
