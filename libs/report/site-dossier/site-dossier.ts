import type { SiteDossier } from '#explain/documents/dossier/site-dossier.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { planDocument, type Edition } from '../document/edition.js';
import type { PlanDocument } from '../document/plan-document.js';
import { aboutBlocks } from '../parts/about.js';
import { cautionBox } from '../parts/caution-box.js';
import { evidenceBlocks } from './evidence.js';
import { firstPage } from './first-page.js';
import { takeoffBlocks } from './takeoff.js';

/** Everything on one site for those who review it: place and cost, takeoff and hours, evidence. */
export function siteDossierDocument(
  overview: Pick<PlanOverview, 'campus' | 'solve'>,
  dossier: SiteDossier,
  edition: Edition,
): PlanDocument {
  return planDocument(overview, edition, {
    title: 'Site dossier',
    subject: `${dossier.site} ${dossier.name}, ${dossier.zone}`,
    blocks: [
      ...firstPage(dossier),
      ...takeoffBlocks(dossier),
      ...aboutBlocks(),
      ...evidenceBlocks(dossier),
      ...cautionBox('at the site', dossier.cautions),
    ],
  });
}
