import { Body, Controller, HttpCode, Inject, Param, Post, Put } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import {
  handPlacementsBody,
  partSavedReply,
  siteChangeBody,
  siteCheckBody,
  siteCheckReply,
  siteParams,
  type HandPlacements,
  type SiteChange,
  type SiteParams,
} from '#contracts/http/sites.js';
import { handPlacementsPart, sitePart } from '#planning/campus-part.js';
import { drawnAreaOf } from '#planning/drawn-area.js';
import type { JsonDocument } from '#planning/json-document.js';
import { changePart, problemsBroughtIn } from '#planning/use-cases/change-part.js';
import { unknownCampus } from '../campuses/saved-campus.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { savedPartOrProblem } from './changed-part.js';

@ApiTags('sites')
@Controller('campuses/:id/sites/:site')
export class SitesController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Put()
  @ApiOperation({ summary: 'Add, change or take out one site, keeping changes of others' })
  @ApiResponse({ status: 200, description: 'Saved', standardSchema: partSavedReply })
  @ApiProblems('request-invalid', 'unknown-campus', 'edit-conflict', 'campus-refused')
  async change(
    @Param({ schema: siteParams }) { id, site }: SiteParams,
    @Body({ schema: siteChangeBody }) { basedOn, site: value }: SiteChange,
  ) {
    const part = sitePart(site);
    return savedPartOrProblem(await changePart(this.ports, { campusId: id, basedOn, part, value }));
  }

  @Post('check')
  @HttpCode(200)
  @ApiOperation({ summary: 'Judge a site as it would stand in the campus; nothing is saved' })
  @ApiResponse({ status: 200, description: 'The findings', standardSchema: siteCheckReply })
  @ApiProblems('request-invalid', 'unknown-campus')
  async check(
    @Param({ schema: siteParams }) { id, site }: SiteParams,
    @Body({ schema: siteCheckBody }) body: { site: JsonDocument },
  ) {
    const campus = await this.ports.campuses.load(id);
    if (campus === null) throw unknownCampus();
    const changed = sitePart(site).write(campus.document, body.site);
    return {
      problems: problemsBroughtIn(this.ports.reader, campus, changed),
      drawnAreaSqFt: drawnAreaOf(body.site),
    };
  }

  @Put('hand-placements')
  @ApiOperation({ summary: 'Fix a site to a year by hand, or bar it from years' })
  @ApiResponse({ status: 200, description: 'Saved', standardSchema: partSavedReply })
  @ApiProblems('request-invalid', 'unknown-campus', 'edit-conflict', 'campus-refused')
  async place(
    @Param({ schema: siteParams }) { id, site }: SiteParams,
    @Body({ schema: handPlacementsBody }) { basedOn, handPlacements }: HandPlacements,
  ) {
    const part = handPlacementsPart(site);
    const change = { campusId: id, basedOn, part, value: handPlacements };
    return savedPartOrProblem(await changePart(this.ports, change));
  }
}
