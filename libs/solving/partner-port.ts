import { receiveMessageOnPort, type MessagePort } from 'node:worker_threads';
import type { News, Partner } from '#optimizer/solve/settings.js';

/** Milliseconds of one wait for news. */
const PAUSE = 20;

/**
 * The other thread of a solve behind a port. News are taken out by hand, since a solve blocks its
 * thread and no event would ever arrive.
 */
export function partnerAt(port: MessagePort): Partner {
  const sleeper = new Int32Array(new SharedArrayBuffer(4));
  return {
    tell: (news) => port.postMessage(news),
    news: () => {
      const all: News[] = [];
      for (let got = receiveMessageOnPort(port); got; got = receiveMessageOnPort(port)) {
        all.push(got.message as News);
      }
      return all;
    },
    pause: () => {
      Atomics.wait(sleeper, 0, 0, PAUSE);
    },
  };
}
