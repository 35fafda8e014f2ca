import { laterChange, type Campus } from '#domain/campus.js';
import type { Placement } from '#domain/plan.js';
import { counted } from '#units/in-words.js';
import { preparing } from './site-words.js';

/**
 * What follows once a site is first prepared: its second half, and what is made of it at an age.
 * Empty where nothing follows.
 */
export function laterInWords(campus: Campus, { secondHalf, change }: Placement): string {
  const half =
    secondHalf === undefined
      ? ''
      : `Its second half is prepared ${preparing(campus.calendar, secondHalf)}.`;
  return [half, change === undefined ? '' : changeInWords(campus, change)]
    .filter((part) => part !== '')
    .join(' ');
}

/** `At the age of 8 years: simplified to meadow.` */
export function changeInWords(campus: Campus, change: NonNullable<Placement['change']>): string {
  return `At the age of ${counted(change.age, 'year')}: ${laterChange(campus, change.id).name}.`;
}
