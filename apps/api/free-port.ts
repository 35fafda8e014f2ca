import { createServer } from 'node:net';

/** How many ports after the wanted one are tried. */
const tries = 50;

/** The wanted port if nobody listens there, else the next free one. */
export async function freePort(wanted: number, host: string): Promise<number> {
  for (let port = wanted; port < wanted + tries && port <= 65_535; port += 1) {
    if (await isFree(port, host)) return port;
  }
  throw new Error(`the ports from ${wanted} on are all taken; set PORT to a free one`);
}

function isFree(port: number, host: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') resolve(false);
      else reject(error);
    });
    probe.listen({ port, host, exclusive: true }, () => probe.close(() => resolve(true)));
  });
}
