import { Body, Controller, Get, HttpCode, Inject, Param, Post, Res, Sse } from '@nestjs/common';
import type { MessageEvent } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { HttpReply } from '../http-reply.js';
import { map, type Observable } from 'rxjs';
import { idParams } from '#contracts/http/common.js';
import {
  solveListReply,
  solveReply,
  solveWishBody,
  type SolveWish,
} from '#contracts/http/solves.js';
import { requestSolve } from '#planning/use-cases/request-solve.js';
import type { SolveRequest } from '#planning/solve-request.js';
import { unknownCampus } from '../campuses/saved-campus.js';
import { unknownPlan } from '../plans/plan-replies.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { ProblemError } from '../problems/problem-error.js';
import { solveReplyOf, unknownSolve } from './solve-replies.js';
import { SolveWatch } from './solve-watch.js';

@ApiTags('solves')
@Controller()
export class SolvesController {
  readonly #watch: SolveWatch;

  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {
    this.#watch = new SolveWatch(ports.requests);
  }

  @Post('campuses/:id/solves')
  @HttpCode(202)
  @ApiOperation({ summary: 'Queue a solve of a campus' })
  @ApiResponse({ status: 202, description: 'Queued', standardSchema: solveReply })
  @ApiProblems('request-invalid', 'unknown-campus', 'unknown-plan')
  async add(
    @Param({ schema: idParams }) { id }: { id: string },
    @Body({ schema: solveWishBody }) wish: SolveWish,
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const { seconds, work, gap, ...from } = wish;
    const limits = { seconds, work, gap };
    const outcome = await requestSolve(this.ports, { campusId: id, ...from, limits });
    if (outcome.kind !== 'queued') {
      throw outcome.kind === 'unknown-plan' ? unknownPlan() : unknownCampus();
    }
    void reply.header('location', `/api/solves/${outcome.request.id}`);
    return solveReplyOf(outcome.request);
  }

  @Get('campuses/:id/solves')
  @ApiOperation({ summary: 'List the solves of a campus, newest first' })
  @ApiResponse({ status: 200, description: 'The solves', standardSchema: solveListReply })
  @ApiProblems('request-invalid')
  async list(@Param({ schema: idParams }) { id }: { id: string }) {
    return { solves: (await this.ports.requests.listOf(id)).map(solveReplyOf) };
  }

  @Get('solves/:id')
  @ApiOperation({ summary: 'Read the state and progress of a solve' })
  @ApiResponse({ status: 200, description: 'The solve', standardSchema: solveReply })
  @ApiProblems('request-invalid', 'unknown-solve')
  async read(@Param({ schema: idParams }) { id }: { id: string }) {
    return solveReplyOf(await this.#find(id));
  }

  @Post('solves/:id/cancel')
  @HttpCode(202)
  @ApiOperation({ summary: 'Cancel a solve; a running one ends with its best plan so far' })
  @ApiResponse({
    status: 202,
    description: 'Cancelled or told to stop',
    standardSchema: solveReply,
  })
  @ApiProblems('request-invalid', 'unknown-solve', 'solve-final')
  async cancel(@Param({ schema: idParams }) { id }: { id: string }) {
    const outcome = await this.ports.queue.cancel(id);
    if (outcome === 'unknown-request') throw unknownSolve();
    if (outcome === 'already-final')
      throw new ProblemError('solve-final', 'It cannot be cancelled.');
    return solveReplyOf(await this.#find(id));
  }

  @Sse('solves/:id/events')
  @ApiOperation({
    summary: 'Follow a solve: an event `solve` at each change, until its final state',
  })
  @ApiResponse({
    status: 200,
    description: 'Events whose data is the solve',
    content: { 'text/event-stream': { schema: { type: 'string' } } },
  })
  @ApiProblems('request-invalid', 'unknown-solve')
  async events(
    @Param({ schema: idParams }) { id }: { id: string },
  ): Promise<Observable<MessageEvent>> {
    const known = await this.#find(id);
    return this.#watch.follow(known).pipe(map((data) => ({ type: 'solve', data })));
  }

  async #find(id: string): Promise<SolveRequest> {
    const request = await this.ports.requests.find(id);
    if (request === null) throw unknownSolve();
    return request;
  }
}
