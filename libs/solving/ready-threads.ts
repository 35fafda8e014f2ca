import { Worker } from 'node:worker_threads';
import { builtScript } from './built-script.js';
import type { ThreadMessage } from './messages.js';
import { GRACE_SECONDS, MOST_THREADS } from './thread-limits.js';

/** Where a solve takes its threads from, and gives them back to. */
export interface Threads {
  readonly take: () => Worker;
  readonly giveBack: (thread: Worker) => void;
}

/** Threads that wait for an order, or load what it takes. */
const ready: Worker[] = [];

/** Threads that have done their part while their solve goes on. */
const idle = new WeakSet<Worker>();

/** Threads whose solve is over while they still do their part, and what ends them if that takes too long. */
const left = new WeakMap<Worker, NodeJS.Timeout>();

/**
 * Starts the threads of the next solve ahead of it, so that they load while its campus is read. They keep no
 * process alive, and wait until a solve takes them.
 */
export function prepareThreads(): void {
  while (ready.length < MOST_THREADS) keepReady(newThread());
}

/** A thread for one part of a solve; to be given back after it. */
function takeThread(): Worker {
  const thread = ready.shift() ?? newThread();
  thread.ref();
  return thread;
}

/**
 * Gives a thread back that nobody listens to any more. It is kept for the next solve, which finds all code
 * compiled, if it ends its part soon.
 */
function giveBack(thread: Worker): void {
  thread.unref();
  if (idle.has(thread)) return keepReady(thread);
  const timer = setTimeout(() => void thread.terminate(), 1000 * GRACE_SECONDS);
  left.set(thread, timer.unref());
}

/** The threads that this process keeps ready. */
export const readyThreads: Threads = { take: takeThread, giveBack };

function newThread(): Worker {
  const thread = new Worker(builtScript('solve-thread.js'));
  thread.on('message', ({ kind }: ThreadMessage) => {
    if (kind !== 'idle') return;
    const timer = left.get(thread);
    if (!timer) return void idle.add(thread);
    clearTimeout(timer);
    keepReady(thread);
  });
  // Whoever takes a thread listens to its end as well; one that nobody has is only forgotten.
  for (const end of ['error', 'exit']) thread.on(end, () => forget(thread));
  return thread;
}

function forget(thread: Worker): void {
  const place = ready.indexOf(thread);
  if (place >= 0) ready.splice(place, 1);
  clearTimeout(left.get(thread));
}

function keepReady(thread: Worker): void {
  idle.delete(thread);
  left.delete(thread);
  thread.unref();
  if (ready.length < MOST_THREADS) ready.push(thread);
  else void thread.terminate();
}
