import { fileURLToPath } from 'node:url';
import { campusReader } from '../adapters/campus-reader.js';
import { computedOverview, headlineLines } from '../adapters/computed-overview.js';
import { documentWriter } from '../adapters/plan-documents.js';
import { rememberedOverview } from '../adapters/remembered-overview.js';
import type { StartAdapters } from './start-options.js';

/** The adapters and child programs of `npm start`. */
export function startAdapters(): StartAdapters {
  return {
    reader: campusReader,
    writer: documentWriter,
    overview: rememberedOverview(computedOverview),
    headline: headlineLines,
    programs: {
      store: program('./store/main.js'),
      api: program('../api/main.js'),
      solver: program('../solver/main.js'),
    },
  };
}

function program(path: string): string {
  return fileURLToPath(new URL(path, import.meta.url));
}
