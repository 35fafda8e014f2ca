import { type Finding, type InputRange, rangeFindings } from '../finding.js';
import { INPUT_RANGES, type InputField } from './input-ranges.data.js';

/** Judges typed values by field; a field left out is unknown, which is no finding here. */
export function inputFindings(values: Readonly<Partial<Record<InputField, number>>>): Finding[] {
  return (Object.keys(values) as InputField[]).flatMap((field) => {
    const value = values[field];
    const range: InputRange = INPUT_RANGES[field];
    return value === undefined ? [] : rangeFindings(field, value, range);
  });
}
