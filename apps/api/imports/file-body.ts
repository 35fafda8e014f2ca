import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { ProblemError } from '../problems/problem-error.js';

const FILE_TYPE = 'application/octet-stream';
const expected = `Send the file as it is, with the header Content-Type: ${FILE_TYPE}.`;

/** Lets files in as they are, where they are imported and nowhere else. */
export function takeFileBodies(app: NestFastifyApplication): void {
  const fastify = app.getHttpAdapter().getInstance();
  fastify.addContentTypeParser(FILE_TYPE, { parseAs: 'buffer' }, (request, body, done) => {
    if (/^\/api\/campuses\/[^/]+\/imports(?:[/?]|$)/.test(request.url)) done(null, body);
    else done(new ProblemError('media-type', 'Send the header Content-Type: application/json.'));
  });
}

/** The bytes of a file that came as a body. */
export function fileBody(body: unknown): Uint8Array {
  if (body instanceof Uint8Array) return body;
  throw new ProblemError('media-type', expected);
}
