import { Catch, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { HttpReply } from '../http-reply.js';
import { sendProblem } from './send-problem.js';
import { problemOf } from './problem-of.js';

/** Turns every error into a problem reply, and logs those that are our own fault. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  catch(error: unknown, host: ArgumentsHost): void {
    const problem = problemOf(error);
    if (problem.code === 'internal') console.error(error);
    const reply = host.switchToHttp().getResponse<HttpReply>();
    if (!reply.sent) sendProblem(reply, problem);
  }
}
