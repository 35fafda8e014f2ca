import { Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { idParams } from '#contracts/http/common.js';
import { overviewReply, planListReply, planReply, verdictReply } from '#contracts/http/plans.js';
import { shownPlan } from '#planning/use-cases/shown-plan.js';
import { verifyPlan } from '#planning/use-cases/verify-plan.js';
import { unknownCampus } from '../campuses/saved-campus.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { planReplyOf, planSummaryReplyOf, unknownPlan } from './plan-replies.js';

@ApiTags('plans')
@Controller()
export class PlansController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get('campuses/:id/plans')
  @ApiOperation({ summary: 'List the plans of a campus, newest first' })
  @ApiResponse({ status: 200, description: 'The plans', standardSchema: planListReply })
  @ApiProblems('request-invalid', 'unknown-campus')
  async list(@Param({ schema: idParams }) { id }: { id: string }) {
    const plans = await this.ports.plans.listOf(id);
    if (plans.length === 0 && (await this.ports.campuses.load(id)) === null) throw unknownCampus();
    return { plans: plans.map(planSummaryReplyOf) };
  }

  @Get('plans/:id')
  @ApiOperation({ summary: 'Read a plan with its plan file' })
  @ApiResponse({ status: 200, description: 'The plan', standardSchema: planReply })
  @ApiProblems('request-invalid', 'unknown-plan')
  async read(@Param({ schema: idParams }) { id }: { id: string }) {
    const plan = await this.ports.plans.load(id);
    if (plan === null) throw unknownPlan();
    return planReplyOf(plan);
  }

  @Get('plans/:id/overview')
  @ApiOperation({ summary: 'Read what the page shows of a plan' })
  @ApiResponse({ status: 200, description: 'The overview', standardSchema: overviewReply })
  @ApiProblems('request-invalid', 'unknown-plan', 'plan-outdated')
  async overview(@Param({ schema: idParams }) { id }: { id: string }) {
    const shown = await shownPlan(this.ports, id);
    if (shown === null) throw unknownPlan();
    return shown.overview;
  }

  @Post('plans/:id/verify')
  @HttpCode(200)
  @ApiOperation({ summary: 'Recompute a plan from its campus file alone' })
  @ApiResponse({ status: 200, description: 'The verdict', standardSchema: verdictReply })
  @ApiProblems('request-invalid', 'unknown-plan')
  async verify(@Param({ schema: idParams }) { id }: { id: string }) {
    const verdict = await verifyPlan(this.ports, id);
    if (verdict === null) throw unknownPlan();
    return verdict;
  }
}
