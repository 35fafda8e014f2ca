import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runCbc } from '../peers/cbc.js';
import { runGlpsol } from '../peers/glpsol.js';
import { runNodePeer } from '../peers/node-peers.js';
import type { PeerRun } from '../peers/outcome.js';
import type { Reached } from './formulations.js';
import { fingerprint, type KeptRuns } from './kept-runs.js';
import { writeModels, type ModelFiles, type ModelSize, type WrittenModel } from './models.js';
import { runOurs, type OursRun } from './ours.js';

export const PEERS = ['highs', 'glpk.js', 'cbc', 'glpsol'] as const;
export type PeerName = (typeof PEERS)[number];

/** One program to be solved by all. */
export interface Entry {
  readonly name: string;
  readonly sites: number;
  readonly years: number;
  /** Of a campus file. */
  readonly path: string;
  /** Programs of one family differ in sites alone, so that growth can be told. Left out: of none. */
  readonly family?: string;
  /** Seconds for each solver. */
  readonly seconds: number;
}

export interface PeerResult {
  readonly peer: PeerName;
  readonly formulation: string;
  readonly run: PeerRun;
}

export interface Contest extends Omit<Entry, 'path'> {
  readonly ours: OursRun;
  /** By formulation. */
  readonly sizes: Readonly<Record<string, ModelSize>>;
  readonly peers: readonly PeerResult[];
}

export interface Terms {
  readonly peers: readonly PeerName[];
  readonly formulations: readonly string[];
  readonly kept: KeptRuns;
  /** Names our solver as it is built. */
  readonly build: string;
  readonly onStep: (step: string) => void;
}

/**
 * Solves a program by ours and then by each peer, one after the other, each for the same time. What was
 * run before is taken as it is; `undefined` where only that is wanted and ours is not among it.
 */
export async function contest(
  { path, ...entry }: Entry,
  terms: Terms,
): Promise<Contest | undefined> {
  const { name, seconds } = entry;
  const key = `${fingerprint(readFileSync(path, 'utf8'))}-${terms.build}-${seconds}s`;
  const ours = await terms.kept.get(`${name}-ours-${key}`, () => {
    terms.onStep('ours');
    return runOurs({ path, seconds });
  });
  if (!ours) return undefined;
  const folder = mkdtempSync(join(tmpdir(), 'bench-models-'));
  try {
    const written = onlyOnce(() => writeModels(path, reachedBy(ours), folder));
    const models = await terms.kept.get(`${name}-models-${key}`, written);
    const sizes = Object.fromEntries((models ?? []).map((m) => [m.formulation, m.size]));
    const peers: PeerResult[] = [];
    for (const model of (models ?? []).filter((m) => terms.formulations.includes(m.formulation))) {
      peers.push(...(await peersOn({ model, written, entry }, terms)));
    }
    return { ...entry, ours, sizes, peers };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function onlyOnce<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => (made ??= make());
}

function reachedBy({ held, decisions, objective }: OursRun): Reached {
  return {
    held: new Map(Object.entries(held)),
    ...(decisions && objective !== undefined ? { best: { decisions, value: objective } } : {}),
  };
}

interface Asked {
  readonly model: WrittenModel;
  /** All models of the program in files. They are written where a peer has yet to run. */
  readonly written: () => Promise<readonly WrittenModel[]>;
  readonly entry: Omit<Entry, 'path'>;
}

async function peersOn(
  { model: { formulation, hash }, written, entry: { name, seconds } }: Asked,
  { peers, kept, onStep }: Terms,
): Promise<PeerResult[]> {
  const results: PeerResult[] = [];
  for (const peer of peers) {
    const key = `${name}-${peer}-${formulation}-${hash.slice(0, 12)}-${seconds}s`;
    const run = await kept.get(key, async () => {
      const model = (await written()).find((m) => m.formulation === formulation);
      if (!model) throw new Error(`the ${formulation} model of ${name} was not written again`);
      onStep(`${peer} on the ${formulation} model`);
      return sparing(() => runPeer(peer, model.files, seconds));
    });
    if (run) results.push({ peer, formulation, run });
  }
  return results;
}

/** What goes wrong with one peer does not end the bench. */
async function sparing(run: () => Promise<PeerRun>): Promise<PeerRun> {
  try {
    return await run();
  } catch (error) {
    console.error(error);
    return { ended: 'failed', seconds: 0, moments: [] };
  }
}

function runPeer(
  peer: PeerName,
  { mps, serialized, sense }: ModelFiles,
  seconds: number,
): Promise<PeerRun> {
  const file = { path: mps, format: 'mps' as const, sense, seconds };
  switch (peer) {
    case 'highs':
    case 'glpk.js':
      return runNodePeer(peer, serialized, seconds);
    case 'cbc':
      return runCbc(file);
    case 'glpsol':
      return runGlpsol(file);
  }
}
