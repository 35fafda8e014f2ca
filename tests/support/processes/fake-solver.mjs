import { endOfProcess, tellParent } from '#apps/adapters/process-lifetime.js';
import { runSolver } from '#apps/solver/run-solver.js';
import { checker, overview, solving, timing } from './fake-adapters.mjs';

await runSolver(
  { solving, checker, overview },
  {
    databaseUrl: process.env.DATABASE_URL,
    stopping: endOfProcess(),
    timing,
    onReady: () => tellParent({ kind: 'solver-ready' }),
  },
);
process.exit(0);
