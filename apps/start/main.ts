/**
 * All of the program with one command: `npm start`. DATABASE_URL names a PostgreSQL to use instead
 * of the embedded store; HOST (127.0.0.1) and PORT (3000) say where to serve the page.
 */
import { fileURLToPath } from 'node:url';
import { endOfProcess } from '../adapters/process-lifetime.js';
import { runStart } from './run-start.js';
import { terminalOn } from './terminal/terminal.js';
import { startAdapters } from './wiring.js';

const { DATABASE_URL: databaseUrl, HOST: host = '127.0.0.1', PORT: port = '3000' } = process.env;
if (!/^\d{1,5}$/.test(port)) throw new Error(`PORT must be a number, got "${port}"`);

process.exitCode = await runStart(startAdapters(), {
  ...(databaseUrl ? { databaseUrl } : {}),
  storeFolder: inProject('.data/store'),
  outFolder: inProject('.out'),
  demoFile: inProject('seeds/demo-strained.json'),
  host,
  port: Number(port),
  stopping: endOfProcess(),
  terminal: terminalOn(process.stdout),
});
process.exit();

function inProject(path: string): string {
  return fileURLToPath(new URL(`../../../${path}`, import.meta.url));
}
