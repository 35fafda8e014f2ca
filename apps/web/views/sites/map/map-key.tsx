import { useId, type ReactNode } from 'react';
import { strings } from '../../../strings.data.js';
import { MapPatterns } from './map-patterns.js';

const words = strings.map.key;
const square = { x: 3, y: 2, width: 18, height: 12 };

/** What the lines and hatches of the map mean. */
export function MapKey({ prefix }: { readonly prefix: string }): ReactNode {
  const id = useId().replaceAll(':', '');
  const fill = (hatch: string) => ({ style: { fill: `url(#${id}-${hatch})` } });
  const items: readonly (readonly [string, ReactNode])[] = [
    [words.planned, <rect key="s" className="map-site" {...square} {...fill('sparse')} />],
    [words.notPlanned, <rect key="s" className="map-site" {...square} />],
    [words.unknown, <rect key="s" className="map-site has-unknown" {...square} />],
    [words.planted, <rect key="s" className="map-site" {...square} {...fill('dots')} />],
    [words.works, <rect key="s" className="map-works" {...square} {...fill('works')} />],
    [words.roots, <circle key="s" className="map-roots" cx={12} cy={8} r={6.5} />],
    [words.zone, <path key="s" className="map-zone" d="M2 8H22" />],
  ];
  return (
    <ul className="legend">
      {items.map(([name, swatch]) => (
        <li key={name}>
          <svg width="24" height="16" aria-hidden="true">
            <MapPatterns id={id} feet={1} />
            {swatch}
          </svg>
          {name}
        </li>
      ))}
      {prefix !== '' && <li>{words.prefix(prefix)}</li>}
    </ul>
  );
}
