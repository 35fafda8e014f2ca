import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fail, root, say } from './say.mjs';

const folder = join(root, '.out', 'ready.lock');
const patience = { seconds: 600, look: 0.2 };

/** Lets one process at a time install or build; a lock left by a dead process is taken over. */
export async function withLock(act) {
  await takeLock();
  process.once('exit', release);
  try {
    await act();
  } finally {
    release();
    process.off('exit', release);
  }
}

async function takeLock() {
  for (let look = 0; !tryLock(); look += 1) {
    if (look === 0) say('Another process is installing or building; waiting for it.');
    if (look * patience.look > patience.seconds) {
      fail(`It has not finished in ${patience.seconds} s. If nothing runs, remove ${folder}.`);
    }
    if (ownerIsDead()) release();
    await sleep(patience.look * 1000);
  }
}

function tryLock() {
  try {
    mkdirSync(join(root, '.out'), { recursive: true });
    mkdirSync(folder);
  } catch (error) {
    if (error.code === 'EEXIST') return false;
    fail(`This user cannot write in ${root} (${error.code}). Run it as the owner of the folder.`);
  }
  writeFileSync(join(folder, 'pid'), String(process.pid));
  return true;
}

/** A lock without a pid yet is a fresh one, so its owner counts as alive. */
function ownerIsDead() {
  try {
    process.kill(Number(readFileSync(join(folder, 'pid'), 'utf8')), 0);
    return false;
  } catch (error) {
    return error.code === 'ESRCH';
  }
}

function release() {
  rmSync(folder, { recursive: true, force: true });
}
