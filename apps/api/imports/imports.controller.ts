import { createHash } from 'node:crypto';
import { Body, Controller, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { idParams } from '#contracts/http/common.js';
import {
  importAppliedReply,
  importPreviewReply,
  importTokenParams,
} from '#contracts/http/imports.js';
import type { StoredCampus } from '#planning/ports/campus-store.js';
import { applyImport, previewImport } from '#planning/use-cases/import-campus.js';
import { soundCampus } from '../campuses/loaded-campus.js';
import { savedOrProblem } from '../campuses/saved-campus.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { ProblemError } from '../problems/problem-error.js';
import { fileBody } from './file-body.js';

const aFile = { schema: { type: 'string', format: 'binary' } } as const;

@ApiTags('imports')
@Controller('campuses/:id/imports')
export class ImportsController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Post()
  @HttpCode(200)
  @ApiOperation({ summary: 'Show what a file would change in a campus; nothing is saved' })
  @ApiConsumes('application/octet-stream')
  @ApiBody(aFile)
  @ApiResponse({ status: 200, description: 'The dry run', standardSchema: importPreviewReply })
  @ApiProblems(
    'request-invalid',
    'unknown-campus',
    'campus-outdated',
    'body-too-large',
    'media-type',
  )
  async preview(@Param({ schema: idParams }) { id }: { id: string }, @Body() body: unknown) {
    const bytes = fileBody(body);
    const { stored } = await soundCampus(this.ports, id);
    const report = await previewImport(this.ports, stored, bytes);
    return { campusVersion: stored.version, token: tokenOf(stored, bytes), report };
  }

  @Post(':token/apply')
  @HttpCode(200)
  @ApiOperation({ summary: 'Save an import: the same file again, all of it or nothing' })
  @ApiConsumes('application/octet-stream')
  @ApiBody(aFile)
  @ApiResponse({ status: 200, description: 'Saved', standardSchema: importAppliedReply })
  @ApiProblems(
    ...(['request-invalid', 'unknown-campus', 'campus-outdated', 'import-stale'] as const),
    ...(['version-conflict', 'body-too-large', 'media-type', 'import-rejected'] as const),
  )
  async apply(
    @Param({ schema: importTokenParams }) { id, token }: { id: string; token: string },
    @Body() body: unknown,
  ) {
    const bytes = fileBody(body);
    const { stored } = await soundCampus(this.ports, id);
    if (token !== tokenOf(stored, bytes)) {
      const detail = 'The file or the campus is another than in the dry run: make a dry run again.';
      throw new ProblemError('import-stale', detail);
    }
    const outcome = await applyImport(this.ports, stored, bytes);
    if (outcome.kind === 'rejected') {
      const { problems, rows } = outcome.report;
      const all = [...problems, ...rows.flatMap((row) => row.problems)];
      throw new ProblemError('import-rejected', 'Nothing was saved.', { problems: all });
    }
    if (outcome.kind !== 'applied') return savedOrProblem(outcome);
    const { broughtPlans, report, version } = outcome;
    return { campusVersion: version, report, broughtPlans: [...broughtPlans] };
  }
}

/** Tells a file and the version of a campus that it was set against; nothing is kept for it. */
function tokenOf({ id, version }: StoredCampus, bytes: Uint8Array): string {
  return createHash('sha256').update(`${id} ${version} `).update(bytes).digest('hex');
}
