import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { sizedNumber } from '../commands/sized-option.js';
import { UsageError } from '../commands/shape-options.js';
import type { PeerRun } from '../peers/outcome.js';
import { KeptRuns } from './kept-runs.js';

const run = (ended: PeerRun['ended']): PeerRun => ({ ended, seconds: 1, moments: [] });

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kept-runs-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

test('a run that is over is not run again, one that failed is', async () => {
  const kept = new KeptRuns(folder, 'run');
  await kept.get('a', () => Promise.resolve(run('failed')));
  expect(await kept.get('a', () => Promise.resolve(run('stopped')))).toEqual(run('stopped'));
  const again = () => Promise.reject(new Error('it was run again'));
  expect(await new KeptRuns(folder, 'run').get('a', again)).toEqual(run('stopped'));
});

test('models that could not be written are written again', async () => {
  const kept = new KeptRuns(folder, 'run');
  await kept.get<string[]>('models', () => Promise.resolve([]));
  expect(await kept.get('models', () => Promise.resolve(['plain']))).toEqual(['plain']);
});

test('where only kept runs are wanted nothing is run', async () => {
  const never = () => Promise.reject(new Error('it was run'));
  expect(await new KeptRuns(folder, 'only-kept').get('a', never)).toBeUndefined();
});

test('a number may differ by sites, and what is no number is refused', () => {
  const seconds = sizedNumber('seconds', '60,120:90', 3600);
  expect([seconds(36), seconds(120)]).toEqual([60, 90]);
  expect(sizedNumber('types', '120:4', 10)(36)).toBeUndefined();
  expect(() => sizedNumber('seconds', '60:x', 3600)).toThrow(UsageError);
  expect(() => sizedNumber('seconds', '1:2:3', 3600)).toThrow(UsageError);
});
