import type { ProblemText } from '#domain/problem.js';
import type { SiteColumn } from './site-columns.data.js';

export type NumberReading =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly code: string; readonly text: ProblemText };

/** A number with a decimal point and nothing else; else the likely cause of what stands there. */
export function readNumber(given: string, column: SiteColumn): NumberReading {
  const text = given.trim().replace(/\u2212/g, '-');
  if (/^-?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i.test(text)) return { ok: true, value: Number(text) };
  const [code, said] = causeOf(text, column);
  return { ok: false, code, text: said };
}

function causeOf(text: string, { unit, mayBeUnknown }: SiteColumn): [string, ProblemText] {
  if (/^-?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text)) {
    return [
      'CELL-THOUSANDS-COMMA',
      [`${text} has a comma between its thousands.`, `Write ${text.replaceAll(',', '')}.`],
    ];
  }
  if (/^-?\d+,\d+$/.test(text)) {
    return [
      'CELL-DECIMAL-COMMA',
      [`${text} has a decimal comma.`, `Write ${text.replace(',', '.')} with a decimal point.`],
    ];
  }
  if (/^-?\d{1,3}(?:\.\d{3})+,\d+$|^-?\d{1,3}(?:[  ]\d{3})+(?:[.,]\d+)?$/.test(text)) {
    return [
      'CELL-NUMBER-FORM',
      [
        `${text} is written as in another country.`,
        'Write it with digits and a decimal point only.',
      ],
    ];
  }
  if (/^[<>≤≥~]/.test(text)) return ['CELL-LIMIT-OF-LAB', limitOfLab(text)];
  const other = /^[$€£]?\s*-?[\d.,]+\s*([^\d\s].*)$/.exec(text)?.[1];
  if (other !== undefined) {
    return [
      'CELL-UNIT',
      [`${text} has a unit beside its number.`, `Give the number alone, in ${unit}.`],
    ];
  }
  const orUnknown = mayBeUnknown ? ', or write unknown' : '';
  return [
    'CELL-NOT-A-NUMBER',
    [`"${text}" is no number.`, `Give a number in ${unit}${orUnknown}.`],
  ];
}

function limitOfLab(text: string): ProblemText {
  return [
    `${text} is a limit, not a value: a laboratory writes so what it could not measure.`,
    'Give the limit itself to be on the safe side of a "less than", or write unknown.',
  ];
}
