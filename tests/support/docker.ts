import { existsSync } from 'node:fs';
import { request, type RequestOptions } from 'node:http';
import { homedir } from 'node:os';

/**
 * Whether a Docker engine answers within a second. Asks the engine itself, as the client program
 * may be there without an engine and an engine without the client.
 */
export async function dockerAnswers(): Promise<boolean> {
  const addresses = engineAddresses();
  const answers = await Promise.all(addresses.map(ping));
  return answers.some(Boolean);
}

function engineAddresses(): readonly RequestOptions[] {
  const host = process.env['DOCKER_HOST'];
  if (host !== undefined && host !== '') return [addressOf(new URL(host))];
  return ['/var/run/docker.sock', `${homedir()}/.docker/run/docker.sock`]
    .filter((socketPath) => existsSync(socketPath))
    .map((socketPath) => ({ socketPath }));
}

function addressOf(host: URL): RequestOptions {
  if (host.protocol === 'unix:') return { socketPath: host.pathname };
  return { host: host.hostname, port: host.port === '' ? 2375 : Number(host.port) };
}

function ping(address: RequestOptions): Promise<boolean> {
  return new Promise((resolve) => {
    const asked = request({ ...address, path: '/_ping', timeout: 1000 }, (reply) => {
      reply.resume();
      resolve(reply.statusCode === 200);
    });
    asked.on('timeout', () => asked.destroy());
    asked.on('error', () => resolve(false));
    asked.on('close', () => resolve(false));
    asked.end();
  });
}
