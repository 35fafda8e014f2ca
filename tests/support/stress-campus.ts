import type { CampusFile } from '#contracts/campus-file.schema.js';
import { generatedFile } from '../bench/programs/generated-program.js';

/** Longer than any name on a sign, with a word longer than any column. */
const LONG =
  'Memorial Grove of the Department of Landscape Stewardship and Donaudampfschifffahrtsgesellschaft';

/** A campus whose every name is at its longest, of so many sites and years; without gifts on demand. */
export function stressFile(of: {
  readonly sites: number;
  readonly years: number;
  readonly gifts: 'some' | 'none';
}): CampusFile {
  const file = generatedFile({ sites: of.sites, years: of.years, kind: 'tight', seed: 7 });
  const funds = file.funds.filter(
    ({ kind }) => of.gifts === 'some' || !['gift', 'reunion-gift', 'grant'].includes(kind),
  );
  return {
    ...file,
    name: `University of ${LONG}`,
    program: `Program of the ${LONG}`,
    zones: file.zones.map((zone, place) => ({ ...zone, name: `Zone ${place + 1} of the ${LONG}` })),
    candidateSites: file.candidateSites.map((site, place) => ({
      ...site,
      name: `${LONG}, ${place + 1}`,
    })),
    buildTypes: file.buildTypes.map((type) => ({ ...type, name: `${type.name} of the ${LONG}` })),
    funds: funds.map((fund) => ({ ...fund, name: `${fund.name} of the ${LONG}` })),
  };
}
