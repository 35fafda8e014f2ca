import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { fileExchange } from '#apps/adapters/file-exchange.js';
import { createApi } from '#apps/api/create-api.js';
import type { ApiPorts } from '#apps/api/ports.js';
import { anError, aWarning } from '#domain/problem.js';
import type { JsonDocument } from '#planning/json-document.js';
import { OVERVIEW_FORM } from '#planning/overview-document.js';
import { memoryStore } from './planning/memory-store.js';

/** A reply with its body parsed. */
export interface Reply {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | undefined>>;
  // What a body holds is what the tests are about.
  // eslint-disable-next-line @typescript-eslint/no-explicit-any
  readonly body: any;
}

export interface Ask {
  readonly method?: 'GET' | 'POST' | 'PUT' | 'DELETE';
  readonly url: string;
  readonly body?: unknown;
  /** Sent as it is, in place of `body`. */
  readonly text?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

const place = { code: 'NAME-MISSING', record: 'campus', field: 'name' };
const oddPlace = { code: 'NAME-ODD', record: 'campus', field: 'name' };

/** Accepts every document with a name; an odd name is a warning. */
const reader: ApiPorts['reader'] = {
  read: (document) => {
    const name = (document as JsonDocument | undefined)?.['name'];
    if (typeof name !== 'string') {
      return { ok: false, problems: [anError(place, ['There is no name.', 'Give it one.'])] };
    }
    const warnings = name === 'odd' ? [aWarning(oddPlace, ['It is odd.', 'Look again.'])] : [];
    return { ok: true, name, document: document as JsonDocument, warnings };
  },
};

const adapters: Pick<ApiPorts, 'reader' | 'checker' | 'overview' | 'writer' | 'exchange'> = {
  reader,
  exchange: fileExchange,
  checker: { check: async () => ({ verified: true, breaches: [] }) },
  overview: { of: async (_, plan) => ({ form: OVERVIEW_FORM, workedOutFrom: plan }) },
  writer: {
    list: async () => [
      {
        kind: 'administration-brief',
        title: 'Administration brief',
        fileName: 'administration-brief.pdf',
      },
    ],
    write: async (_, fileName, paper) =>
      fileName === 'administration-brief.pdf'
        ? {
            kind: 'administration-brief',
            fileName,
            mediaType: 'application/pdf',
            bytes: Buffer.from(`%PDF-1.7 ${paper}`),
          }
        : null,
  },
};

/** The api over stores in memory. */
export async function testApi(overrides: Partial<ApiPorts> = {}, pageFolder?: string) {
  const store = memoryStore();
  const app = await createApi(
    { ...store, ...adapters, ...overrides },
    { isLocalOnly: true, ...(pageFolder === undefined ? {} : { pageFolder }) },
  );
  return { ...store, app, ask: asking(app), close: () => app.close() };
}

function asking(app: NestFastifyApplication) {
  return async ({ body, headers = {}, method = 'GET', text, url }: Ask): Promise<Reply> => {
    const json = body === undefined ? {} : { payload: body as object };
    const raw = text === undefined ? {} : { payload: text };
    const sent = { 'content-type': 'application/json', ...headers };
    const withType = text === undefined ? headers : sent;
    const reply = await app.inject({ method, url, headers: { ...withType }, ...json, ...raw });
    const isJson = /json/.test(String(reply.headers['content-type']));
    return {
      status: reply.statusCode,
      headers: reply.headers as Reply['headers'],
      body: isJson ? JSON.parse(reply.body) : reply.body,
    };
  };
}
