import type { SiteFacts } from '#domain/site.js';

/** What to do about a fact of a site that nobody has found out. */
export interface FactCheck {
  readonly what: string;
  readonly clearedBy: string;
  readonly consequence: string;
}

/** By fact: what is missing, who can find it out, and what rests on it. */
export const FACT_CHECKS: Readonly<Record<keyof SiteFacts, FactCheck>> = {
  cover: {
    what: 'What covers the ground is not recorded.',
    clearedBy: 'A site walk with grounds',
    consequence: 'How the ground is to be prepared is not settled.',
  },
  soil: {
    what: 'The soil texture is not known.',
    clearedBy: 'A soil sample, read by a laboratory',
    consequence: 'Drainage and planting are not settled.',
  },
  ph: {
    what: 'Soil pH is not known.',
    clearedBy: 'A soil sample, read by a laboratory',
    consequence: 'The plant list is not settled.',
  },
  organicMatterPercent: {
    what: 'Soil organic matter is not known.',
    clearedBy: 'A soil sample, read by a laboratory',
    consequence: 'How much compost the ground needs is taken from the build type.',
  },
  leadMgPerKg: {
    what: 'Soil lead is not known.',
    clearedBy: 'A soil laboratory, then environmental health and safety',
    consequence: 'Unknown is not clean: nothing edible is planted until they have decided.',
  },
  slopePercent: {
    what: 'The slope is not measured.',
    clearedBy: 'A level or a survey on site',
    consequence: 'The plan counts no steep mowing as ended there.',
  },
  sunHours: {
    what: 'Hours of sun are not measured.',
    clearedBy: 'A sun survey between May and September',
    consequence: 'The plant list is not settled.',
  },
  walkersPerDay: {
    what: 'Nobody has counted those who walk past.',
    clearedBy: 'A count on two class days',
    consequence: 'The plan counts it as a quiet place.',
  },
  waterFeet: {
    what: 'The distance to water is not known.',
    clearedBy: 'The campus water or plumbing shop',
    consequence: 'Watering in the first summers is not settled.',
  },
  kitchenFeet: {
    what: 'The distance to a kitchen is not known.',
    clearedBy: 'A measurement on the campus map',
    consequence: 'How a harvest gets to the kitchen is not settled.',
  },
  truckAccess: {
    what: 'Whether a truck can reach it is not known.',
    clearedBy: 'A site walk with grounds and the delivery driver',
    consequence: 'Deliveries may have to come by wheelbarrow, which takes more hours.',
  },
  rootProtectedShare: {
    what: 'Trees and their root zones are not measured.',
    clearedBy: 'The campus arborist',
    consequence: 'The plan counts no root zone there; compost and work may have to be less.',
  },
};
