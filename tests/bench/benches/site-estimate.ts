import { readFileSync } from 'node:fs';
import { parseCampusFile } from '#contracts/parse-campus-file.js';
import type { Campus } from '#domain/campus.js';
import { estimateSite } from '#estimating/site/site-estimate.js';
import { siteCharges } from '#estimating/site-charges/site-charges.js';
import type { Bench } from '../bench.js';

function demoCampus(): Campus {
  const parsed = parseCampusFile(readFileSync('seeds/demo-strained.json', 'utf8'));
  if (!parsed.ok) throw new Error('the demo campus file is not sound');
  return parsed.campus;
}

/** Estimates so many sites, going round the candidates of the demo campus. */
export const siteEstimate: Bench = {
  name: 'site-estimate',
  about:
    'whole build-up of sites, every number open to its inputs (ours; 10,000 sites a second is asked for), ' +
    'against only what plans are charged',
  sizeUnit: 'sites',
  sizes: [100, 1_000, 10_000],
  contenders: (sites) => {
    const campus = demoCampus();
    const { candidates } = campus;
    const each = (work: (site: (typeof candidates)[number], type: string) => unknown): number => {
      let done = 0;
      for (let i = 0; i < sites; i += 1) {
        const site = candidates[i % candidates.length];
        const type = site?.buildTypes[0];
        if (site && type && work(site, type)) done += 1;
      }
      return done;
    };
    return [
      {
        name: 'whole build-up',
        run: () =>
          each((site, buildTypeId) =>
            estimateSite({ campus, site, buildTypeId, yearsFromPriceYear: 0 }),
          ),
      },
      {
        name: 'charges of a plan',
        run: () => each((site, type) => siteCharges(campus, site, type)),
      },
    ];
  },
};
