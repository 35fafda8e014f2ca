import type { WorkYear } from '#explain/documents/work-year/work-year.js';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { dayInWords } from '#units/dates-in-words.js';
import { counted, dollarsInWords, wholeInWords } from '#units/in-words.js';
import { callout, caution } from '../document/boxes.js';
import { planDocument, type Edition } from '../document/edition.js';
import { bold } from '../document/inline.js';
import type { Block, PlanDocument } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn, totalRow } from '../document/table.js';
import { heading, list, paragraph, smallPrint } from '../document/text-blocks.js';
import { aboutBlocks } from '../parts/about.js';
import { nothingPrepared } from '../parts/nothing-prepared.js';

/** Quantities, specifications and delivery windows of the first year's sites, for who buys them. */
export function materialsOrder(
  overview: PlanOverview,
  year: WorkYear | null,
  edition: Edition,
): PlanDocument {
  return planDocument(overview, edition, {
    title: 'Materials order',
    subject:
      year === null
        ? `${overview.campus.name}: no site to order for`
        : `${overview.campus.name}: compost, chips and cardboard for ${year.prepared}`,
    blocks: year === null ? nothingPrepared(overview) : [...orderBlocks(year), ...aboutBlocks()],
  });
}

function orderBlocks(year: WorkYear): readonly Block[] {
  return [
    callout('note', 'Before this becomes an order', [BEFORE]),
    quantityTable(year),
    ...deliveryBlocks(year),
    list('bullet', [
      [bold('Compost. '), { text: compostSentence(year) }],
      [bold('Plants. '), { text: plantSentence(year) }],
      [bold('Budget line. '), { text: budgetSentence(year) }],
      [bold('Contact. '), { text: CONTACT }],
    ]),
    heading(1, 'What to ask for, and what to mind'),
    specificationTable(year),
    caution('deliveries', deliveryCautions(year)),
  ];
}

const BEFORE =
  'Quantities come from areas and depths of the plan, with its waste allowance; a site walk comes first. They are for planning and not a bid. The bid threshold and single-source rules are not in the campus file: procurement decides.';

const CONTACT =
  'The program manager orders; grounds receives, at the tipping place agreed on the site walk.';

function quantityTable({ sites, prepared }: WorkYear): Block {
  const sum = (of: (site: WorkYear['sites'][number]) => number) =>
    wholeInWords(sites.reduce((total, site) => total + of(site), 0));
  const cells = [
    (site: WorkYear['sites'][number]) => Math.round(site.takeoff.compostCuYd),
    (site: WorkYear['sites'][number]) => Math.round(site.takeoff.chipsCuYd),
    (site: WorkYear['sites'][number]) => Math.round(site.takeoff.cardboardSqFt / 100) * 100,
    (site: WorkYear['sites'][number]) => site.takeoff.compostLoads + site.takeoff.chipLoads,
  ];
  return table({
    caption: `Quantities for ${prepared}`,
    columns: [
      textColumn('Site', 3.4),
      numberColumn('Compost, cu yd', 1.4),
      numberColumn('Chips, cu yd', 1.3),
      numberColumn('Cardboard, sq ft', 1.5),
      numberColumn('Truck loads', 1.2),
    ],
    rows: [
      ...sites.map((site) =>
        row(`${site.site} ${site.name}`, ...cells.map((of) => wholeInWords(of(site)))),
      ),
      ...(sites.length > 1 ? [totalRow('All', ...cells.map(sum))] : []),
    ],
    note: 'Rounded to whole cubic yards and hundreds of square feet. Waste, sheet laps and thinner layers over roots are in the numbers.',
  });
}

function compostSentence({ compost }: WorkYear): string {
  const { needed, bought, boughtOther, boughtDollars } = compost;
  if (bought === 0) {
    return `All ${wholeInWords(needed)} cubic yards come from the campus yard; nothing is bought.`;
  }
  const rest =
    bought > needed
      ? `more than these sites take (${wholeInWords(needed)}): the rest is for the yard`
      : `${wholeInWords(needed - bought)} more come from the campus yard`;
  const graded =
    boughtOther > 0
      ? ` Of what is bought, ${counted(bought - boughtOther, 'cubic yard')} must be certified (tested, or with a heat log), for food ground; ${counted(boughtOther, 'cubic yard')} need not be, and go on no food ground.`
      : '';
  return `The plan buys ${wholeInWords(bought)} cubic yards this season, ${dollarsInWords(boughtDollars)} delivered; ${rest}.${graded}`;
}

