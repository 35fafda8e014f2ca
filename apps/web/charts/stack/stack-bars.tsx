import type { ReactNode } from 'react';
import { stackTotal, type Layer, type StackDrawing, type StackRow } from './stack-drawing.js';

/** One stacked bar for each row, what hangs below it, and a mark above it where there is one. */
export function StackBars<Row extends StackRow>(drawing: StackDrawing<Row>): ReactNode {
  const { spec, rows, columns, scale } = drawing;
  return (
    <g>
      {rows.map((row, index) => (
        <g key={row.label}>
          {pieces(drawing, row).map(({ layer, from, to }) => (
            <Piece key={layer.name} {...{ drawing, layer, from, to, index }} />
          ))}
          {spec.mark?.isAt(row) === true && (
            <path
              className="over-mark"
              d={`M${columns.middle(index) - 5} ${scale.y(stackTotal(spec, row)) - 12}h10l-5 9z`}
            />
          )}
        </g>
      ))}
    </g>
  );
}

interface PieceOf<Row> {
  readonly layer: Layer<Row>;
  readonly from: number;
  readonly to: number;
}

interface PieceProps<Row extends StackRow> extends PieceOf<Row> {
  readonly drawing: StackDrawing<Row>;
  readonly index: number;
}

function Piece<Row extends StackRow>(props: PieceProps<Row>): ReactNode {
  const { drawing, layer, from, to, index } = props;
  const { columns, scale, id } = drawing;
  const inset = Math.min(5, columns.width * 0.14);
  return (
    <rect
      className={layer.className}
      x={columns.left(index) + inset}
      width={columns.width - 2 * inset}
      y={scale.y(to)}
      height={scale.y(from) - scale.y(to)}
      {...(layer.hatch === undefined ? {} : { style: { fill: `url(#${id}-${layer.hatch})` } })}
    />
  );
}

function pieces<Row extends StackRow>(
  { spec }: StackDrawing<Row>,
  row: Row,
): readonly PieceOf<Row>[] {
  let from = 0;
  const above = spec.layers.map((layer) => {
    const piece = { layer, from, to: from + layer.of(row) };
    from = piece.to;
    return piece;
  });
  const below =
    spec.below === undefined ? [] : [{ layer: spec.below, from: -spec.below.of(row), to: 0 }];
  return [...above, ...below].filter((piece) => piece.to > piece.from);
}
