import { Controller, Get, Inject, Param, Query, Res, StreamableFile } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { idParams } from '#contracts/http/common.js';
import {
  documentListReply,
  documentParams,
  documentQuery,
  type DocumentListReply,
  type DocumentParams,
  type DocumentQuery,
} from '#contracts/http/documents.js';
import { listDocuments, writeDocument } from '#planning/use-cases/write-document.js';
import type { HttpReply } from '../http-reply.js';
import { unknownPlan } from '../plans/plan-replies.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { ProblemError } from '../problems/problem-error.js';

@ApiTags('documents')
@Controller('plans/:id/documents')
export class DocumentsController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get()
  @ApiOperation({ summary: 'List the documents of a plan' })
  @ApiResponse({ status: 200, description: 'The documents', standardSchema: documentListReply })
  @ApiProblems('request-invalid', 'unknown-plan', 'plan-outdated')
  async list(@Param({ schema: idParams }) { id }: { id: string }): Promise<DocumentListReply> {
    const documents = await listDocuments(this.ports, id);
    if (documents === null) throw unknownPlan();
    return {
      documents: documents.map(({ kind, site, title, fileName }) => ({
        kind,
        site: site ?? null,
        title,
        fileName,
        path: `/api/plans/${id}/documents/${fileName}`,
      })),
    };
  }

  @Get(':fileName')
  @ApiOperation({ summary: 'Write a document of a plan, as a draft' })
  @ApiResponse({
    status: 200,
    description: 'The document',
    content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } },
  })
  @ApiProblems('request-invalid', 'unknown-plan', 'unknown-document', 'plan-outdated')
  async write(
    @Param({ schema: documentParams }) { id, fileName }: DocumentParams,
    @Query({ schema: documentQuery }) { paper }: DocumentQuery,
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const outcome = await writeDocument(this.ports, { planId: id, fileName, paper });
    if (outcome.kind === 'unknown-plan') throw unknownPlan();
    if (outcome.kind === 'unknown-document') throw unknownDocument();
    const { document } = outcome;
    void reply.header('content-disposition', `inline; filename="${document.fileName}"`);
    return new StreamableFile(document.bytes, { type: document.mediaType });
  }
}

function unknownDocument(): ProblemError {
  return new ProblemError(
    'unknown-document',
    'GET /api/plans/ID/documents lists those of a plan; a dossier there is for any candidate.',
  );
}
