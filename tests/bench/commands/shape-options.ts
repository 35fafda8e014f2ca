import { KINDS, type Kind } from '../programs/shape.js';

/** A bench's command was given something that it cannot use. */
export class UsageError extends Error {}

/** Numbers of an option, separated by commas. */
export function numbers(option: string, text: string, { most }: { most: number }): number[] {
  return text.split(',').map((part) => {
    const value = Number(part);
    if (part.trim() !== '' && Number.isSafeInteger(value) && value >= 0 && value <= most) {
      return value;
    }
    throw new UsageError(`--${option} ${part}: give whole numbers from 0 to ${most}.`);
  });
}

export function oneNumber(option: string, text: string, limits: { most: number }): number {
  const [value, ...more] = numbers(option, text, limits);
  if (value === undefined || more.length > 0) throw new UsageError(`--${option}: give one number.`);
  return value;
}

/** Kinds of programs, separated by commas. */
export function kinds(text: string): Kind[] {
  return text.split(',').map((part) => {
    const kind = KINDS.find((known) => known === part);
    if (kind) return kind;
    throw new UsageError(`--kind ${part}: there are ${KINDS.join(', ')}.`);
  });
}

export const MOST = { sites: 500, years: 50, types: 10, seed: 2 ** 31 } as const;
