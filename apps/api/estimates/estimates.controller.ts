import { Controller, Get, Inject, Param, Query } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import {
  estimateParams,
  estimateQuery,
  siteEstimatesReply,
  type EstimateParams,
  type EstimateQuery,
} from '#contracts/http/estimates.js';
import { siteEstimates } from '#planning/site-estimate.js';
import { loadedCampus } from '../campuses/loaded-campus.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { estimatesOrProblem } from './estimate-replies.js';

@ApiTags('estimates')
@Controller('campuses/:id/sites/:site/estimate')
export class EstimatesController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get()
  @ApiOperation({ summary: 'Estimate a site, every number open to its inputs' })
  @ApiResponse({ status: 200, description: 'The estimates', standardSchema: siteEstimatesReply })
  @ApiProblems(
    'request-invalid',
    'unknown-campus',
    'unknown-site',
    'unknown-type',
    'campus-outdated',
  )
  async read(
    @Param({ schema: estimateParams }) { id, site }: EstimateParams,
    @Query({ schema: estimateQuery }) { type, units }: EstimateQuery,
  ) {
    const campus = await loadedCampus(this.ports, id);
    return estimatesOrProblem(siteEstimates(campus, { site, type, units }));
  }
}
