import type { IncomingHttpHeaders } from 'node:http';
import { ProblemError } from '../problems/problem-error.js';

const readingMethods = new Set(['GET', 'HEAD', 'OPTIONS']);
const ownNames = new Set(['localhost', '127.0.0.1', '[::1]']);

export interface RequestHead {
  readonly method: string;
  readonly headers: IncomingHttpHeaders;
}

/**
 * Nobody signs in, so a page of another site must not be able to act through the browser of someone
 * at this machine. A browser says with every change which page it comes from; programs say nothing.
 */
export function refuseForeignOrigin({ method, headers }: RequestHead): ProblemError | null {
  const { host, origin } = headers;
  if (readingMethods.has(method) || origin === undefined) return null;
  if (host !== undefined && hostOf(origin) === host) return null;
  return new ProblemError('foreign-origin', `The request came from ${origin}.`);
}

/**
 * A foreign name that is made to lead to this machine would make a foreign page one of our own, so
 * while we listen to this machine alone we answer to its own names alone.
 */
export function refuseForeignHost({ headers }: RequestHead): ProblemError | null {
  const name = (headers.host ?? '').replace(/:\d+$/, '').toLowerCase();
  if (ownNames.has(name)) return null;
  return new ProblemError('foreign-host', 'Use http://localhost or http://127.0.0.1.');
}

function hostOf(origin: string): string | null {
  return URL.canParse(origin) ? new URL(origin).host : null;
}
