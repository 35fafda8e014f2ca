import type { SiteDossier } from '#explain/documents/dossier/site-dossier.js';
import { squareFeetInWords, wholeInWords } from '#units/in-words.js';
import type { Figure } from '../document/figure.js';
import { numberColumn, row, table, textColumn } from '../document/table.js';
import { campusMapFigure } from '../figures/campus-map-figure.js';

/** Tallest the sketch may be, in points, unless more is asked for. */
const HEIGHT = 84;

export interface SketchLook {
  /** What is written on the site. Left out: its id. */
  readonly label?: string;
  /** Tallest it may be, in points. */
  readonly height?: number;
}

/** The boundary with its neighbors, north arrow and scale bar, and its measures as a table. */
export function sketchFigure(
  { site, name, areaSqFt, sketch }: SiteDossier,
  { label = site, height = HEIGHT }: SketchLook = {},
): Figure {
  const { ring, neighbors, widthFt, heightFt, perimeterFt, center } = sketch;
  const [longitude, latitude] = center;
  return campusMapFigure(
    {
      title: 'Plan sketch: the boundary as planning uses it',
      areas: [{ label, ring, hatch: 'diagonal', outline: 'solid' }],
      context: neighbors,
      legend: [
        { text: 'this site', fill: 'diagonal' },
        ...(neighbors.length > 0 ? [{ text: 'other sites', fill: 'light' } as const] : []),
      ],
      height,
    },
    {
      alt: `The outline of ${site} ${name}, ${wholeInWords(widthFt)} ft from west to east and ${wholeInWords(heightFt)} ft from south to north. It is a sketch for planning: no survey, no design and no utility locate.`,
      table: table({
        caption: 'Measures of the boundary',
        density: 'compact',
        rowHeaders: 'none',
        columns: [
          textColumn('Area', 1.2),
          numberColumn('West to east, ft'),
          numberColumn('South to north, ft'),
          numberColumn('Edge, ft'),
          numberColumn('Center, degrees north and east', 2),
        ],
        rows: [
          row(
            squareFeetInWords(areaSqFt),
            wholeInWords(widthFt),
            wholeInWords(heightFt),
            wholeInWords(perimeterFt),
            `${latitude.toFixed(4)}, ${longitude.toFixed(4)}`,
          ),
        ],
      }),
    },
  );
}
