import { applyDecorators } from '@nestjs/common';
import { ApiResponse } from '@nestjs/swagger';
import { problemReplySchema } from '#contracts/http/common.js';
import { problemTable, type ProblemCode } from './problem-table.js';

/** Documents the problems that a route answers with, grouped by status. */
export function ApiProblems(...codes: readonly ProblemCode[]): MethodDecorator {
  const titles = new Map<number, string[]>();
  for (const code of codes) {
    const { status, title } = problemTable[code];
    titles.set(status, [...(titles.get(status) ?? []), `${code}: ${title}`]);
  }
  return applyDecorators(
    ...[...titles].map(([status, lines]) =>
      ApiResponse({
        status,
        description: lines.join('; '),
        content: { 'application/problem+json': { schema: { $ref: problemReference } } },
      }),
    ),
  );
}

const problemReference = `#/components/schemas/${problemReplySchema.meta()?.id ?? ''}`;
