import { createServer, type ListenOptions, type Server, type Socket } from 'node:net';
import { ClientSession, type Backend } from './client-session.js';
import { Turns } from './turns.js';

/** Well above what an api and a few workers open (four each). */
const mostConnections = 64;

/** Milliseconds. Our own transactions take few; a client silent in one this long has forgotten it. */
const usualSilence = 30_000;

export interface WireOptions {
  readonly backend: Backend;
  readonly listen: ListenOptions;
  /** Told when the database itself failed; the process should end then. */
  readonly onBroken: (error: unknown) => void;
  readonly longestSilence?: number;
}

export interface WireServer {
  readonly server: Server;
  close(): Promise<void>;
}

/** Lets many PostgreSQL clients share the one session of an embedded database. */
export async function serveClients(wish: WireOptions): Promise<WireServer> {
  const sockets = new Set<Socket>();
  const options = { longestSilence: usualSilence, ...wish, turns: new Turns() };
  const server = createServer((socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
    new ClientSession(socket, options);
  });
  server.maxConnections = mostConnections;
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(wish.listen, resolve);
  });
  const close = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      for (const socket of sockets) socket.destroy();
    });
  return { server, close };
}
