import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
};

/** A folder of pages on this machine alone, every file under a strict policy. */
export interface Served {
  /** `http://127.0.0.1:…`, without a slash at its end. */
  origin: string;
  close(): Promise<void>;
}

/** The policy that the tests hold every page to. */
export const policy = "default-src 'self'";

/** Serves a folder with {@link policy}, and further files by their path. */
export async function serve(folder: string, pages: Record<string, string> = {}): Promise<Served> {
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    response.setHeader('Content-Security-Policy', policy);
    const page = pages[path];
    if (page !== undefined) {
      response.setHeader('Content-Type', types[extname(path)] ?? 'text/html; charset=utf-8');
      response.end(page);
      return;
    }
    const file = join(folder, normalize(path), path.endsWith('/') ? 'index.html' : '');
    if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true) {
      response.statusCode = 404;
      response.end();
      return;
    }
    response.setHeader('Content-Type', types[extname(file)] ?? 'application/octet-stream');
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () =>
      new Promise((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}