function plantSentence({ orderPlantsBy, planted }: WorkYear): string {
  return `The plant list is not drawn yet, so none is ordered here. For planting in ${planted}, order by ${orderPlantsBy}: nurseries ask for 8 to 16 weeks (common practice, no source).`;
}

function budgetSentence({ paidFrom, year }: WorkYear): string {
  if (paidFrom.length === 0) return `The plan charges no fund for building in ${year}.`;
  const funds = paidFrom.map(({ fund, dollars }) => `${fund} (${dollarsInWords(dollars)})`);
  return `The builds of ${year}, all costs included (AACE class 5), are paid from ${funds.join('; ')}.`;
}

function specificationTable({ sites }: WorkYear): Block {
  const food = sites.some(({ edible }) => edible) ? 'For food: ' : '';
  return table({
    caption: 'Specifications and tolerance',
    density: 'compact',
    columns: [
      textColumn('Material', 1.3),
      textColumn('Asked for', 6),
      textColumn('Tolerance', 2.4),
    ],
    rows: [
      row(
        'Compost',
        `${food}finished and cured, screened to 1/2 in, with its heat log (131 °F: 15 days and 5 turnings in windrows, 3 days in a vessel), a passed herbicide test on peas or beans, metals on file, and the supplier’s word on jumping worms. No raw manure.`,
        'Cubic yards loose, within 5%; refuse a load that is hot, wet enough to drip, or holds glass or plastic.',
      ),
      row(
        'Wood chips',
        'Arborist chips of mixed size; no treated or painted wood, none from diseased oak or ash out of its zone.',
        'Cubic yards loose, within 10%.',
      ),
      row(
        'Cardboard',
        'Plain corrugated, flat; tape and staples removed, no gloss. May be collected on campus.',
        'Enough to lap sheets by 6 in; more is not refused.',
      ),
    ],
    note: 'Tolerances are common practice, with no source; procurement may set others. Heat log: time and temperature of the composting standard, as quoted by extension services.',
  });
}

function deliveryBlocks({ deliveries, sites }: WorkYear): readonly Block[] {
  if (deliveries.length === 0) return [paragraph('Nothing is delivered by truck.')];
  const nameOf = new Map(sites.map(({ site, name }) => [site, name]));
  return [
    table({
      caption: 'Delivery schedule: proposed windows, Monday to Friday',
      density: 'compact',
      columns: [
        textColumn('From', 1.8),
        textColumn('To', 1.8),
        textColumn('Site', 3),
        textColumn('Material', 1.4),
        numberColumn('Cu yd'),
        numberColumn('Loads'),
      ],
      rows: [...deliveries]
        .sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0))
        .map((one) =>
          row(
            dayInWords(one.from),
            dayInWords(one.to),
            `${one.site} ${nameOf.get(one.site) ?? ''}`,
            one.material,
            wholeInWords(one.cuYd),
            wholeInWords(one.loads),
          ),
        ),
      note: 'Windows are a proposal: agree on days with the supplier, grounds and the work days, and keep trucks off walks as classes change. Each material comes apart from the other.',
    }),
    ...accessBlocks(sites),
  ];
}

function accessBlocks(sites: WorkYear['sites']): readonly Block[] {
  const lines = sites.flatMap(({ site, truckAccess }) => {
    if (truckAccess === true) return [];
    return truckAccess === null
      ? [`${site}: whether a truck can reach it is not known.`]
      : [`${site}: no truck reaches it; loads are tipped nearby and moved by wheelbarrow.`];
  });
  return lines.length === 0 ? [] : [smallPrint(lines.join(' '))];
}

function deliveryCautions({ sites }: WorkYear): string[] {
  return [
    'A backing truck has a spotter; people and children stand clear. Drivers keep to routes that grounds names: vaults, cellars and tunnels have load limits that a licensed structural engineer sets.',
    'Nobody digs, drives stakes or aerates before the public one-call center and the campus locator have marked the ground; marks expire. Piles stay off roots, trunks and drains.',
    'Compost is kept under tarps; wear a dust mask when it is moved dry. An unlogged batch goes to no edible site.',
    ...sites.flatMap(({ site, holds }) => holds.map((note) => `${site}, not cleared: ${note}`)),
  ];
}
