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
import { campusOf } from '../../adapters/campus-document.js';
import { unknownCampus } from '../campuses/saved-campus.js';
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
  @ApiProblems('request-invalid', 'unknown-campus', 'unknown-site', 'unknown-type')
  async read(
    @Param({ schema: estimateParams }) { id, site }: EstimateParams,
    @Query({ schema: estimateQuery }) { type, units }: EstimateQuery,
  ) {
    const stored = await this.ports.campuses.load(id);
    if (stored === null) throw unknownCampus();
    return estimatesOrProblem(siteEstimates(campusOf(stored.document), { site, type, units }));
  }
}
