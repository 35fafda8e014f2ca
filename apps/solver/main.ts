/**
 * A solver worker. DATABASE_URL says which store it works for; any number may work for one.
 *
 *     DATABASE_URL=postgres://... node dist/apps/solver/main.js
 */
import { endOfProcess, tellParent } from '../adapters/process-lifetime.js';
import { runSolver } from './run-solver.js';
import { solverAdapters } from './wiring.js';

const databaseUrl = process.env['DATABASE_URL'];
if (databaseUrl === undefined) throw new Error('DATABASE_URL is not set');

await runSolver(solverAdapters(), {
  databaseUrl,
  stopping: endOfProcess(),
  onReady: () => tellParent({ kind: 'solver-ready' }),
});
process.exit(0);
