/** Positions on benefit, from the command line into the plan and back. */
import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import type { PlanFile } from '#contracts/plan-file.js';
import { runCommand } from '../../support/cli/run-command.js';
import { SMALL_CAMPUS } from '../../support/cli/small-campus.js';
import { temporaryFolder } from '../../support/cli/temporary-folder.js';

const folder = temporaryFolder();

test('a plan says in which position it was made, and is verified in it', async () => {
  const path = folder.at('kitchen.json');
  const limits = ['--work', '2', '--seed', '3', '--plan', path];
  const solved = await runCommand('solve', SMALL_CAMPUS, ...limits, '--position', 'Kitchen first');
  expect(solved.code).toBe(0);
  const text = await readFile(path, 'utf8');
  expect((JSON.parse(text) as PlanFile).campus.position).toBe('kitchen-first');
  expect((await runCommand('verify', SMALL_CAMPUS, path)).code).toBe(0);
});

test('a position that is not there is answered with those that are', async () => {
  const { code, notes } = await runCommand('solve', SMALL_CAMPUS, '--position', 'beauty first');
  expect(code).toBe(2);
  expect(notes).toContain('teaching-first, kitchen-first, least-care');
});
