import { Controller, Get, Inject } from '@nestjs/common';
import { ApiOperation, ApiResponse, ApiTags } from '@nestjs/swagger';
import { healthReply } from '#contracts/http/health.js';
import { PORTS, type ApiPorts } from '../ports.js';
import { ApiProblems } from '../problems/api-problems.js';
import { ProblemError } from '../problems/problem-error.js';

@ApiTags('health')
@Controller('health')
export class HealthController {
  constructor(@Inject(PORTS) private readonly ports: ApiPorts) {}

  @Get()
  @ApiOperation({ summary: 'Tell whether the api and its store answer' })
  @ApiResponse({ status: 200, description: 'Both answer', standardSchema: healthReply })
  @ApiProblems('store-unavailable')
  async read() {
    try {
      await this.ports.queue.ping();
    } catch {
      throw new ProblemError('store-unavailable', 'The store does not answer.');
    }
    return { status: 'ok' };
  }
}
