/** Gives a thing to one at a time, in the order of asking. */
export class Turns {
  #isTaken = false;
  readonly #waiting: (() => void)[] = [];

  async take(): Promise<void> {
    if (this.#isTaken) await new Promise<void>((resolve) => this.#waiting.push(resolve));
    this.#isTaken = true;
  }

  /** The thing passes straight to who waits longest, so nobody can slip in between. */
  release(): void {
    const next = this.#waiting.shift();
    if (next) next();
    else this.#isTaken = false;
  }
}
