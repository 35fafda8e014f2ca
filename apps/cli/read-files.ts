import { readFile, writeFile } from 'node:fs/promises';
import { parsePlanFile, planOriginProblems, toPlan, type PlanFile } from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { Plan } from '#domain/plan.js';
import type { Problem } from '#domain/problem.js';
import { loadCampusFile } from '#planning/load-campus-file.js';
import { CommandFailure, EXIT } from './exit-codes.js';
import { problemLines } from './problem-lines.js';

/** The text of a file a user named. */
export async function readText(path: string): Promise<string> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    throw new CommandFailure(EXIT.badInput, [`${path} cannot be read: ${reasonOf(error)}`]);
  }
}

export async function writeText(path: string, text: string | Uint8Array): Promise<void> {
  try {
    await writeFile(path, text);
  } catch (error) {
    throw new CommandFailure(EXIT.badInput, [`${path} cannot be written: ${reasonOf(error)}`]);
  }
}

function reasonOf(error: unknown): string {
  const code = (error as { code?: string }).code;
  const known: Record<string, string> = {
    ENOENT: 'there is no such file or folder',
    EISDIR: 'it is a folder',
    EACCES: 'this user may not use it',
    ENOSPC: 'the disk is full',
  };
  return (code !== undefined && known[code]) || (error instanceof Error ? error.message : String(error));
}

export interface CampusInput {
  readonly campus: Campus;
  /** The file as it was given. */
  readonly document: unknown;
  readonly warnings: readonly Problem[];
}

/** Loads a campus file; where it cannot be used, all of its problems are the failure. */
export async function readCampus(path: string): Promise<CampusInput> {
  const load = loadCampusFile(await readText(path));
  if (load.ok) return { campus: load.campus, document: load.file, warnings: load.warnings };
  throw badFile(path, load.problems);
}

export interface PlanInput {
  readonly file: PlanFile;
  readonly plan: Plan;
}

/** Loads a plan file made from a campus file. */
export async function readPlan(path: string, { campus, document }: CampusInput): Promise<PlanInput> {
  const parse = parsePlanFile(await readText(path));
  if (!parse.ok) throw badFile(path, parse.problems);
  const origin = planOriginProblems(parse.file, document);
  const reading = toPlan(parse.file, campus);
  const problems = [...origin, ...(reading.ok ? [] : reading.problems)];
  if (!reading.ok || problems.length > 0) throw badFile(path, problems);
  return { file: parse.file, plan: reading.plan };
}

function badFile(path: string, problems: readonly Problem[]): CommandFailure {
  return new CommandFailure(EXIT.badInput, [`${path} cannot be used:`, ...problemLines(problems)]);
}
