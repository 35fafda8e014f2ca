import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { builtScript } from './built-script.js';

/** Threads of one solve at the most: one searches, the other proves. */
const MOST_THREADS = 2;

/** Threads that have loaded all that a solve takes, or are about to. */
const ready: Worker[] = [];

/**
 * Starts the threads of the next solve ahead of it, so that they load while its campus is read. They keep no
 * process alive, and wait until a solve takes them.
 */
export function prepareThreads(): void {
  const most = Math.min(MOST_THREADS, availableParallelism());
  while (ready.length < most) {
    const thread = newThread();
    thread.unref();
    ready.push(thread);
  }
}

/** A thread for one solve: it takes one order, and is to be ended after it. */
export function takeThread(): Worker {
  const thread = ready.shift() ?? newThread();
  thread.ref();
  return thread;
}

function newThread(): Worker {
  return new Worker(builtScript('solve-thread.js'));
}
