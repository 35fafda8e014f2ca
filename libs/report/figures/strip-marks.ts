import type { Shape } from '../document/drawing.js';
import type { LegendEntry } from './legend.js';
import type { Area } from './shapes.js';
import { DASHED, label, rect, THIN } from './shapes.js';
import { roughTextWidth } from './text-width.js';
import type { MarkState, SiteMark } from './year-strip.js';

/** How each state of a site looks: fill, hatch and outline, so that no color is needed. */
export const MARK_LOOKS: Readonly<Record<MarkState, LegendEntry>> = {
  planned: { text: 'site planned', fill: 'light', stroke: THIN },
  'needs-position': { text: 'needs a proposed position', fill: 'diagonal', stroke: THIN },
  blocked: { text: 'blocked', fill: 'none', stroke: DASHED },
};

const SIZE = 7;

/** Height of a mark that holds the longest label, read upward. */
export function markHeight(marks: readonly SiteMark[]): number {
  return Math.max(14, ...marks.map((mark) => roughTextWidth(mark.label, SIZE) + 6));
}

/** One mark with its label. */
export function markShapes(mark: SiteMark, area: Area): readonly Shape[] {
  const look = MARK_LOOKS[mark.state];
  const at = { x: area.x + area.width / 2 + 0.34 * SIZE, y: area.y + area.height / 2 };
  const ground = mark.state === 'needs-position' ? 'paper' : 'none';
  return [
    rect(area, look.fill, look.stroke),
    label(at, mark.label, { size: SIZE, anchor: 'middle', turn: 'up', ground }),
  ];
}

/** A mark in words: `TVU-03 (blocked)`. */
export function markText({ label: name, state }: SiteMark): string {
  return state === 'planned' ? name : `${name} (${MARK_LOOKS[state].text})`;
}
