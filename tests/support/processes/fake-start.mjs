/** `npm start` over the fake adapters: node fake-start.mjs FOLDER PORT */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { endOfProcess } from '#apps/adapters/process-lifetime.js';
import { runStart } from '#apps/start/run-start.js';
import { terminalOn } from '#apps/start/terminal/terminal.js';
import { headline, overview, reader, writer } from './fake-adapters.mjs';

const [folder, port] = process.argv.slice(2);
const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const demoFile = join(folder, 'demo.json');
// Long enough that a busy machine, too, asks for its progress in the middle of the solve.
writeFileSync(demoFile, JSON.stringify({ name: 'Tamarack Vale', solveMilliseconds: 2500 }));

const programs = {
  store: here('../../../dist/apps/start/store/main.js'),
  api: here('./fake-api.mjs'),
  solver: here('./fake-solver.mjs'),
};
process.exitCode = await runStart(
  { reader, writer, overview, headline, programs },
  {
    storeFolder: join(folder, 'store'),
    outFolder: join(folder, 'out'),
    demoFile,
    host: '127.0.0.1',
    port: Number(port),
    stopping: endOfProcess(),
    terminal: terminalOn(process.stdout),
  },
);
process.exit();
