import { seededRandom, type Random } from '#units/random.js';

/** What a stream is drawn for. Each has numbers of its own, so that none moves the others. */
export const TOPICS = [
  'prices',
  'build-cost',
  'compost',
  'gifts',
  'works',
  'work-days',
  'leavers',
  'search',
] as const;
export type Topic = (typeof TOPICS)[number];

/** Names one stream: the seed of the run, the number of the future, and what is drawn. */
export interface StreamKey {
  readonly seed: number;
  readonly future: number;
  readonly topic: Topic;
}

/**
 * The numbers of one topic in one future. They depend on the key alone: not on the plan, the other
 * topics, or the thread. Two campuses that differ in money only meet the same futures.
 */
export function streamOf({ seed, future, topic }: StreamKey): Random {
  const words = [seed, future, TOPICS.indexOf(topic)];
  return seededRandom(words.reduce((hash, word) => mixed(hash ^ mixed(word + 0x9e3779b9)), 0));
}

/** Spreads the bits of a 32-bit word (the finisher of MurmurHash3, A. Appleby, public domain; from memory). */
function mixed(word: number): number {
  let h = word >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
