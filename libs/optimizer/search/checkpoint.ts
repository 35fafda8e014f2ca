import type { Lifecycle } from '#rules/columns.js';
import { applyHire, applyLife, type SearchState } from './state.js';

/** What a state is put back to. Whoever changes its lives says which. */
export class Checkpoint {
  /** Lives taken out, and put in, since it was marked. */
  readonly removed: Lifecycle[] = [];
  readonly added: Lifecycle[] = [];
  private readonly hires: readonly Int32Array[];
  private readonly room: Float64Array;

  constructor(private readonly state: SearchState) {
    this.hires = state.hires.map((byYear) => Int32Array.from(byYear));
    this.room = Float64Array.from(state.room);
  }

  /** From now on the state as it is now. */
  mark(): void {
    this.removed.length = 0;
    this.added.length = 0;
    this.hires.forEach((byYear, position) => byYear.set(this.state.hires[position] ?? []));
    this.room.set(this.state.room);
  }

  /**
   * The people too, and not those that a search would hire anew: a plan of the solver may be served by people
   * whom no search finds.
   */
  putBack(): void {
    const { state } = this;
    for (const life of this.added) applyLife(state, life, -1);
    for (const life of this.removed) applyLife(state, life, 1);
    this.hires.forEach((byYear, position) => {
      const held = state.hires[position];
      for (let startYear = 0; startYear < byYear.length; startYear++) {
        const count = (byYear[startYear] ?? 0) - (held?.[startYear] ?? 0);
        if (count !== 0) applyHire(state, { position, startYear, count });
      }
    });
    // Decisions as they were have the room that they had, which would else have to be found again.
    state.room.set(this.room);
  }
}
