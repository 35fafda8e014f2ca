import { anError, aWarning, type Problem } from '#domain/problem.js';
import { toFiscalYear } from '../conversion/values.js';
import type { FileView } from './file-view.js';

/** Works whose years run backward or are over before the plan begins. */
export function constructionProblems({ construction, time }: FileView): Problem[] {
  return construction.flatMap(({ id, from, to }) => {
    const place = { record: `works ${id}`, field: 'to', value: to };
    if (toFiscalYear(to) < toFiscalYear(from)) {
      return [
        anError({ ...place, code: 'WORKS-YEARS-INVERTED' }, [
          `The works end in ${to}, before they begin in ${from}.`,
          'Swap or correct the years.',
        ]),
      ];
    }
    if (!time || toFiscalYear(to) >= time.firstYear) return [];
    return [
      aWarning({ ...place, code: 'WORKS-OVER' }, [
        `The works are over in ${to}, before the plan begins.`,
        'Remove them, or correct the years.',
      ]),
    ];
  });
}
