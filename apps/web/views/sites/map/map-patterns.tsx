import type { ReactNode } from 'react';

interface MapPatternsProps {
  readonly id: string;
  /** Feet to a pixel: hatches stay the same on the screen however near the map is. */
  readonly feet: number;
}

/** The hatches of the map. */
export function MapPatterns({ id, feet }: MapPatternsProps): ReactNode {
  const scaled = (angle: number): string => `scale(${feet}) rotate(${angle})`;
  const line = { className: 'hatch-line', x1: 0, y1: 0, x2: 0, y2: 6 };
  const square = { width: 6, height: 6, patternUnits: 'userSpaceOnUse' } as const;
  return (
    <defs>
      <pattern id={`${id}-sparse`} {...square} patternTransform={scaled(-45)}>
        <rect width="6" height="6" className="hatch-ground" />
        <line {...line} strokeWidth="1.6" />
      </pattern>
      <pattern id={`${id}-dots`} {...square} patternTransform={scaled(0)}>
        <rect width="6" height="6" className="hatch-ground" />
        <circle cx="2" cy="2" r="1" className="hatch-dot" />
      </pattern>
      <pattern id={`${id}-works`} {...square} patternTransform={scaled(45)}>
        <line {...line} strokeWidth="3" className="works-line" />
      </pattern>
    </defs>
  );
}
