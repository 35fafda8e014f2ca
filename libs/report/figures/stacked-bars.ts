import type { Drawing } from '../document/drawing.js';
import { barShapes } from './bar-shapes.js';
import { axisShapes } from './bar-axes.js';
import type { StackedBars } from './bars.js';
import { barFrame } from './bar-frame.js';
import { endLabels } from './bar-end-labels.js';
import { supplyShapes } from './supply-line.js';

/** The drawing, as wide as the text. */
export function stackedBarsDrawing(bars: StackedBars): Drawing {
  const frame = barFrame(bars);
  return {
    width: frame.width,
    height: frame.height,
    shapes: [
      ...axisShapes(bars, frame),
      ...barShapes(bars, frame),
      ...supplyShapes(bars, frame),
      ...endLabels(bars, frame),
    ],
  };
}
