import { fileURLToPath } from 'node:url';
import { unwired } from '../adapters/unwired.js';
import type { StartAdapters } from './start-options.js';

/** The adapters and child programs of `npm start`. */
export function startAdapters(): StartAdapters {
  return {
    reader: { read: unwired('the campus reader') },
    writer: { write: unwired('the document writer') },
    headline: unwired('the headline of an overview'),
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
