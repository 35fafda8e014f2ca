/**
 * The api. DATABASE_URL says which store; HOST (127.0.0.1) and PORT (3000) where to listen.
 *
 *     DATABASE_URL=postgres://... node dist/apps/api/main.js
 */
import { fileURLToPath } from 'node:url';
import { endOfProcess, tellParent } from '../adapters/process-lifetime.js';
import { runApi } from './run-api.js';
import { apiAdapters } from './wiring.js';

const { DATABASE_URL: databaseUrl, HOST: host = '127.0.0.1', PORT: port = '3000' } = process.env;
if (databaseUrl === undefined) throw new Error('DATABASE_URL is not set');
if (!/^\d{1,5}$/.test(port)) throw new Error(`PORT must be a number, got "${port}"`);

await runApi(apiAdapters(), {
  databaseUrl,
  host,
  port: Number(port),
  pageFolder: fileURLToPath(new URL('../../web', import.meta.url)),
  stopping: endOfProcess(),
  onListening: (chosen) => tellParent({ kind: 'api-listening', port: chosen }),
});
process.exit(0);
