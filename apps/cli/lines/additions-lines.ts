import type { AdditionRow, AdditionsAnswer } from '#explain/questions/additions/additions.js';
import { madeLines } from './made-lines.js';

const two = new Intl.NumberFormat('en-US', { maximumSignificantDigits: 2 });

/** What each addition buys, and what it buys for the money. */
export function additionsLines({ headline, additions, made }: AdditionsAnswer): string[] {
  return [headline, '', ...additions.flatMap(additionLines), '', ...madeLines(made)];
}

function additionLines(row: AdditionRow): string[] {
  const per = [
    ...perLine(row.yearsPer10000Dollars, 'promised years'),
    ...perLine(row.sitesPer10000Dollars, 'sites'),
  ];
  const money = per.length > 0 ? ` For each $10,000: ${per.join(', ')}.` : '';
  return [`  ${capital(row.sentence)}${money}`, `    ${row.note}`];
}

function perLine(value: number | null, what: string): string[] {
  return value === null ? [] : [`${two.format(value)} ${what}`];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
