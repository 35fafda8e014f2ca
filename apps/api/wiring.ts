import { campusReader } from '../adapters/campus-reader.js';
import { fileExchange } from '../adapters/file-exchange.js';
import { documentWriter } from '../adapters/plan-documents.js';
import { ruleChecker } from '../adapters/rule-checker.js';
import type { ApiAdapters } from './run-api.js';

/** The adapters of the api process. */
export function apiAdapters(): ApiAdapters {
  return {
    reader: campusReader,
    checker: ruleChecker,
    writer: documentWriter,
    exchange: fileExchange,
  };
}
