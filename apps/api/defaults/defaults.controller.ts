import { Controller, Get, Inject, Param, Query } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { idParams } from '#contracts/http/common.js';
import { defaultsReply, unitsQuery, type UnitsQuery } from '#contracts/http/estimates.js';
import { defaultsTable } from '#planning/defaults-table.js';
import { loadedCampus } from '../campuses/loaded-campus.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';

@ApiTags('defaults')
@Controller()
export class DefaultsController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get('defaults')
  @ApiOperation({ summary: 'List the planning defaults, each with its source' })
  @ApiResponse({ status: 200, description: 'The defaults', standardSchema: defaultsReply })
  @ApiProblems('request-invalid')
  list(@Query({ schema: unitsQuery }) { units }: UnitsQuery) {
    return defaultsTable(units);
  }

  @Get('campuses/:id/defaults')
  @ApiOperation({ summary: 'List the planning defaults with what a campus measured instead' })
  @ApiResponse({ status: 200, description: 'The defaults', standardSchema: defaultsReply })
  @ApiProblems('request-invalid', 'unknown-campus', 'campus-outdated')
  async ofCampus(
    @Param({ schema: idParams }) { id }: { id: string },
    @Query({ schema: unitsQuery }) { units }: UnitsQuery,
  ) {
    return defaultsTable(units, await loadedCampus(this.ports, id));
  }
}
