/**
 * The process of the embedded store:
 *
 *     node dist/libs/persistence/embedded/main.js FOLDER
 *
 * Serves the database in FOLDER until it is told to stop or its parent is gone.
 */
import { lockedExitCode, type StoreMessage } from './messages.js';
import { openEmbeddedServer } from './embedded-server.js';
import { watchAnswers } from './watchdog.js';

const folder = process.argv[2];
if (folder === undefined) throw new Error('the folder of the store is missing');

const outcome = await openEmbeddedServer(folder);
if (outcome.kind === 'held-by-another') {
  tell({ kind: 'store-held-by-another', holder: outcome.holder });
  process.exit(lockedExitCode);
}
const { server } = outcome;
const stopWatching = watchAnswers(server.url, () => {
  console.error('the embedded store no longer answers; it is started again');
  process.exit(1);
});
let closing = false;

process.on('message', (message) => {
  if (message === 'stop') void close();
});
process.on('disconnect', () => void close());
process.on('SIGTERM', () => void close());
// The keyboard's Ctrl-C reaches every process at once; the parent stops the store last.
process.on('SIGINT', () => process.connected || void close());
process.on('SIGHUP', () => process.connected || void close());
tell({ kind: 'store-open', url: server.url });

async function close(): Promise<void> {
  if (closing) return;
  closing = true;
  stopWatching();
  await server.close();
  process.exit(0);
}

function tell(message: StoreMessage): void {
  if (process.send) process.send(message);
  else console.log(JSON.stringify(message));
}
