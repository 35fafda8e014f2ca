import { ProblemError } from '../problems/problem-error.js';

/** The version of a campus as an entity tag. */
export function versionTag(version: number): string {
  return `"${version}"`;
}

/** Reads the version that a change is based on from the If-Match header. */
export function versionOfIfMatch(header: string | undefined): number {
  if (header === undefined) {
    throw new ProblemError('version-missing', 'Send If-Match with the ETag that you last read.');
  }
  const version = /^"([1-9]\d{0,8})"$/.exec(header.trim())?.[1];
  if (version === undefined) {
    throw new ProblemError('if-match-invalid', 'Expected one ETag as you read it, such as "3".');
  }
  return Number(version);
}
