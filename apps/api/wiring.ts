import { campusReader } from '../adapters/campus-reader.js';
import { ruleChecker } from '../adapters/rule-checker.js';
import { unwired } from '../adapters/unwired.js';
import type { ApiAdapters } from './run-api.js';

/** The adapters of the api process. */
export function apiAdapters(): ApiAdapters {
  return {
    reader: campusReader,
    checker: ruleChecker,
    writer: { write: unwired('the document writer') },
  };
}
