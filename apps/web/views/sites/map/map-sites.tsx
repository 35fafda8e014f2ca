import { memo, type ReactNode } from 'react';
import type { CampusFile } from '../../../api.js';
import type { SiteRow } from '../site-rows.js';
import { SITE_LETTER, ZONE_LETTER, type MapLabel, type MapLabels } from './map-labels.js';
import { pathOf, type Position, type Projection } from './projection.js';

interface MapSitesProps {
  readonly rows: readonly SiteRow[];
  readonly projection: Projection;
  readonly selected: string | null;
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

interface MapLabelsProps {
  readonly labels: MapLabels;
  readonly selected: string | null;
  readonly feet: number;
}

/** Names of the zones and short ids of the sites, over all that is drawn. */
export const MapNames = memo(function MapNames(props: MapLabelsProps): ReactNode {
  const { labels, selected, feet } = props;
  return (
    <g className="map-labels" aria-hidden="true">
      {labels.zones.map((label) => (
        <Name key={label.id} label={label} letter={ZONE_LETTER * feet} look="map-zone-name" />
      ))}
      {labels.sites.map((label) => (
        <Name
          key={label.id}
          label={label}
          letter={SITE_LETTER * feet}
          look={label.id === selected ? 'accent-label' : ''}
        />
      ))}
    </g>
  );
});

interface NameProps {
  readonly label: MapLabel;
  readonly letter: number;
  readonly look: string;
}

function Name({ label: { text, x, y }, letter, look }: NameProps): ReactNode {
  const style = { fontSize: letter, strokeWidth: 0.28 * letter };
  return (
    <text className={look} x={x} y={y} textAnchor="middle" style={style}>
      {text}
    </text>
  );
}

interface MapGroundProps {
  readonly file: CampusFile;
  readonly projection: Projection;
}

/** What lies under and around the sites: edges of the zones. */
export const MapGround = memo(function MapGround(props: MapGroundProps): ReactNode {
  const { file, projection } = props;
  return (
    <g>
      {file.zones.map(({ id, boundary }) => {
        const rings = (boundary?.coordinates ?? []) as unknown as Rings;
        return rings[0] === undefined ? null : (
          <path key={id} className="map-zone" d={pathOf(rings, projection)} />
        );
      })}
    </g>
  );
});

type MapOverlaysProps = Pick<MapSitesProps, 'rows' | 'projection' | 'hatch'>;

/** Over the sites: where works are expected, and the circles within which roots are protected. */
export const MapOverlays = memo(function MapOverlays(props: MapOverlaysProps): ReactNode {
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
