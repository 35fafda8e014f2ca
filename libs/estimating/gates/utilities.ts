import type { Known } from '#units/known.js';
import { failed, type GateFrame, type GateResult, passed, unknown } from './gate-result.js';

export interface Utility {
  readonly kind: string;
  readonly owner: string;
  /** Depth of cover; unknown unless it was exposed or is on a survey. */
  readonly depthInches: Known<number>;
}

export interface UtilityRecord {
  /** Utilities found in the records of the campus and the public locator; unknown where nobody looked. */
  readonly found: Known<readonly Utility[]>;
  /** Deepest disturbance of the work: aeration, holes, posts, edging. 0 where nothing is dug; unknown before a design. */
  readonly digInches: Known<number>;
  /** Whether marks are on the ground with a ticket in force on the day of work. */
  readonly marked: Known<boolean>;
}

const FRAME: GateFrame = {
  kind: 'utilities',
  ask: 'campus locator and the public one-call center',
};
const BOTH =
  'A request to the public one-call center and to the campus locator, with marks in force.';
const DEPTH = 'The depth of holes, posts and edging, from the design.';

/**
 * Digging needs marks in force, and no line shallower than the dig. Notice periods and tolerance zones
 * are set by state law (commonly 2 to 3 business days; 18 to 24 inches by hand): ask for the local ones.
 */
export function utilitiesGate({ found, digInches, marked }: UtilityRecord): GateResult {
  if (!found.known) return unknown(FRAME, 'Nobody has looked for utilities.', BOTH);
  if (!digInches.known) return unknown(FRAME, 'How deep the work digs is not stated.', DEPTH);
  const deepest = digInches.value;
  if (deepest === 0) return passed(FRAME, 'Nothing is dug.', BOTH);
  const shallow = found.value.filter(({ depthInches: d }) => d.known && d.value <= deepest);
  if (shallow.length > 0) {
    const names = shallow.map(({ kind, owner }) => `${kind} (${owner})`).join(', ');
    return failed(
      FRAME,
      `Shallower than the dig: ${names}.`,
      'Another layout, or the owner’s consent.',
    );
  }
  if (found.value.some(({ depthInches }) => !depthInches.known)) {
    return unknown(
      FRAME,
      'A line of unknown depth crosses the site.',
      'Depth found by hand digging.',
    );
  }
  if (!marked.known || !marked.value) return unknown(FRAME, 'No marks in force.', BOTH);
  return passed(FRAME, 'Marked, and deeper than the dig.', 'Hand dig within the tolerance zone.');
}
