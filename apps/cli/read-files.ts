import { readFile, writeFile } from 'node:fs/promises';
import { parsePlanFile, planOriginProblems, toPlan, type PlanFile } from '#contracts/plan-file.js';
import type { Campus } from '#domain/campus.js';
import type { Decisions, Plan } from '#domain/plan.js';
import type { Problem } from '#domain/problem.js';
import { inPosition } from '#planning/benefit-position.js';
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

/** Why a file could not be used, and what to do. */
export function reasonOf(error: unknown): string {
  const code = (error as { code?: string }).code;
  const known: Record<string, string> = {
    ENOENT: 'there is no such file or folder; look at the name',
    EISDIR: 'it is a folder; give a file',
    ENOTDIR: 'a part of its path is not a folder; look at the name',
    EACCES: 'this user may not use it; give another, or ask for the right to it',
    EPERM: 'this user may not use it; give another, or ask for the right to it',
    EROFS: 'the disk can only be read; give a place on another',
    ENOSPC: 'the disk is full; make room, or give a place on another',
  };
  const reason = code === undefined ? undefined : known[code];
  return reason ?? (error instanceof Error ? error.message : String(error));
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

/** The campus as a position on benefit sees it; where it cannot take the position, that is the failure. */
export function campusInPosition({ campus }: CampusInput, position: string | undefined): Campus {
  const taken = inPosition(campus, position);
  if (taken.ok) return taken.campus;
  throw new CommandFailure(EXIT.badInput, problemLines([taken.problem]));
}

/** Loads a plan file made from this very campus file; whether its rows make a plan is not asked. */
export async function readPlanFile(path: string, { document }: CampusInput): Promise<PlanFile> {
  const parse = parsePlanFile(await readText(path));
  if (!parse.ok) throw badFile(path, parse.problems);
  const origin = planOriginProblems(parse.file, document);
  if (origin.length > 0) throw badFile(path, origin);
  return parse.file;
}

export interface PlanInput {
  readonly file: PlanFile;
  readonly plan: Plan;
  /** The campus in the position on benefit that was planned for. */
  readonly campus: Campus;
}

/** Loads a plan file made from a campus file, and the plan in it. */
export async function readPlan(path: string, input: CampusInput): Promise<PlanInput> {
  const file = await readPlanFile(path, input);
  const campus = campusInPosition(input, file.campus.position);
  const reading = toPlan(file, campus);
  if (!reading.ok) throw badFile(path, reading.problems);
  return { file, plan: reading.plan, campus };
}

/** The decisions of a plan file, which may be of an earlier state of the campus. */
export async function readEarlierPlan(path: string, campus: Campus): Promise<Decisions> {
  const parse = parsePlanFile(await readText(path));
  if (!parse.ok) throw badFile(path, parse.problems);
  const reading = toPlan(parse.file, campus);
  if (!reading.ok) throw badFile(path, reading.problems);
  return reading.plan.decisions;
}

function badFile(path: string, problems: readonly Problem[]): CommandFailure {
  return new CommandFailure(EXIT.badInput, [`${path} cannot be used:`, ...problemLines(problems)]);
}
