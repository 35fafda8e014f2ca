import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serialize } from 'node:v8';
import type { Campus } from '#domain/campus.js';
import type { Model } from '#mip/model.js';
import { writeMps } from '#mip/write-mps.js';
import { campusModel } from '#optimizer/model/campus-model.js';
import { runCbc } from '../peers/cbc.js';
import { runGlpsol } from '../peers/glpsol.js';
import { runNodePeer } from '../peers/node-peers.js';
import type { PeerRun } from '../peers/outcome.js';
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
  readonly campus: Campus;
}

export interface ModelSize {
  readonly rows: number;
  readonly columns: number;
  readonly terms: number;
}

export interface PeerResult {
  readonly peer: PeerName;
  readonly formulation: string;
  readonly run: PeerRun;
}

export interface Contest {
  readonly name: string;
  readonly sites: number;
  readonly years: number;
  readonly seconds: number;
  readonly ours: OursRun;
  readonly sizes: Readonly<Record<string, ModelSize>>;
  readonly peers: readonly PeerResult[];
}

/** A way to write the benefit tier, with the tiers before it held at the constants that ours reached. */
export type Formulation = (campus: Campus, held: ReadonlyMap<string, number>) => Model;

/** What the peers are given: `plain` has the rules' rows and no cut of ours. */
export const FORMULATIONS: Readonly<Record<string, Formulation>> = {
  plain: (campus, held) => campusModel(campus, 'benefit', held).model,
};

export interface Terms {
  readonly seconds: number;
  readonly peers: readonly PeerName[];
  readonly onStep: (step: string) => void;
}

/** Solves a program by ours and then by each peer, one after the other, each for the same time. */
export async function contest(entry: Entry, { seconds, peers, onStep }: Terms): Promise<Contest> {
  onStep('ours');
  const ours = await runOurs(entry.path, seconds);
  const folder = mkdtempSync(join(tmpdir(), 'bench-models-'));
  const sizes: Record<string, ModelSize> = {};
  const results: PeerResult[] = [];
  try {
    for (const [formulation, write] of Object.entries(FORMULATIONS)) {
      const model = write(entry.campus, ours.held);
      sizes[formulation] = sizeOf(model);
      const files = filesOf(model, folder);
      for (const peer of peers) {
        onStep(`${peer} on the ${formulation} model`);
        results.push({ peer, formulation, run: await runPeer(peer, { ...files, seconds }) });
      }
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
  const { name, sites, years } = entry;
  return { name, sites, years, seconds, ours, sizes, peers: results };
}

function sizeOf({ rowLabels, variables, rows }: Model): ModelSize {
  return { rows: rowLabels.length, columns: variables.length, terms: rows.values.length };
}

interface PeerFiles {
  readonly mps: string;
  readonly serialized: string;
  readonly sense: Model['sense'];
}

function filesOf(model: Model, folder: string): PeerFiles {
  const mps = join(folder, 'model.mps');
  const serialized = join(folder, 'model.v8');
  writeFileSync(mps, writeMps(model));
  writeFileSync(serialized, serialize(model));
  return { mps, serialized, sense: model.sense };
}

function runPeer(
  peer: PeerName,
  { mps, serialized, sense, seconds }: PeerFiles & { readonly seconds: number },
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
