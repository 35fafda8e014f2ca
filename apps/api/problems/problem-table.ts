interface ProblemKind {
  readonly status: number;
  readonly title: string;
}

/** Every problem reply of the api: its code, its HTTP status and its title. */
export const problemTable = {
  'request-invalid': { status: 400, title: 'The request is not as documented' },
  'body-not-json': { status: 400, title: 'The body is not JSON' },
  'if-match-invalid': { status: 400, title: 'The If-Match header names no version' },
  'foreign-origin': { status: 403, title: 'A page of another address may not do this' },
  'unknown-address': { status: 404, title: 'There is nothing at this address' },
  'unknown-campus': { status: 404, title: 'There is no such campus' },
  'unknown-plan': { status: 404, title: 'There is no such plan' },
  'unknown-document': { status: 404, title: 'The plan has no such document' },
  'unknown-site': { status: 404, title: 'The campus has no such site' },
  'unknown-type': { status: 404, title: 'The site may not become that build type' },
  'unknown-explanation': { status: 404, title: 'There is no such question' },
  'unknown-solve': { status: 404, title: 'There is no such solve' },
  'solve-final': { status: 409, title: 'The solve has already ended' },
  'campus-outdated': { status: 409, title: 'The stored campus no longer passes the checks' },
  'plan-outdated': { status: 409, title: 'The stored plan no longer reads' },
  'edit-conflict': { status: 409, title: 'Somebody else changed the same record' },
  'import-stale': { status: 409, title: 'The import is not the one of the dry run' },
  'export-impossible': { status: 409, title: 'This cannot be exported so' },
  'version-conflict': { status: 412, title: 'Somebody else saved this campus first' },
  'body-too-large': { status: 413, title: 'The body is too large' },
  'media-type': { status: 415, title: 'The body must be application/json' },
  'foreign-host': { status: 421, title: 'This program does not answer for that host name' },
  'campus-refused': { status: 422, title: 'The campus file has errors; nothing was saved' },
  'import-rejected': { status: 422, title: 'The file has records that cannot be taken' },
  'version-missing': { status: 428, title: 'Say which version the change is based on' },
  'request-refused': { status: 400, title: 'The request cannot be handled' },
  internal: { status: 500, title: 'Something went wrong on our side' },
  'store-unavailable': { status: 503, title: 'The store cannot be reached at the moment' },
} as const satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof problemTable;
