import type { Edition } from '#report/document/edition.js';
import { documentOf } from '#planning/documents/plan-documents.js';
import { renderPdf } from '#report-pdf/render-pdf.js';
import { constructedSource } from '../../support/plan-source.js';
import { stressFile } from '../../support/stress-campus.js';
import type { Bench } from '../bench.js';

const EDITION: Edition = { planVersion: 'a1b2c3d4', createdAt: '2026-11-25' };
const YEARS = 50;

/** The longest document: so many sites with the longest names, over fifty years. */
export const longRangePlan: Bench = {
  name: 'long-range-plan',
  about:
    'from a plan over 50 years to the bytes of its longest document (ours; 120 sites in 5 s are asked for), ' +
    'against only what it says',
  sizeUnit: 'sites',
  sizes: [6, 120],
  contenders: (sites) => {
    const source = constructedSource(stressFile({ sites, years: YEARS, gifts: 'some' }));
    const said = () => documentOf(source, { kind: 'long-range-plan' }, EDITION);
    return [
      { name: 'to the bytes', run: () => renderPdf(said()) },
      { name: 'what it says', run: said },
    ];
  },
};
