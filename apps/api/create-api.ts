import 'reflect-metadata';
import { existsSync } from 'node:fs';
import fastifyStatic from '@fastify/static';
import { StandardSchemaValidationPipe } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { ApiModule } from './api.module.js';
import { refuseForeignHost, refuseForeignOrigin } from './guards/foreign-requests.js';
import { securityHeaders } from './guards/security-headers.js';
import { takeFileBodies } from './imports/file-body.js';
import { openApiOf } from './openapi.js';
import type { ApiPorts } from './ports.js';
import { ProblemFilter } from './problems/problem-filter.js';
import { requestInvalid } from './problems/request-invalid.js';
import { sendProblem } from './problems/send-problem.js';

/** 25 MB: a campus of three hundred sites with detailed boundaries has about three. */
const largestBody = 25 * 1024 * 1024;

export interface ApiOptions {
  /** Only this machine can reach the address that will be listened on. */
  readonly isLocalOnly: boolean;
  /** Folder of the built page; left out or not there: no page is served. */
  readonly pageFolder?: string;
}

/** The api, ready to listen. */
export async function createApi(
  ports: ApiPorts,
  options: ApiOptions,
): Promise<NestFastifyApplication> {
  const adapter = new FastifyAdapter({ bodyLimit: largestBody, forceCloseConnections: true });
  const app = await NestFactory.create<NestFastifyApplication>(ApiModule.over(ports), adapter, {
    logger: ['error', 'warn', 'fatal'],
    abortOnError: false,
    // The server's own JSON parser stays; forms are nothing that this api understands.
    bodyParser: false,
  });
  app.setGlobalPrefix('api');
  app.useGlobalPipes(new StandardSchemaValidationPipe({ exceptionFactory: requestInvalid }));
  app.useGlobalFilters(new ProblemFilter());
  takeFileBodies(app);
  guard(app, options);
  const openApi = JSON.stringify(openApiOf(app));
  app.getHttpAdapter().get('/api/openapi.json', (_request, reply) => {
    void reply.header('content-type', 'application/json; charset=utf-8').send(openApi);
  });
  await servePage(app, options.pageFolder);
  await app.init();
  return app;
}

function guard(app: NestFastifyApplication, { isLocalOnly }: ApiOptions): void {
  const fastify = app.getHttpAdapter().getInstance();
  fastify.removeContentTypeParser('text/plain');
  fastify.addHook('onRequest', (request, reply, done) => {
    void reply.headers(securityHeaders);
    if (request.url.startsWith('/api/')) void reply.header('cache-control', 'no-store');
    const refusal =
      (isLocalOnly ? refuseForeignHost(request) : null) ?? refuseForeignOrigin(request);
    if (refusal) sendProblem(reply, refusal);
    else done();
  });
}

async function servePage(app: NestFastifyApplication, folder: string | undefined): Promise<void> {
  if (folder === undefined || !existsSync(folder)) return;
  await app.register(fastifyStatic, { root: folder, prefix: '/' });
}
