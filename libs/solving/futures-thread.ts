/** A thread that meets one order of futures after another; started by `openFuturesPool`. */
import { parentPort } from 'node:worker_threads';
import { meetFutures } from '#futures/meet-futures.js';
import type { FuturesOrder } from '#futures/order.js';

parentPort?.on('message', (order: FuturesOrder) => parentPort?.postMessage(meetFutures(order)));
