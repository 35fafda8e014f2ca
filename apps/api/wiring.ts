import { campusReader } from '../adapters/campus-reader.js';
import { computedOverview } from '../adapters/computed-overview.js';
import { fileExchange } from '../adapters/file-exchange.js';
import { documentWriter } from '../adapters/plan-documents.js';
import { rememberedOverview } from '../adapters/remembered-overview.js';
import { ruleChecker } from '../adapters/rule-checker.js';
import type { ApiAdapters } from './run-api.js';

/** The adapters of the api process. */
export function apiAdapters(): ApiAdapters {
  return {
    reader: campusReader,
    checker: ruleChecker,
    overview: rememberedOverview(computedOverview),
    writer: documentWriter,
    exchange: fileExchange,
  };
}
