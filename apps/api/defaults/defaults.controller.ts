import { Controller, Get, Query } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { defaultsReply, unitsQuery, type UnitsQuery } from '#contracts/http/estimates.js';
import { defaultsTable } from '#planning/defaults-table.js';
import { ApiProblems } from '../problems/api-problems.js';

@ApiTags('defaults')
@Controller('defaults')
export class DefaultsController {
  @Get()
  @ApiOperation({ summary: 'List the planning defaults, each with its source' })
  @ApiResponse({ status: 200, description: 'The defaults', standardSchema: defaultsReply })
  @ApiProblems('request-invalid')
  list(@Query({ schema: unitsQuery }) { units }: UnitsQuery) {
    return defaultsTable(units);
  }
}
