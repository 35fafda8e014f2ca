import { HttpException } from '@nestjs/common';
import { StoreUnavailableError } from '#persistence/store-errors.js';
import { UnreadablePlanError } from '#planning/unreadable-plan.js';
import { ProblemError } from './problem-error.js';
import type { ProblemCode } from './problem-table.js';

type Known = readonly [ProblemCode, string];

const tooLarge: Known = ['body-too-large', 'A body may be at most 25 MB.'];
const notJson: Known = ['body-not-json', 'The body could not be read as JSON.'];
const mediaType: Known = ['media-type', 'Send the header Content-Type: application/json.'];

/** The framework's own errors, by their status: there is no other cause of each. */
const byStatus: Readonly<Record<number, Known>> = {
  400: notJson,
  404: ['unknown-address', 'See /api/openapi.json for the addresses that there are.'],
  413: tooLarge,
  415: mediaType,
};

/** Every error as a problem. What we did not foresee becomes `internal`, with nothing of its text. */
export function problemOf(error: unknown): ProblemError {
  if (error instanceof ProblemError) return error;
  if (error instanceof StoreUnavailableError) {
    const detail = 'A change may or may not have been saved: look before you try again.';
    return new ProblemError('store-unavailable', detail);
  }
  if (error instanceof UnreadablePlanError) {
    const detail = 'An earlier version of the program stored it. Solve again; the campus is kept.';
    return new ProblemError('plan-outdated', detail);
  }
  const known = byStatus[statusOf(error)];
  if (known) return new ProblemError(...known);
  return statusOf(error) < 500
    ? new ProblemError('request-refused', 'See /api/openapi.json for what is expected.')
    : new ProblemError('internal', 'The details are in the log of the program.');
}

function statusOf(error: unknown): number {
  if (error instanceof HttpException) return error.getStatus();
  const hasStatus = error instanceof Error && 'statusCode' in error;
  return hasStatus && typeof error.statusCode === 'number' ? error.statusCode : 500;
}
