import type { CampusFile } from '../../../api.js';
import type { SiteRow } from '../site-rows.js';
import { extentOf, type Box, type Position, type Projection } from './projection.js';

/** Text on the map, set about a point in feet. */
export interface MapLabel {
  readonly id: string;
  readonly text: string;
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
}

export interface MapLabels {
  readonly zones: readonly MapLabel[];
  readonly sites: readonly MapLabel[];
}

interface Labelled {
  readonly rows: readonly SiteRow[];
  readonly zones: CampusFile['zones'];
  readonly projection: Projection;
  /** What the map shows: what lies outside needs no name. */
  readonly box: Box;
  /** Feet to a pixel. */
  readonly feet: number;
  readonly selected: string | null;
  /** Scale bar and north arrow. */
  readonly keptFree: readonly Box[];
}

export const SITE_LETTER = 11;
export const ZONE_LETTER = 12.5;

/** Share of its height that a letter of the page's type is wide, with room to spare. */
const WIDTH_OF_LETTER = 0.58;

/**
 * Short ids of the sites and names of the zones, as many as can be set without one running into
 * another, a site or what is kept free. The selected site comes first. An id stands in its site where
 * there is room, else beside it; a zone is named inside or beside it where no site lies.
 */
export function labelsOf(labelled: Labelled): MapLabels {
  const { rows, zones, projection, box, feet, selected, keptFree } = labelled;
  const prefix = sharedPrefix(rows);
  const sites = rows
    .map(({ id, site }) => ({
      id,
      text: id.slice(prefix.length),
      extent: extentOf(outline(site.boundary), projection),
    }))
    .filter(({ extent }) => overlaps(extent, box));
  const ground = sites.map(({ extent }) => extent);
  const taken = [...keptFree];
  const set = ({ id, text, letter }: Lettering, at: readonly Place[]): readonly MapLabel[] => {
    const width = text.length * WIDTH_OF_LETTER * letter;
    const free = at.find(({ x, y, within }) => {
      const own = { left: x - width / 2, top: y - 0.8 * letter, width, height: letter };
      const isFree =
        taken.every((other) => !overlaps(own, other)) &&
        ground.every((extent) => extent === within || !overlaps(own, extent));
      if (isFree) taken.push(own);
      return isFree;
    });
    return free === undefined ? [] : [{ id, text, x: free.x, y: free.y }];
  };
  const first = sites.filter(({ id }) => id === selected);
  const inOrder = [...first, ...sites.filter(({ id }) => id !== selected)];
  const siteLabels = inOrder.flatMap(({ extent, ...names }) => {
    const letter = SITE_LETTER * feet;
    return set({ ...names, letter }, placesOfId(extent, { text: names.text, letter }));
  });
  const zoneLabels = zones.flatMap(({ id, name, boundary }) => {
    const ring = outline(boundary);
    if (ring.length === 0) return [];
    const letter = ZONE_LETTER * feet;
    return set({ id, text: name, letter }, placesOfName(extentOf(ring, projection), feet));
  });
  return { zones: zoneLabels, sites: siteLabels };
}

interface Lettering {
  readonly id: string;
  readonly text: string;
  /** Height in feet of the ground. */
  readonly letter: number;
}

/** Where a label may stand: its middle and base line, and the site that it may lie on. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly within?: Box;
}

function placesOfId(extent: Box, { text, letter }: Omit<Lettering, 'id'>): readonly Place[] {
  const { left, top, width, height } = extent;
  const wide = text.length * WIDTH_OF_LETTER * letter;
  const [x, y] = [left + width / 2, top + height / 2 + 0.36 * letter];
  const beside = [
    { x: left + width + 0.6 * wide, y },
    { x: left - 0.6 * wide, y },
    { x, y: top - 0.3 * letter },
    { x, y: top + height + letter },
  ];
  const fits = width >= wide && height >= 0.8 * letter;
  return fits ? [{ x, y, within: extent }, ...beside] : beside;
}

/** What the ids of all sites begin with up to a dash, such as `TVU-`: it need not stand 32 times on the map. */
export function sharedPrefix(rows: readonly SiteRow[]): string {
  const first = rows[0]?.id ?? '';
  const prefix = first.slice(0, first.indexOf('-') + 1);
  return rows.every(({ id }) => id.startsWith(prefix) && id.length > prefix.length) ? prefix : '';
}

/** Under the upper edge, over the lower one, over the upper one, under the lower one. */
function placesOfName({ left, top, width, height }: Box, feet: number) {
  const x = left + width / 2;
  const bottom = top + height;
  const lines = [top + 16 * feet, bottom - 7 * feet, top - 5 * feet, bottom + 14 * feet];
  return lines.map((y) => ({ x, y }));
}

function outline(boundary: unknown): readonly Position[] {
  const { coordinates } = (boundary ?? { coordinates: [] }) as {
    readonly coordinates: readonly (readonly Position[])[];
  };
  return coordinates[0] ?? [];
}

function overlaps(one: Box, other: Box): boolean {
  return (
    one.left < other.left + other.width &&
    other.left < one.left + one.width &&
    one.top < other.top + other.height &&
    other.top < one.top + one.height
  );
}
