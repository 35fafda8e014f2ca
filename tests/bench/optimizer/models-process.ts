/**
 * Writes the models of a campus in a process of its own, so that a solver that fails in it ends nothing
 * else: `node models-process.js CAMPUS REACHED FOLDER SECONDS`. For each formulation FOLDER gets a file in
 * MPS and one that Node can read back; a JSON line for each is printed.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { writeMps } from '#mip/write-mps.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { loadHighsSolver } from '#solver-highs/highs-solver.js';
import { printLine } from '../print-line.js';
import { FORMULATIONS, type Reached } from './formulations.js';
import type { WrittenModel } from './models.js';

const [path = '', reachedPath = '', folder = '', seconds = '0'] = process.argv.slice(2);
const load = loadCampusFile(readFileSync(path, 'utf8'));
if (!load.ok) throw new Error(`${path} is no sound campus file`);
const reached = deserialize(readFileSync(reachedPath)) as Reached;
const solver = await loadHighsSolver();
for (const [formulation, write] of Object.entries(FORMULATIONS)) {
  const model = write({ campus: load.campus, reached, solver, seconds: Number(seconds) });
  if (!model) continue;
  const text = writeMps(model);
  const mps = join(folder, `${formulation}.mps`);
  const serialized = join(folder, `${formulation}.v8`);
  writeFileSync(mps, text);
  writeFileSync(serialized, serialize(model));
  const written: WrittenModel = {
    formulation,
    files: { mps, serialized, sense: model.sense },
    size: {
      rows: model.rowLabels.length,
      columns: model.variables.length,
      terms: model.rows.values.length,
    },
    hash: createHash('sha256').update(text).digest('hex'),
  };
  printLine(written);
}
