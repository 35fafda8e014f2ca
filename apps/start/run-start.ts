import { readFile } from 'node:fs/promises';
import { openStore, type OpenStore } from '#persistence/open-store.js';
import { ended } from '../adapters/process-lifetime.js';
import { StoppedEarlyError } from './child/launch.js';
import { campusToShow } from './demo/demo-campus.js';
import { showSolve } from './demo/show-solve.js';
import { Processes, StoreHeldError } from './processes.js';
import type { StartAdapters, StartOptions } from './start-options.js';

/**
 * Starts the store, the api and a solver, loads the demo campus into an empty store, waits for its
 * plan, writes its documents, and then serves until told to stop. Answers the exit code.
 */
export async function runStart(adapters: StartAdapters, wish: StartOptions): Promise<number> {
  const failed = new AbortController();
  const stopping = AbortSignal.any([wish.stopping, failed.signal]);
  const options = { ...wish, stopping };
  const { say } = options.terminal;
  const processes = new Processes(adapters.programs, options, (reason) => {
    if (stopping.aborted) return;
    say(`${reason}; everything is stopped.`);
    failed.abort();
  });
  try {
    await serve(adapters, options, processes);
  } catch (error) {
    if (error instanceof StoreHeldError) say(heldBy(error, options.storeFolder));
    else if (!(error instanceof StoppedEarlyError || stopping.aborted)) throw error;
    if (!wish.stopping.aborted) return 1;
  } finally {
    await processes.stopAll();
  }
  return failed.signal.aborted ? 1 : 0;
}

async function serve(
  adapters: StartAdapters,
  options: StartOptions,
  processes: Processes,
): Promise<void> {
  const { say } = options.terminal;
  if (options.databaseUrl === undefined) say('Opening the store ...');
  const databaseUrl = await processes.openStore();
  const store = await openStore(databaseUrl, () => undefined);
  try {
    const [port] = await Promise.all([
      processes.openApi(databaseUrl),
      processes.openSolver(databaseUrl),
    ]);
    if (port !== options.port) say(`Port ${options.port} is taken, so ${port} is used.`);
    await show(adapters, options, { store, address: addressOf(options.host, port) });
  } finally {
    await store.close();
  }
}

async function show(
  adapters: StartAdapters,
  options: StartOptions,
  { store, address }: { store: OpenStore; address: string },
): Promise<void> {
  const { say } = options.terminal;
  const readDemo = async (): Promise<unknown> =>
    JSON.parse(await readFile(options.demoFile, 'utf8'));
  const { campus, isNew } = await campusToShow({ ...store, ...adapters }, readDemo);
  say(`${isNew ? 'Loaded' : 'Found'} ${campus.name}, version ${campus.version}.`);
  say(`The page is at ${address}`);
  await showSolve({ store, adapters, options, campus });
  if (options.stopping.aborted) return;
  say(`\n${address}\nready`);
  await ended(options.stopping);
  say('Stopping ...');
}

function addressOf(host: string, port: number): string {
  const name = host === '0.0.0.0' || host === '::' ? 'localhost' : host;
  return `http://${name.includes(':') ? `[${name}]` : name}:${port}`;
}

function heldBy({ holder }: StoreHeldError, folder: string): string {
  const who = holder === null ? '' : ` by process ${holder.pid}, since ${holder.since}`;
  return [
    `The store in ${folder} is already open${who}.`,
    'The program is running already: use that one, or stop it first (Ctrl-C in its window).',
  ].join('\n');
}
