import { unwired } from '../adapters/unwired.js';
import type { ApiAdapters } from './run-api.js';

/** The adapters of the api process. */
export function apiAdapters(): ApiAdapters {
  return {
    reader: { read: unwired('the campus reader') },
    checker: { check: unwired('the plan checker') },
    writer: { write: unwired('the document writer') },
  };
}
