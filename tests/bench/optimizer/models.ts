import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serialize } from 'node:v8';
import type { Model } from '#mip/model.js';
import { runChild } from '../peers/child.js';
import type { Reached } from './formulations.js';

export interface ModelSize {
  readonly rows: number;
  readonly columns: number;
  readonly terms: number;
}

export interface ModelFiles {
  readonly mps: string;
  /** For solvers of this ecosystem. */
  readonly serialized: string;
  readonly sense: Model['sense'];
}

/** One formulation of a program, written to files. */
export interface WrittenModel {
  readonly formulation: string;
  readonly files: ModelFiles;
  readonly size: ModelSize;
  /** Of the MPS file: peers that solved the same one need not solve it again. */
  readonly hash: string;
}

/** Seconds that writing one model may take, its relaxation included. */
const SECONDS = 120;

/** Writes every formulation of a campus file that can be written into a folder. */
export async function writeModels(
  path: string,
  reached: Reached,
  folder: string,
): Promise<WrittenModel[]> {
  const reachedPath = join(folder, 'reached.v8');
  writeFileSync(reachedPath, serialize(reached));
  const script = fileURLToPath(new URL('./models-process.js', import.meta.url));
  const run = await runChild(
    process.execPath,
    [script, path, reachedPath, folder, String(SECONDS)],
    { atMostSeconds: 2 * SECONDS },
  );
  return run.lines
    .filter(({ text }) => text.startsWith('{'))
    .map(({ text }) => JSON.parse(text) as WrittenModel);
}
