import { useId, useMemo, type ReactNode } from 'react';
import type { CampusFile } from '../../../api.js';
import { useWidth } from '../../../parts/use-width.js';
import { strings } from '../../../strings.data.js';
import type { SiteRow } from '../site-rows.js';
import { MapFrame, platesOf } from './map-frame.js';
import { MapKey } from './map-key.js';
import { MapPatterns } from './map-patterns.js';
import { labelsOf, sharedPrefix } from './map-labels.js';
import { MapGround, MapNames, MapOverlays, MapSites } from './map-sites.js';
import { projectionOf } from './projection.js';
import { useMapWindow, type MapWindow } from './use-map-window.js';

const words = strings.map;

interface CampusMapProps {
  readonly file: CampusFile;
  readonly rows: readonly SiteRow[];
  readonly selected: string | null;
  readonly onSelect: (siteId: string) => void;
}

/** The campus as on a survey sheet. The list beside it holds the same sites for keys and readers. */
export function CampusMap({ file, rows, selected, onSelect }: CampusMapProps): ReactNode {
  const id = useId().replaceAll(':', '');
  const [frame, width] = useWidth<HTMLDivElement>(640);
  const projection = useMemo(() => projectionOf(file), [file]);
  const { extent } = projection;
  const height = Math.round(Math.min(620, Math.max(260, (width * extent.height) / extent.width)));
  const map = useMapWindow(extent, { width, height });
  const { box, feet } = map;
  const shared = { rows, projection, hatch: id };
  const { zones } = file;
  const labels = useMemo(
    () =>
      labelsOf({
        ...{ rows, zones, projection, box, feet, selected },
        keptFree: platesOf({ box, feet }),
      }),
    [rows, zones, projection, feet, selected, box],
  );
  return (
    <figure className="map">
      <div
        className="map-box"
        ref={frame}
        role="group"
        aria-label={words.keys}
        tabIndex={0}
        onKeyDown={map.onKeyDown}
      >
        <svg
          role="img"
          aria-label={words.title(rows.length)}
          width={width}
          height={height}
          viewBox={`${box.left} ${box.top} ${box.width} ${box.height}`}
        >
          <MapPatterns id={id} feet={feet} />
          <MapGround file={file} projection={projection} />
          <MapSites {...shared} selected={selected} onSelect={onSelect} />
          <MapOverlays {...shared} />
          <MapNames labels={labels} selected={selected} feet={feet} />
          <MapFrame box={box} feet={feet} />
        </svg>
      </div>
      <MapButtons map={map} />
      <figcaption>
        <MapKey prefix={sharedPrefix(rows)} />
      </figcaption>
    </figure>
  );
}

function MapButtons({ map: { zoom, reset } }: { readonly map: MapWindow }): ReactNode {
  return (
    <div className="map-buttons">
      <button type="button" className="small" onClick={() => zoom(1.5)}>
        {words.closer}
      </button>
      <button type="button" className="small" onClick={() => zoom(1 / 1.5)}>
        {words.farther}
      </button>
      <button type="button" className="small" onClick={reset}>
        {words.whole}
      </button>
    </div>
  );
}
