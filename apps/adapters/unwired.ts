/** Stands in for an adapter whose lib is not there; the first use says which. */
export function unwired(what: string): () => never {
  return () => {
    throw new Error(`${what} is not wired: see the wiring.ts of each app`);
  };
}
