import type { SiteFacts } from '#domain/site.js';
import type { Known } from '#units/known.js';
import { percentInWords, wholeInWords } from '#units/in-words.js';
import type { SiteFact } from './site-dossier.js';

/** What is known of the ground, in the words of a reviewer; what is not known stays unknown. */
export function factRows(facts: SiteFacts): SiteFact[] {
  return [
    told('Cover', facts.cover, String),
    told('Soil', facts.soil, String),
    told('Soil pH', facts.ph, String),
    told('Organic matter', facts.organicMatterPercent, (value) => `${value}%`),
    told('Soil lead, screening', facts.leadMgPerKg, (value) => `${wholeInWords(value)} mg/kg`),
    told('Slope', facts.slopePercent, (value) => `${value}%`),
    told('Sun', facts.sunHours, (value) => `${value} h a day, May to mid-September`),
    told('Walkers a day', facts.walkersPerDay, wholeInWords),
    told('To water', facts.waterFeet, (value) => `${wholeInWords(value)} ft`),
    told('To a kitchen', facts.kitchenFeet, (value) => `${wholeInWords(value)} ft`),
    told('Truck access', facts.truckAccess, (value) => (value ? 'yes' : 'no')),
    told('In root protection', facts.rootProtectedShare, (value) =>
      value === 0 ? 'none' : `${percentInWords(value)} of the site`,
    ),
  ];
}

function told<T>(label: string, fact: Known<T>, words: (value: T) => string): SiteFact {
  return { label, value: fact.known ? words(fact.value) : null };
}
