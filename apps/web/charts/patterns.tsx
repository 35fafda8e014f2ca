import type { ReactNode } from 'react';

/** Hatches as on a survey sheet; `id` is the prefix that keeps two figures of one page apart. */
export function Patterns({ id }: { readonly id: string }): ReactNode {
  return (
    <defs>
      <Hatch id={`${id}-dense`} spacing={3.2} width={1.5} angle={45} />
      <Hatch id={`${id}-sparse`} spacing={6} width={1} angle={-45} />
      <pattern id={`${id}-dots`} width="5" height="5" patternUnits="userSpaceOnUse">
        <rect width="5" height="5" className="hatch-ground" />
        <circle cx="1.5" cy="1.5" r="0.9" className="hatch-dot" />
      </pattern>
    </defs>
  );
}

interface HatchProps {
  readonly id: string;
  readonly spacing: number;
  readonly width: number;
  readonly angle: number;
}

function Hatch({ id, spacing, width, angle }: HatchProps): ReactNode {
  return (
    <pattern
      id={id}
      width={spacing}
      height={spacing}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${angle})`}
    >
      <rect width={spacing} height={spacing} className="hatch-ground" />
      <line x1="0" y1="0" x2="0" y2={spacing} className="hatch-line" strokeWidth={width * 2} />
    </pattern>
  );
}
