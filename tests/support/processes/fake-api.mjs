import { endOfProcess, tellParent } from '#apps/adapters/process-lifetime.js';
import { runApi } from '#apps/api/run-api.js';
import { checker, overview, reader, timing, writer } from './fake-adapters.mjs';

await runApi(
  { reader, checker, overview, writer },
  {
    databaseUrl: process.env.DATABASE_URL,
    host: '127.0.0.1',
    port: Number(process.env.PORT),
    pageFolder: 'no page',
    stopping: endOfProcess(),
    timing,
    onListening: (port) => tellParent({ kind: 'api-listening', port }),
  },
);
process.exit(0);
