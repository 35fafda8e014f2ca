import { Controller, Get, Inject, Param } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { idParams } from '#contracts/http/common.js';
import { suitabilityReply } from '#contracts/http/estimates.js';
import { suitabilityList } from '#planning/suitability-list.js';
import { loadedCampus } from '../campuses/loaded-campus.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';

@ApiTags('estimates')
@Controller('campuses/:id/suitability')
export class SuitabilityController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get()
  @ApiOperation({
    summary: 'List how all candidates are suited, with ranks under uncertain weights',
  })
  @ApiResponse({ status: 200, description: 'The list', standardSchema: suitabilityReply })
  @ApiProblems('request-invalid', 'unknown-campus', 'campus-outdated')
  async list(@Param({ schema: idParams }) { id }: { id: string }) {
    return suitabilityList(await loadedCampus(this.ports, id));
  }
}
