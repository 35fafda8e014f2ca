import type { SiteDossier } from '#explain/documents/dossier/site-dossier.js';
import type { GiftPackage, GiftPackages } from '#explain/documents/gifts/gift-packages.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import {
  dollarsInWords,
  listInWords,
  percentInWords,
  squareFeetInWords,
  uncapitalized,
  wholeInWords,
} from '#units/in-words.js';
import { callout, options, type Option } from '../document/boxes.js';
import { planDocument, type Edition } from '../document/edition.js';
import { fact } from '../document/key-facts.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn } from '../document/table.js';
import { heading, leadParagraph, list, paragraph } from '../document/text-blocks.js';
import { sketchFigure } from '../parts/sketch.js';
import { ESTIMATE_CLASS } from '../parts/words.js';

/**
 * One place for those who may give: what it is planned to be, what a gift does with its care share,
 * and what can change. It holds no laboratory value and names nobody.
 */
export function donorProspectus(
  overview: PlanOverview,
  { place, gifts }: { readonly place: SiteDossier; readonly gifts: GiftPackages },
  edition: Edition,
): PlanDocument {
  return planDocument(overview, edition, {
    title: place.name,
    subject: `A place of the ${overview.campus.program}, ${place.zone}, ${overview.campus.name}`,
    blocks: [
      leadParagraph(
        `Planned for planting in ${place.planned?.planted ?? 'a year to be set'}, subject to approvals.`,
      ),
      paragraph(placeSentence(place)),
      sketchFigure(place, { label: place.name, height: SKETCH_HEIGHT }),
      heading(1, 'What can change, and what stays'),
      list('bullet', changes(place)),
      heading(1, 'What a gift can do'),
      paragraph(CARE),
      options(gifts.packages.map(packageOption)),
      ...givenBlocks(gifts),
      lineTable(gifts),
      callout('note', 'Before a gift is agreed', [AGREEMENT]),
    ],
  });
}

/** Tallest the sketch may be, in points. */
const SKETCH_HEIGHT = 130;

const CARE =
  'Planting is the small part. A place asks for care every year that it stands, so every package says how much of it pays for care.';

const AGREEMENT =
  'Advancement and counsel write the gift agreement: name, duration, care share, and what happens if the ground is needed. Advancement alone gives statements for taxes. This page is a plan and no promise.';

function placeSentence({ areaSqFt, buildType, components }: SiteDossier): string {
  const parts = components.map(
    ({ name, share }) => `${name.toLowerCase()} (${percentInWords(share)})`,
  );
  return `${squareFeetInWords(areaSqFt)} of ground, planned as ${uncapitalized(buildType)}: ${listInWords(parts)}. Where each part lies is drawn by a designer once the place is approved.`;
}

function packageOption(one: GiftPackage): Option {
  return {
    title: one.title,
    summary: one.purpose,
    facts: [fact('Gift', `$${wholeInWords(one.dollars)}`), fact('Of it for care', careText(one))],
    points: [`Not included: ${uncapitalized(one.notIncluded)}`],
  };
}

function careText({ careDollars, dollars }: GiftPackage): string {
  if (careDollars === dollars) return 'all of it';
  return `$${wholeInWords(careDollars)} (${percentInWords(careDollars / dollars)})`;
}

function givenBlocks({ alreadyGiven }: GiftPackages): readonly Block[] {
  if (alreadyGiven === 0) return [];
  return [
    paragraph(
      `${dollarsInWords(alreadyGiven)} for building this place is given or pledged already, and is part of the sum above.`,
    ),
  ];
}

function lineTable({ packages, build }: GiftPackages): Block {
  return table({
    caption: 'How the sums come about',
    density: 'compact',
    columns: [
      textColumn('Package', 2),
      textColumn('Part', 2.6),
      numberColumn('Dollars'),
      textColumn('From', 3.6),
    ],
    rows: packages.flatMap(({ title, lines }) =>
      lines.map(({ label, dollars, source }) =>
        row(title, label, `$${wholeInWords(dollars)}`, source),
      ),
    ),
    note: `Each part is rounded up to $100. ${ESTIMATE_CLASS} Building this place may cost from ${dollarsInWords(build.low)} to ${dollarsInWords(build.high)} in ${build.dollarsOf} dollars. Gift fees, where the institution takes one, come on top.`,
  });
}

function changes({ buildType, cautions, planned }: SiteDossier): string[] {
  const food = cautions.some((caution) => caution.startsWith('Food:'));
  return [
    'The year: approvals, weather and other projects can move it. A place is not approved until its tests and reviews are done.',
    `The form: ${uncapitalized(buildType)} is what is planned; a design review with neighbors can change it.`,
    ...(planned?.change === undefined ? [] : [`What is planned later. ${planned.change}`]),
    ...(food ? ['The harvest: what reaches a kitchen is subject to the kitchen’s approval.'] : []),
    'The ground: if the institution needs it later, the gift is planned to be remembered at another place of the program, as the agreement says.',
    'No credit for treating stormwater is claimed.',
  ];
}
