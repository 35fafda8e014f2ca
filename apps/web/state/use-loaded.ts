import { useCallback, useEffect, useState } from 'react';
import { OfflineError, RefusedError, type Refusal } from '../api.js';

/** Something asked of the api, as it stands. What was loaded stays while it is loaded anew. */
export type Loaded<Value> =
  | { readonly kind: 'loading' }
  | { readonly kind: 'failed'; readonly failure: Failure }
  | { readonly kind: 'loaded'; readonly value: Value };

/** Why the api did not do what was asked. */
export type Failure = Refusal | 'offline';

/** Loads when `load` changes, and again when told to. */
export function useLoaded<Value>(load: () => Promise<Value>): readonly [Loaded<Value>, () => void] {
  const [state, setState] = useState<Loaded<Value>>({ kind: 'loading' });
  const [asked, setAsked] = useState(0);
  useEffect(() => {
    let isCurrent = true;
    load().then(
      (value) => isCurrent && setState({ kind: 'loaded', value }),
      (error: unknown) => isCurrent && setState({ kind: 'failed', failure: failureOf(error) }),
    );
    return () => {
      isCurrent = false;
    };
  }, [load, asked]);
  const reload = useCallback(() => setAsked((times) => times + 1), []);
  return [state, reload];
}

/** An error of the api as data; anything else is a defect and goes on. */
export function failureOf(error: unknown): Failure {
  if (error instanceof OfflineError) return 'offline';
  if (error instanceof RefusedError) return error.problem;
  throw error;
}
