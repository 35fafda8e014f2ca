import { useMemo, useState, type KeyboardEvent, type MouseEvent, type ReactNode } from 'react';
import type { CampusFile } from '../../../api.js';
import { useWidth } from '../../../parts/use-width.js';
import { strings } from '../../../strings.data.js';
import { MapFrame } from '../map/map-frame.js';
import { pathOf, projectionOf, type Box, type Point, type Position } from '../map/projection.js';
import type { AnySite } from '../site-rows.js';

const words = strings.edit;
const HEIGHT = 380;
/** Feet that an arrow key moves the cross; with Shift, one. */
const STEP = 10;

interface DrawBoundaryProps {
  readonly file: CampusFile;
  readonly site: AnySite;
  /** The drawn boundary; null: drawing was given up. */
  readonly onDone: (
    boundary: { type: 'Polygon'; coordinates: readonly Position[][] } | null,
  ) => void;
}

/** Draws a boundary corner by corner, by pointer or by keys alone. */
export function DrawBoundary({ file, site, onDone }: DrawBoundaryProps): ReactNode {
  const projection = useMemo(() => projectionOf(file), [file]);
  const [frame, width] = useWidth<HTMLDivElement>(640);
  const box = useMemo(() => windowOf(file, site, width), [file, site, width]);
  const feet = box.width / width;
  const { corners, cross, click, press, lessCorner } = useCorners(box, feet);
  const finish = (): void => {
    const ring = corners.map(projection.toPosition).map(rounded);
    const [first] = ring;
    onDone(first === undefined ? null : { type: 'Polygon', coordinates: [[...ring, first]] });
  };
  return (
    <div className="draw">
      <p>{words.drawLead}</p>
      <div
        className="map-box"
        ref={frame}
        role="group"
        aria-label={words.drawKeys}
        tabIndex={0}
        onKeyDown={press}
      >
        <svg
          role="img"
          aria-label={words.drawTitle}
          width={width}
          height={HEIGHT}
          viewBox={`${box.left} ${box.top} ${box.width} ${box.height}`}
          onClick={click}
        >
          {[...file.candidateSites, ...file.existingSites].map(({ id, boundary }) => (
            <path
              key={id}
              className={id === site.id ? 'map-site has-unknown' : 'map-site'}
              d={pathOf(boundary.coordinates as unknown as readonly Position[][], projection)}
            />
          ))}
          <Drawn corners={corners} cross={cross} feet={feet} />
          <MapFrame box={box} feet={feet} />
        </svg>
      </div>
      <p role="status">{words.corners(corners.length)}</p>
      <p className="form-buttons">
        <button
          type="button"
          aria-disabled={corners.length < 3}
          onClick={() => corners.length >= 3 && finish()}
        >
          {words.closeRing}
        </button>
        <button type="button" onClick={lessCorner}>
          {words.lessCorner}
        </button>
        <button type="button" onClick={() => onDone(null)}>
          {words.stopDrawing}
        </button>
      </p>
    </div>
  );
}

/** Corners set one by one, and the cross where the next one goes. */
function useCorners(box: Box, feet: number) {
  const [corners, setCorners] = useState<readonly Point[]>([]);
  const [cross, setCross] = useState<Point>([box.left + box.width / 2, box.top + box.height / 2]);
  const lessCorner = (): void => setCorners(corners.slice(0, -1));
  const click = (event: MouseEvent<SVGSVGElement>): void => {
    const at = event.currentTarget.getBoundingClientRect();
    const point: Point = [
      box.left + (event.clientX - at.left) * feet,
      box.top + (event.clientY - at.top) * feet,
    ];
    setCross(point);
    setCorners([...corners, point]);
  };
  const press = (event: KeyboardEvent): void => {
    const step = event.shiftKey ? 1 : STEP;
    const move = MOVES[event.key];
    if (move !== undefined) setCross(([x, y]) => [x + move[0] * step, y + move[1] * step]);
    else if (event.key === 'Enter' || event.key === ' ') setCorners([...corners, cross]);
    else if (event.key === 'Backspace') lessCorner();
    else return;
    event.preventDefault();
  };
  return { corners, cross, click, press, lessCorner };
}

const MOVES: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

interface DrawnProps {
  readonly corners: readonly Point[];
  readonly cross: Point;
  readonly feet: number;
}

function Drawn({ corners, cross: [x, y], feet }: DrawnProps): ReactNode {
  const line = corners.map((corner) => corner.join(' ')).join('L');
  return (
    <g className="drawn">
      {corners.length > 1 && <path className="drawn-line" d={`M${line}`} />}
      {corners.length > 2 && (
        <path
          className="drawn-close"
          d={`M${corners.at(-1)?.join(' ')}L${corners[0]?.join(' ')}`}
        />
      )}
      {corners.map((corner, index) => (
        <circle key={index} className="drawn-corner" cx={corner[0]} cy={corner[1]} r={4 * feet} />
      ))}
      <path
        className="drawn-cross"
        d={`M${x - 9 * feet} ${y}h${18 * feet}M${x} ${y - 9 * feet}v${18 * feet}`}
      />
    </g>
  );
}

/** The surroundings of a site: its boundary with as much ground again on every side. */
function windowOf(file: CampusFile, site: AnySite, width: number) {
  const { toFeet, extent } = projectionOf(file);
  const known = [...file.candidateSites, ...file.existingSites].find(({ id }) => id === site.id);
  const ring = (known?.boundary.coordinates[0] ?? []) as unknown as readonly Position[];
  if (ring.length === 0) {
    return { ...extent, height: (extent.width * HEIGHT) / width };
  }
  const points = ring.map(toFeet);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const wide = Math.max(3 * (right - left), (3 * (bottom - top) * width) / HEIGHT, 200);
  const high = (wide * HEIGHT) / width;
  return {
    left: (left + right - wide) / 2,
    top: (top + bottom - high) / 2,
    width: wide,
    height: high,
  };
}

/** To a hundred-millionth of a degree, about a millimeter. */
function rounded([longitude, latitude]: Position): Position {
  const round = (value: number): number => Number(value.toFixed(8));
  return [round(longitude), round(latitude)];
}
