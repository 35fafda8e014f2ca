import { nearestOf } from '#contracts/reading/nearest.js';
import type { SiteParts } from '#contracts/site-parts.js';
import type { MeasuredValue } from '#domain/measured.js';
import { anError, aWarning, type Problem, type ProblemText } from '#domain/problem.js';
import { overrideFindings } from '#estimating/defaults/coefficients.js';
import { DEFAULTS, type DefaultKey } from '#estimating/defaults/defaults.data.js';
import { isDefaultKey, isUnitOf, measured } from '#estimating/defaults/overrides-at.js';
import { STATED_IN_FILE } from '#estimating/defaults/stated-in-file.data.js';
import { metricUnit } from '#units/measure.js';

/** What is wrong with the measured values of a campus and its sites. */
export function overrideProblems(parts: SiteParts): Problem[] {
  const sites = [...parts.candidates, ...parts.existing];
  const lists = [
    { record: 'the file', values: parts.overrides ?? [] },
    ...sites.map(({ id, overrides = [] }) => ({ record: `site ${id}`, values: overrides })),
  ];
  return lists.flatMap(({ record, values }) => [
    ...values.flatMap((value) => valueProblems(record, value)),
    ...values.flatMap((value) => futureProblems({ record, dataDate: parts.dataDate }, value)),
    ...repeatProblems(record, values),
  ]);
}

/** Numbers that define what is told, and that no campus can measure. */
const NOT_MEASURED: ReadonlySet<DefaultKey> = new Set(['cost.class-5-low', 'cost.class-5-high']);

const NEAREST_SHOWN = 3;

function valueProblems(record: string, own: MeasuredValue): Problem[] {
  const { coefficient, unit } = own;
  const error = (part: keyof MeasuredValue, code: string, text: ProblemText) => [
    anError({ ...placeOf(record, own, part), code }, text),
  ];
  if (!isDefaultKey(coefficient)) {
    const near = nearestOf(coefficient, Object.keys(DEFAULTS), NEAREST_SHOWN).join(', ');
    return error('coefficient', 'OVERRIDE-UNKNOWN', [
      `There is no default named ${coefficient}.`,
      `Give one that the list of defaults has; the nearest are ${near}.`,
    ]);
  }
  if (NOT_MEASURED.has(coefficient)) {
    return error('coefficient', 'OVERRIDE-NOT-MEASURED', [
      `The range of an estimate is set by its class: ${coefficient} is not measured.`,
      'Leave it out; a surer design is a lower class, which this program does not estimate.',
    ]);
  }
  const stated = STATED_IN_FILE[coefficient];
  if (stated !== undefined) {
    return error('coefficient', 'OVERRIDE-STATED-ELSEWHERE', [
      `The file states ${coefficient} in a part of its own, and plans are made from that.`,
      `Give the measured value there: ${stated}.`,
    ]);
  }
  if (!isUnitOf(coefficient, unit)) {
    return error('unit', 'OVERRIDE-UNIT', [
      `The unit ${unit} does not fit ${coefficient}.`,
      `Give the value in ${unitsOf(coefficient)}.`,
    ]);
  }
  return rangeProblems(record, coefficient, own);
}

function unitsOf(key: DefaultKey): string {
  const { unit } = DEFAULTS[key];
  const metric = metricUnit(unit);
  return metric === unit ? unit : `${unit} or ${metric}`;
}

function rangeProblems(record: string, key: DefaultKey, own: MeasuredValue): Problem[] {
  return overrideFindings({ [key]: measured(key, own) }).map(({ severity, problem, remedy }) => {
    const place = placeOf(record, own, 'value');
    return severity === 'reject'
      ? anError({ ...place, code: 'OVERRIDE-IMPOSSIBLE' }, [`${problem}.`, remedy])
      : aWarning({ ...place, code: 'OVERRIDE-UNUSUAL' }, [`${problem}.`, remedy]);
  });
}

interface Dated {
  readonly record: string;
  readonly dataDate: string | undefined;
}

function futureProblems({ record, dataDate }: Dated, own: MeasuredValue): Problem[] {
  if (dataDate === undefined || own.date <= dataDate) return [];
  return [
    anError({ ...placeOf(record, own, 'date'), code: 'OVERRIDE-FROM-FUTURE' }, [
      `It is said to be measured on ${own.date}, after the day the data was confirmed, ${dataDate}.`,
      'Correct the date, or confirm the data anew and set dataDate.',
    ]),
  ];
}

function repeatProblems(record: string, values: readonly MeasuredValue[]): Problem[] {
  const names = values.map(({ coefficient }) => coefficient);
  return values
    .filter(({ coefficient }, index) => names.indexOf(coefficient) < index)
    .map((own) =>
      anError({ ...placeOf(record, own, 'coefficient'), code: 'OVERRIDE-TWICE' }, [
        `Two measured values are given for ${own.coefficient}.`,
        'Keep the one to plan with; the other can stand in its source.',
      ]),
    );
}

function placeOf(record: string, own: MeasuredValue, part: keyof MeasuredValue) {
  return { record, field: `overrides[${own.coefficient}].${part}`, value: own[part] };
}
