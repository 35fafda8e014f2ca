import type { SiteDossier } from '#explain/documents/dossier/site-dossier.js';
import {
  capitalized,
  counted,
  dollarsInWords,
  percentInWords,
  wholeInWords,
} from '#units/in-words.js';
import type { Block } from '../document/plan-document.js';
import { numberColumn, row, table, textColumn, totalRow } from '../document/table.js';
import { heading, paragraph, smallPrint } from '../document/text-blocks.js';

/** Materials, hours and money of one site. */
export function takeoffBlocks(dossier: SiteDossier): readonly Block[] {
  return [
    heading(1, 'Takeoff and hours'),
    componentTable(dossier),
    materialTable(dossier),
    hourTable(dossier),
    ...moneyBlocks(dossier),
  ];
}

function componentTable({ components, areaSqFt }: SiteDossier): Block {
  return table({
    caption: 'What the ground becomes',
    density: 'compact',
    columns: [
      textColumn('Component', 3),
      numberColumn('Share'),
      numberColumn('Area, sq ft'),
      numberColumn('Loose compost, in', 1.3),
      numberColumn('Loose chips, in', 1.3),
    ],
    rows: [
      ...components.map((one) =>
        row(
          one.name,
          percentInWords(one.share),
          wholeInWords(one.areaSqFt),
          String(one.compostInches),
          String(one.chipInches),
        ),
      ),
      totalRow('Site', '100%', wholeInWords(areaSqFt), '', ''),
    ],
    note: 'Shares are those of the build type. Where each part lies is drawn by a designer and is not in the plan. Loose depth settles by about a third over winter.',
  });
}

function materialTable({ takeoff }: SiteDossier): Block {
  const { rootProtectedShare: roots } = takeoff;
  const rooted =
    roots === null
      ? 'Root protection is not measured, so full depth is counted.'
      : roots > 0
        ? `${percentInWords(roots)} of the site lies in root protection and is counted with less.`
        : 'No part of the site lies in root protection.';
  return table({
    caption: 'Materials, waste and laps included',
    density: 'compact',
    columns: [textColumn('Material', 3), numberColumn('Quantity'), textColumn('Unit', 1.6)],
    rows: [
      row('Compost', wholeInWords(takeoff.compostCuYd), 'cu yd'),
      row('Wood chips', wholeInWords(takeoff.chipsCuYd), 'cu yd'),
      row('Cardboard, lapped sheets', hundreds(takeoff.cardboardSqFt), 'sq ft'),
      row(
        'Truck loads of compost and chips',
        wholeInWords(takeoff.compostLoads + takeoff.chipLoads),
        'loads',
      ),
      row('Weight of compost and chips', thousands(takeoff.pounds), 'lb'),
      row('Compost each later year', wholeInWords(takeoff.topDressCuYdPerYear), 'cu yd a year'),
    ],
    note: `${rooted} Cardboard covers ${hundreds(takeoff.netCoverSqFt)} sq ft of ground; deeper chips without cardboard are another way, and opinion is divided.`,
  });
}

function hourTable({ hours }: SiteDossier): Block {
  return table({
    caption: `Care and harvest in hours, by year after planting`,
    density: 'compact',
    columns: [
      textColumn('Year of care', 2),
      ...hours.seasons.map((season) => numberColumn(capitalized(season))),
      numberColumn('Year'),
    ],
    rows: hours.care.map(({ age, bySeason }) =>
      row(
        `Year ${age}`,
        ...bySeason.map(wholeInWords),
        wholeInWords(bySeason.reduce((sum, one) => sum + one, 0)),
      ),
    ),
    note: `To build it takes about ${counted(hours.prepare, 'hour')} to prepare and ${wholeInWords(hours.plant)} to plant, as volunteers work. ${mowingSentence(hours)} Planning coefficients, mostly judgement: a forecast, not a staffing entitlement.`,
  });
}

function mowingSentence({ mowingEnds }: SiteDossier['hours']): string {
  if (mowingEnds === null) {
    return 'What covers the ground is not known, so no mowing is counted as ended.';
  }
  if (mowingEnds < 0.5) return 'No mown turf is there, so no mowing ends.';
  return `Mowing that ends: about ${counted(mowingEnds, 'hour')} a year, beside the care that begins.`;
}

function moneyBlocks({ money, planned }: SiteDossier): readonly Block[] {
  const { paidFrom, tenYearsConstant, tenYearsNominal, constantDollarsOf } = money;
  return [
    heading(2, 'Who pays'),
    ...(paidFrom.length === 0
      ? [paragraph(planned ? 'The plan charges no fund for it.' : 'The plan does not pay for it.')]
      : [
          table({
            caption: 'The build in this plan, in dollars of its year',
            density: 'compact',
            columns: [textColumn('Fund', 4), numberColumn('Dollars')],
            rows: paidFrom.map(({ fund, dollars }) => row(fund, `$${wholeInWords(dollars)}`)),
          }),
        ]),
    smallPrint(
      `Ten years of care and supplies, at the planning rate for an hour: ${dollarsInWords(tenYearsConstant)} in ${constantDollarsOf} dollars, or ${dollarsInWords(tenYearsNominal)} in dollars of each year. The two are not to be added to the build as one number.`,
    ),
  ];
}

function hundreds(value: number): string {
  return wholeInWords(Math.round(value / 100) * 100);
}

function thousands(value: number): string {
  return wholeInWords(Math.round(value / 1000) * 1000);
}
