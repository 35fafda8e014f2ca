import {
  Body,
  Controller,
  Get,
  Headers,
  Inject,
  Param,
  Post,
  Put,
  Query,
  Res,
} from '@nestjs/common';
import { ApiHeader, ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { HttpReply } from '../http-reply.js';
import {
  campusListReply,
  campusQuery,
  campusReply,
  campusSavedReply,
} from '#contracts/http/campuses.js';
import { idParams } from '#contracts/http/common.js';
import { addCampus, replaceCampus } from '#planning/use-cases/save-campus.js';
import { ApiProblems } from '../problems/api-problems.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { campusBody } from './campus-body.js';
import { campusReplyOf, campusSummaryReplyOf } from './campus-replies.js';
import { versionOfIfMatch, versionTag } from './if-match.js';
import { campusAddress, savedOrProblem, unknownCampus } from './saved-campus.js';

@ApiTags('campuses')
@Controller('campuses')
export class CampusesController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get()
  @ApiOperation({ summary: 'List the campuses, newest first' })
  @ApiResponse({ status: 200, description: 'The campuses', standardSchema: campusListReply })
  async list() {
    return { campuses: (await this.ports.campuses.list()).map(campusSummaryReplyOf) };
  }

  @Post()
  @ApiOperation({ summary: 'Add a campus from a campus file' })
  @ApiResponse({ status: 201, description: 'Saved', standardSchema: campusSavedReply })
  @ApiProblems('campus-refused', 'body-not-json', 'body-too-large', 'media-type')
  async add(
    @Body({ schema: campusBody }) file: unknown,
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const { campus, warnings } = savedOrProblem(await addCampus(this.ports, file));
    void reply.header('etag', versionTag(campus.version)).header('location', campusAddress(campus));
    return { campus: campusSummaryReplyOf(campus), warnings };
  }

  @Get(':id')
  @ApiOperation({ summary: 'Read the newest or a named version of a campus' })
  @ApiResponse({ status: 200, description: 'The campus', standardSchema: campusReply })
  @ApiProblems('request-invalid', 'unknown-campus')
  async read(
    @Param({ schema: idParams }) { id }: { id: string },
    @Query({ schema: campusQuery }) { version }: { version?: number },
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const campus = await this.ports.campuses.load(id, version);
    if (campus === null) throw unknownCampus();
    void reply.header('etag', versionTag(campus.version));
    return campusReplyOf(campus);
  }

  @Put(':id')
  @ApiOperation({ summary: 'Save the next version of a campus' })
  @ApiHeader({ name: 'If-Match', required: true, description: 'The ETag last read' })
  @ApiResponse({ status: 200, description: 'Saved', standardSchema: campusSavedReply })
  @ApiProblems('campus-refused', 'unknown-campus', 'version-conflict', 'version-missing')
  async replace(
    @Param({ schema: idParams }) { id }: { id: string },
    @Headers('if-match') ifMatch: string | undefined,
    @Body({ schema: campusBody }) document: unknown,
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const expectedVersion = versionOfIfMatch(ifMatch);
    const outcome = await replaceCampus(this.ports, { id, expectedVersion, document });
    const { campus, warnings } = savedOrProblem(outcome);
    void reply.header('etag', versionTag(campus.version));
    return { campus: campusSummaryReplyOf(campus), warnings };
  }
}
