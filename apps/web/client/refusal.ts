import type { components } from './openapi.data.js';

type Schemas = components['schemas'];

/** What of an RFC 9457 reply a reader can use. */
export interface Refusal {
  readonly status: number;
  readonly title: string;
  readonly detail: string;
  /** What to do about the first of the problems, if the reply says. */
  readonly remedy: string | null;
  readonly problems: readonly Schemas['Problem'][];
  /** Two versions of one record that somebody else changed meanwhile, with the version to build on. */
  readonly conflict: {
    readonly version: number;
    readonly base: unknown;
    readonly current: unknown;
  } | null;
}

/** The api answered, and refused. */
export class RefusedError extends Error {
  constructor(readonly problem: Refusal) {
    super(problem.title);
  }
}

/** Reads a problem reply, also one that is not as described. */
export function refusalOf(response: Response, body: unknown): Refusal {
  const reply = (typeof body === 'object' && body !== null ? body : {}) as Partial<
    Schemas['ProblemReply']
  >;
  const { currentVersion, versions } = reply;
  const problems = reply.problems ?? [];
  return {
    status: response.status,
    title: reply.title ?? `${response.status} ${response.statusText}`.trim(),
    detail: reply.detail ?? '',
    remedy: problems[0]?.remedy ?? null,
    problems,
    conflict:
      versions === undefined || currentVersion === undefined
        ? null
        : { version: currentVersion, base: versions.base, current: versions.current },
  };
}
