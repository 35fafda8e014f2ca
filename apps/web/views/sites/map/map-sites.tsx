import { memo, type ReactNode } from 'react';
import type { CampusFile } from '../../../api.js';
import type { SiteRow } from '../site-rows.js';
import { middleOf, pathOf, type Position, type Projection } from './projection.js';

interface MapSitesProps {
  readonly rows: readonly SiteRow[];
  readonly projection: Projection;
  readonly selected: string | null;
  /** Feet to a pixel. */
  readonly feet: number;
  readonly hatch: string;
  readonly onSelect: (siteId: string) => void;
}

type Rings = readonly (readonly Position[])[];
const ringsOf = ({ site }: SiteRow): Rings => site.boundary.coordinates as unknown as Rings;

const fills: Readonly<Record<SiteRow['stage'], string | null>> = {
  planned: 'sparse',
  planted: 'dots',
  'not planned': null,
};

/** Boundaries of the sites: hatched where planned, dotted where planted, dashed where questions are open. */
export const MapSites = memo(function MapSites(props: MapSitesProps): ReactNode {
  const { rows, projection, selected, hatch, onSelect } = props;
  return (
    <g>
      {rows.map((row) => {
        const fill = fills[row.stage];
        const marks = [
          'map-site',
          row.unknownGates > 0 ? 'has-unknown' : '',
          row.id === selected ? 'is-selected' : '',
        ];
        return (
          <path
            key={row.id}
            className={marks.join(' ').trim()}
            d={pathOf(ringsOf(row), projection)}
            style={fill === null ? undefined : { fill: `url(#${hatch}-${fill})` }}
            onClick={() => onSelect(row.id)}
          >
            <title>{`${row.id} ${row.name}`}</title>
          </path>
        );
      })}
    </g>
  );
});

/** Feet to a pixel up to which labels of a usual campus do not run into each other. */
const READABLE = 6;

/** Short ids of the sites. */
export const MapLabels = memo(function MapLabels(
  props: Omit<MapSitesProps, 'hatch' | 'onSelect'>,
): ReactNode {
  const { rows, projection, selected, feet } = props;
  const isSparse = rows.length <= 60 ? feet < READABLE : feet < 1.2;
  const prefix = sharedPrefix(rows);
  const labelled = rows.filter((row) => isSparse || row.id === selected);
  return (
    <g className="map-labels" aria-hidden="true">
      {labelled.map((row) => {
        const [x, y] = middleOf(ringsOf(row)[0] ?? [], projection);
        return (
          <text
            key={row.id}
            className={row.id === selected ? 'accent-label' : ''}
            x={x}
            y={y + 4 * feet}
            textAnchor="middle"
            style={{ fontSize: 11 * feet, strokeWidth: 3 * feet }}
          >
            {row.id.slice(prefix.length)}
          </text>
        );
      })}
    </g>
  );
});

/** What the ids of all sites begin with up to a dash, such as `TVU-`: it need not stand 32 times on the map. */
export function sharedPrefix(rows: readonly SiteRow[]): string {
  const first = rows[0]?.id ?? '';
  const prefix = first.slice(0, first.indexOf('-') + 1);
  return rows.every(({ id }) => id.startsWith(prefix) && id.length > prefix.length) ? prefix : '';
}

interface MapGroundProps {
  readonly file: CampusFile;
  readonly rows: readonly SiteRow[];
  readonly projection: Projection;
  readonly feet: number;
  readonly hatch: string;
}

/** What lies under and around the sites: zones, ground taken by works, root protection circles. */
export const MapGround = memo(function MapGround(props: MapGroundProps): ReactNode {
  const { file, projection, feet } = props;
  return (
    <g>
      {file.zones.map(({ id, name, boundary }) => {
        const rings = (boundary?.coordinates ?? []) as unknown as Rings;
        if (rings[0] === undefined) return null;
        const [x, y] = middleOf(rings[0], projection);
        const top = Math.min(...rings[0].map((corner) => projection.toFeet(corner)[1]));
        return (
          <g key={id}>
            <path className="map-zone" d={pathOf(rings, projection)} />
            {feet < READABLE && (
              <text
                className="map-zone-name"
                x={x}
                y={Math.min(y, top + 16 * feet)}
                textAnchor="middle"
                style={{ fontSize: 12.5 * feet, strokeWidth: 3.5 * feet }}
              >
                {name}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
});

/** Over the sites: where works are expected, and the circles within which roots are protected. */
export const MapOverlays = memo(function MapOverlays(props: MapGroundProps): ReactNode {
  const { rows, projection, hatch } = props;
  return (
    <g className="map-overlays">
      {rows
        .filter(({ works }) => works.length > 0)
        .map((row) => (
          <path
            key={row.id}
            className="map-works"
            d={pathOf(ringsOf(row), projection)}
            style={{ fill: `url(#${hatch}-works)` }}
          />
        ))}
      {rows.flatMap((row) =>
        treesOf(row).map(({ name, position, trunkInches }) => {
          const [x, y] = projection.toFeet(position);
          return (
            <g key={`${row.id} ${name} ${position.join()}`}>
              <circle className="map-roots" cx={x} cy={y} r={trunkInches} />
              <circle className="map-trunk" cx={x} cy={y} r={trunkInches / 12} />
            </g>
          );
        }),
      )}
    </g>
  );
});

interface Tree {
  readonly name: string;
  readonly position: Position;
  readonly trunkInches: number;
}

function treesOf({ site }: SiteRow): readonly Tree[] {
  return 'trees' in site ? ((site.trees ?? []) as unknown as readonly Tree[]) : [];
}
