import { readFile } from 'node:fs/promises';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { extname, join, resolve } from 'node:path';

// From where the tests are run, as for seeds/: this file itself may be a built one.
const pageFolder = resolve('dist/web');

const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.woff2': 'font/woff2',
};

/** Answers with a file of the built page, dist/web. */
export async function sendPageFile(response: ServerResponse, path: string): Promise<void> {
  const name = path === '/' ? 'index.html' : path.slice(1);
  const bytes = await readFile(join(pageFolder, name)).catch(() => undefined);
  if (bytes === undefined) return notFound(response);
  const type = mediaTypes[extname(name)] ?? 'application/octet-stream';
  response.writeHead(200, { 'content-type': type }).end(bytes);
}

export function sendJson(response: ServerResponse, body: unknown, status = 200): void {
  response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(body));
}

export function notFound(response: ServerResponse): void {
  sendJson(response, { title: 'Not found', status: 404, detail: 'It is not here.' }, 404);
}

export async function bodyOf(request: IncomingMessage): Promise<string> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
}
