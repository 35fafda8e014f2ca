import type { HttpReply } from '../http-reply.js';
import type { ProblemReply } from '#contracts/http/common.js';
import type { ProblemError } from './problem-error.js';
import { problemTable } from './problem-table.js';

/** Answers as RFC 9457 has it. */
export function sendProblem(reply: HttpReply, { code, detail, extras }: ProblemError): void {
  const { status, title } = problemTable[code];
  const body = { type: `urn:campus-plan:problem:${code}`, title, status, detail, code, ...extras };
  if (status === 503) void reply.header('retry-after', '5');
  void reply
    .status(status)
    .header('content-type', 'application/problem+json; charset=utf-8')
    .send(JSON.stringify(body satisfies Omit<ProblemReply, 'problems'>));
}
