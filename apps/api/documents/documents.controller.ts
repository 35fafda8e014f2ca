import { Controller, Get, Inject, Param, Res, StreamableFile } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { HttpReply } from '../http-reply.js';
import { documentParams } from '#contracts/http/documents.js';
import { writeDocument } from '#planning/use-cases/write-document.js';
import { unknownPlan } from '../plans/plan-replies.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';

@ApiTags('documents')
@Controller('plans/:id/documents')
export class DocumentsController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get(':fileName')
  @ApiOperation({ summary: 'Write a document of a plan' })
  @ApiResponse({
    status: 200,
    description: 'The document',
    content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } },
  })
  @ApiProblems('request-invalid', 'unknown-plan')
  async write(
    @Param({ schema: documentParams }) { id }: { id: string; fileName: string },
    @Res({ passthrough: true }) reply: HttpReply,
  ) {
    const document = await writeDocument(this.ports, id, 'administration-brief');
    if (document === null) throw unknownPlan();
    void reply.header('content-disposition', `inline; filename="${document.fileName}"`);
    return new StreamableFile(document.bytes, { type: document.mediaType });
  }
}
