import { randomUUID } from 'node:crypto';
import { Body, Controller, Get, Inject, Param, Post } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { idParams } from '#contracts/http/common.js';
import {
  decisionBody,
  decisionListReply,
  decisionReply,
  type DecisionBody,
  type DecisionReply,
} from '#contracts/http/decisions.js';
import type { Decision } from '#planning/ports/decision-store.js';
import { recordDecision } from '#planning/use-cases/record-decision.js';
import { unknownPlan } from '../plans/plan-replies.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';

@ApiTags('decisions')
@Controller()
export class DecisionsController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Post('plans/:id/decisions')
  @ApiOperation({ summary: 'Record what was decided on a plan: who, why, and who disagreed' })
  @ApiResponse({ status: 201, description: 'Recorded', standardSchema: decisionReply })
  @ApiProblems('request-invalid', 'unknown-plan')
  async record(
    @Param({ schema: idParams }) { id: planId }: { id: string },
    @Body({ schema: decisionBody }) decision: DecisionBody,
  ) {
    const recorded = await recordDecision(this.ports, { ...decision, id: randomUUID(), planId });
    if (recorded === null) throw unknownPlan();
    return decisionReplyOf(recorded);
  }

  @Get('campuses/:id/decisions')
  @ApiOperation({ summary: 'List the decisions taken on plans of a campus, newest first' })
  @ApiResponse({ status: 200, description: 'The decisions', standardSchema: decisionListReply })
  @ApiProblems('request-invalid')
  async list(@Param({ schema: idParams }) { id }: { id: string }) {
    return { decisions: (await this.ports.decisions.listOf(id)).map(decisionReplyOf) };
  }
}

function decisionReplyOf(decision: Decision): DecisionReply {
  return { ...decision, decidedAt: decision.decidedAt.toISOString() };
}
