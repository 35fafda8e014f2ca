import { oneNumber, UsageError } from './shape-options.js';

/** A number for programs of any size, and others for some sizes. */
export type Sized = (sites: number) => number | undefined;

/** Reads `60` or `60,120:120,300:90`: 60, but 120 for programs of 120 sites and 90 for those of 300. */
export function sizedNumber(option: string, text: string | undefined, most: number): Sized {
  let common: number | undefined;
  const bySites = new Map<number, number>();
  for (const part of text === undefined ? [] : text.split(',')) {
    const [first = '', second, ...more] = part.split(':');
    if (more.length > 0) throw new UsageError(`--${option} ${part}: give SITES:NUMBER.`);
    if (second === undefined) common = oneNumber(option, first, { most });
    else bySites.set(oneNumber(option, first, { most: 1e6 }), oneNumber(option, second, { most }));
  }
  return (sites) => bySites.get(sites) ?? common;
}
