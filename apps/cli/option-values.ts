import { InvalidArgumentError } from 'commander';
import { longestSolveSeconds } from '#planning/solve-limits.js';

function numberFrom(text: string, test: (n: number) => boolean, what: string): number {
  const value = Number(text);
  if (text.trim() === '' || !Number.isFinite(value) || !test(value))
    throw new InvalidArgumentError(`It must be ${what}.`);
  return value;
}

export const solveSeconds = (text: string) =>
  numberFrom(
    text,
    (n) => n > 0 && n <= longestSolveSeconds,
    `a number above 0, at most ${longestSolveSeconds}`,
  );
export const wholePositive = (text: string) =>
  numberFrom(text, (n) => Number.isSafeInteger(n) && n > 0, 'a whole number above 0');
export const wholeOrZero = (text: string) =>
  numberFrom(text, (n) => Number.isSafeInteger(n) && n >= 0, 'a whole number, 0 or above');
export const share = (text: string) =>
  numberFrom(text, (n) => n >= 0 && n < 1, 'a share from 0 to below 1, such as 0.01');
