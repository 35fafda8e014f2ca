import type { CampusPlaces, SitePlace } from '#explain/documents/long-range/campus-places.js';
import { counted, dollarsInWords, wholeInWords } from '#units/in-words.js';
import type { Hatch } from '../document/drawing.js';
import type { Figure } from '../document/figure.js';
import { numberColumn, row, table, textColumn, type Table } from '../document/table.js';
import { campusMapFigure } from '../figures/campus-map-figure.js';

const HEIGHT = 420;

type State = SitePlace['state'];

/** Kept in this order in the legend. */
const LOOKS: Readonly<Record<State, { readonly text: string; readonly hatch: Hatch }>> = {
  soon: { text: 'prepared in the first five years', hatch: 'diagonal' },
  later: { text: 'prepared later', hatch: 'medium' },
  'left-out': { text: 'not in this plan', hatch: 'none' },
  there: { text: 'there already', hatch: 'cross' },
};

/** Every site on the campus, and the table of sites as the map's data. */
export function mapFigure(places: CampusPlaces, busySeason: string): Figure {
  const states = (Object.keys(LOOKS) as State[]).filter((state) =>
    places.sites.some((site) => site.state === state),
  );
  const count = (state: State) => places.sites.filter((site) => site.state === state).length;
  const words = states.map((state) => `${wholeInWords(count(state))} ${LOOKS[state].text}`);
  return campusMapFigure(
    {
      title: 'The campus and its sites',
      areas: places.sites.map(({ site, ring, state }) => ({
        label: site,
        ring,
        hatch: LOOKS[state].hatch,
        outline: state === 'left-out' ? 'dashed' : 'solid',
      })),
      context: places.zones.map(({ name, ring }) => ({ label: name, ring })),
      legend: states.map((state) => ({ text: LOOKS[state].text, fill: LOOKS[state].hatch })),
      height: HEIGHT,
    },
    {
      alt: `A map of ${counted(places.sites.length, 'site')}: ${words.join(', ')}. The table that follows lists them all.`,
      table: siteTable(places, busySeason),
    },
  );
}

function siteTable({ sites }: CampusPlaces, busySeason: string): Table {
  return table({
    caption: 'Every site',
    density: 'dense',
    columns: [
      textColumn('Site', 1.2),
      textColumn('Name', 3),
      textColumn('Zone', 2.2),
      textColumn('Becomes', 2.8),
      numberColumn('Sq ft', 1),
      textColumn('Prepared', 1.2),
      numberColumn('Low', 1),
      numberColumn('Likely', 1),
      numberColumn('High', 1),
      numberColumn('Hours', 0.9),
    ],
    rows: sites.map((site) =>
      row(
        site.site,
        site.name,
        site.zone,
        becomesText(site),
        wholeInWords(Math.round(site.areaSqFt / 100) * 100),
        preparedText(site),
        ...costText(site),
        site.busySeasonHours === null ? '–' : wholeInWords(site.busySeasonHours),
      ),
    ),
    note: `Prepared: fiscal year, or for a site there already the year in which it was planted. Low, likely and high: AACE class 5, in dollars of the year of preparing. Hours: care in its second ${busySeason}. A dash: not planned, so not worked out here.`,
  });
}

function becomesText({ buildType, later }: SitePlace): string {
  if (buildType === null) return 'not in this plan';
  return later === '' ? buildType : `${buildType}. ${later}`;
}

function preparedText({ state, year, gatesNotPassed }: SitePlace): string {
  if (state === 'there') return `planted ${year ?? ''}`;
  if (year !== null) return year;
  return gatesNotPassed === 0 ? '–' : `${counted(gatesNotPassed, 'gate')} open`;
}

function costText({ cost }: SitePlace): string[] {
  return cost === null
    ? ['–', '–', '–']
    : [cost.low, cost.likely, cost.high].map((dollars) => dollarsInWords(dollars));
}
