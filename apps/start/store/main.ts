/**
 * The process of the embedded store: serves the database in a folder until it is told to stop.
 *
 *     node dist/apps/start/store/main.js FOLDER
 */
import { openEmbeddedServer } from '#persistence/embedded/embedded-server.js';
import { ended, endOfProcess, tellParent } from '../../adapters/process-lifetime.js';
import { lockedExitCode, type StoreMessage } from './messages.js';

const tell = (message: StoreMessage): void => tellParent(message);
const end = endOfProcess();
const folder = process.argv[2];
if (folder === undefined) throw new Error('the folder of the store is missing');

const outcome = await openEmbeddedServer(folder, (error) => {
  console.error('the store broke:', error);
  process.exit(1);
});
if (outcome.kind === 'held-by-another') {
  tell({ kind: 'store-held-by-another', holder: outcome.holder });
  process.exit(lockedExitCode);
}
const { server } = outcome;
tell({ kind: 'store-open', url: server.url });

await ended(end);
await server.close();
process.exit(0);
