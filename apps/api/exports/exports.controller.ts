import { Controller, Get, Inject, Param, Query, Res, StreamableFile } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import {
  exportParams,
  exportQuery,
  type ExportParams,
  type ExportQuery,
} from '#contracts/http/exports.js';
import { exportCampus } from '#planning/use-cases/export-campus.js';
import { soundCampus } from '../campuses/loaded-campus.js';
import type { HttpReply } from '../http-reply.js';
import { unknownPlan } from '../plans/plan-replies.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { ProblemError } from '../problems/problem-error.js';

@ApiTags('exports')
@Controller('campuses/:id/exports')
export class ExportsController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get(':format')
  @ApiOperation({ summary: 'Write a campus, or a plan of it, for other programs' })
  @ApiResponse({
    status: 200,
    description: 'The file',
    content: { 'application/octet-stream': { schema: { type: 'string', format: 'binary' } } },
  })
  @ApiProblems(
    ...(['request-invalid', 'unknown-campus', 'unknown-plan'] as const),
    ...(['campus-outdated', 'export-impossible'] as const),
  )
  async read(
    @Param({ schema: exportParams }) { id, format }: ExportParams,
    @Query({ schema: exportQuery }) { audience, plan, table, year }: ExportQuery,
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const { stored } = await soundCampus(this.ports, id);
    const outcome = await exportCampus(this.ports, {
      ...{ format, table, year, audience },
      campusId: stored.id,
      planId: plan,
    });
    if (outcome.kind !== 'written') throw unknownPlan();
    const { answer } = outcome;
    if (!answer.ok) throw new ProblemError('export-impossible', REFUSALS[answer.refusal]);
    const { bytes, fileName, mediaType } = answer.exported;
    void reply.header('content-disposition', `attachment; filename="${fileName}"`);
    return new StreamableFile(bytes, { type: mediaType });
  }
}

const REFUSALS = {
  'plan-needed': 'This is worked out from a plan; name one with plan=ID.',
  'not-public': 'A bundle holds the whole campus, so there is no public one.',
} as const;
