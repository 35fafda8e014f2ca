import { randomUUID } from 'node:crypto';
import { Body, Controller, Get, HttpCode, Inject, Param, Post, Res } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { idParams } from '#contracts/http/common.js';
import {
  campusExplanationBody,
  explanationBody,
  explanationListReply,
  explanationReply,
  type CampusExplanationBody,
  type ExplanationBody,
  type ExplanationReply,
} from '#contracts/http/explanations.js';
import type { Explanation, NewExplanation } from '#planning/ports/explanation-store.js';
import { unknownCampus } from '../campuses/saved-campus.js';
import type { HttpReply } from '../http-reply.js';
import { unknownPlan } from '../plans/plan-replies.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { ProblemError } from '../problems/problem-error.js';

@ApiTags('explanations')
@Controller()
export class ExplanationsController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Post('plans/:id/explanations')
  @HttpCode(202)
  @ApiOperation({ summary: 'Ask a question of a plan; a worker answers it by planning again' })
  @ApiResponse({ status: 202, description: 'Queued', standardSchema: explanationReply })
  @ApiProblems('request-invalid', 'unknown-plan')
  async ask(
    @Param({ schema: idParams }) { id: planId }: { id: string },
    @Body({ schema: explanationBody }) { question, seconds }: ExplanationBody,
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    if ((await this.ports.plans.load(planId)) === null) throw unknownPlan();
    return this.#add({ about: { planId }, question, seconds }, reply);
  }

  @Post('campuses/:id/explanations')
  @HttpCode(202)
  @ApiOperation({
    summary: 'Ask a question of the newest version of a campus, which need not have a plan',
  })
  @ApiResponse({ status: 202, description: 'Queued', standardSchema: explanationReply })
  @ApiProblems('request-invalid', 'unknown-campus')
  async askCampus(
    @Param({ schema: idParams }) { id: campusId }: { id: string },
    @Body({ schema: campusExplanationBody }) { question, seconds }: CampusExplanationBody,
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const campus = await this.ports.campuses.load(campusId);
    if (campus === null) throw unknownCampus();
    const about = { campusId, campusVersion: campus.version };
    return this.#add({ about, question, seconds }, reply);
  }

  @Get('campuses/:id/explanations')
  @ApiOperation({ summary: 'List the questions asked of a campus itself, newest first' })
  @ApiResponse({
    status: 200,
    description: 'The explanations',
    standardSchema: explanationListReply,
  })
  @ApiProblems('request-invalid')
  async listOfCampus(@Param({ schema: idParams }) { id }: { id: string }) {
    return { explanations: (await this.ports.explanations.listOfCampus(id)).map(replyOf) };
  }

  @Get('plans/:id/explanations')
  @ApiOperation({ summary: 'List the questions asked of a plan, newest first' })
  @ApiResponse({
    status: 200,
    description: 'The explanations',
    standardSchema: explanationListReply,
  })
  @ApiProblems('request-invalid')
  async list(@Param({ schema: idParams }) { id }: { id: string }) {
    return { explanations: (await this.ports.explanations.listOf(id)).map(replyOf) };
  }

  @Get('explanations/:id')
  @ApiOperation({ summary: 'Read a question with its progress, and its answer once there is one' })
  @ApiResponse({ status: 200, description: 'The explanation', standardSchema: explanationReply })
  @ApiProblems('request-invalid', 'unknown-explanation')
  async read(@Param({ schema: idParams }) { id }: { id: string }) {
    const explanation = await this.ports.explanations.load(id);
    if (explanation === null) throw new ProblemError('unknown-explanation', 'Look at its id.');
    return replyOf(explanation);
  }

  async #add(asked: Omit<NewExplanation, 'id'>, reply: HttpReply): Promise<ExplanationReply> {
    const id = randomUUID();
    const explanation = await this.ports.explanations.add({ id, ...asked });
    void reply.header('location', `/api/explanations/${id}`);
    return replyOf(explanation);
  }
}

function replyOf({ about, ...explanation }: Explanation): ExplanationReply {
  return {
    ...explanation,
    ...{ planId: null, campusId: null, campusVersion: null, ...about },
    question: explanation.question as ExplanationReply['question'],
    askedAt: explanation.askedAt.toISOString(),
    finishedAt: explanation.finishedAt?.toISOString() ?? null,
  };
}
