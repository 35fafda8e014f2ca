import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { securityHeaders } from '#apps/api/guards/security-headers.js';
import type { SolveReply } from '#contracts/http/solves.js';
import { bodyOf, notFound, sendJson, sendPageFile } from './http.js';
import {
  emptyHoldings,
  heldBrief,
  heldExplanation,
  heldSolve,
  subjectOfPlan,
  type ExplanationSubject,
} from './holdings.js';

interface Asked {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
  /** Of `/api/plans/ID/overview`: `plans`, `ID`, `overview`. */
  readonly parts: readonly string[];
}

/** Serves the built page and answers as the api would, from what a test puts into `holdings`. */
export class FakeApi {
  holdings = emptyHoldings();
  /** Bodies of the solve requests, as they came. */
  readonly solveBodies: unknown[] = [];
  readonly #listeners = new Set<ServerResponse>();
  readonly #server: Server = createServer((request, response) => {
    this.#answer(request, response).catch((error: unknown) => {
      response.writeHead(500).end(String(error));
    });
  });
  #port = 0;

  /** Listens on any port, or again on the one it had. */
  async start(): Promise<string> {
    await new Promise<void>((resolve) => {
      this.#server.listen(this.#port, '127.0.0.1', resolve);
    });
    this.#port = (this.#server.address() as AddressInfo).port;
    return `http://127.0.0.1:${this.#port}`;
  }

  async stop(): Promise<void> {
    const closed = new Promise((resolve) => this.#server.close(resolve));
    this.#server.closeAllConnections();
    await closed;
  }

  /** Changes the newest solve and tells every page that follows it. */
  changeSolve(change: Partial<SolveReply>): void {
    const [newest, ...older] = this.holdings.solves;
    const changed = { ...(newest ?? heldSolve(1)), ...change };
    this.holdings.solves = [changed, ...older];
    for (const listener of this.#listeners) {
      listener.write(`event: solve\ndata: ${JSON.stringify(changed)}\n\n`);
    }
  }

  /** How many pages follow a solve at the moment. */
  get listenerCount(): number {
    return this.#listeners.size;
  }

  async #answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    if (this.holdings.silent.has(path)) return;
    const refusal = this.holdings.refusals.get(path);
    if (refusal !== undefined) return sendJson(response, refusal.body, refusal.status);
    if (!path.startsWith('/api/')) return sendPageFile(response, path);
    const parts = path.split('/').slice(2);
    const asked = { request, response, parts };
    if (parts[0] === 'health') return sendJson(response, { status: 'ok' });
    if (parts[0] === 'campuses') return this.#answerCampus(asked);
    if (parts[0] === 'plans') return this.#answerPlan(asked);
    if (parts[0] === 'explanations') {
      const { explanations } = this.holdings;
      return sendJson(
        response,
        explanations.find(({ id }) => id === parts[1]),
      );
    }
    if (parts[0] === 'solves') return this.#answerSolve(asked);
    return notFound(response);
  }

  async #answerCampus({ request, response, parts: [, campusId, part] }: Asked): Promise<void> {
    const { campuses, plans, solves } = this.holdings;
    if (campusId === undefined) return sendJson(response, { campuses });
    const campus = campuses.find(({ id }) => id === campusId);
    if (campus === undefined) return notFound(response);
    if (part === undefined) return sendJson(response, { ...campus, file: this.holdings.file });
    if (part === 'explanations') {
      const about = { planId: null, campusId, campusVersion: campus.version };
      return this.#answerQuestion({ request, response }, { about, kind: 'conflicts' });
    }
    if (part === 'decisions') return sendJson(response, { decisions: [] });
    if (part === 'suitability') return sendJson(response, { draws: 1000, sites: [] });
    if (part === 'plans') {
      const summaries = plans.map(({ summary }) => summary);
      return sendJson(response, {
        plans: summaries.filter((summary) => summary.campusId === campusId),
      });
    }
    if (part !== 'solves') return notFound(response);
    const own = solves.filter((solve) => solve.campusId === campusId);
    if (request.method === 'GET') return sendJson(response, { solves: own });
    this.solveBodies.push(JSON.parse(await bodyOf(request)));
    const solve = heldSolve(solves.length + 1, { campusId });
    this.holdings.solves = [solve, ...solves];
    return sendJson(response, solve, 202);
  }

  #answerQuestion(
    { request, response }: Pick<Asked, 'request' | 'response'>,
    { about, kind }: { about: ExplanationSubject; kind: 'next-site' | 'conflicts' },
  ): void {
    if (request.method === 'POST') {
      this.holdings.explanations.unshift(heldExplanation(about, { kind }));
      return sendJson(response, this.holdings.explanations[0], 202);
    }
    return sendJson(response, { explanations: this.holdings.explanations });
  }

  #answerPlan({ request, response, parts: [, id, part, file] }: Asked): void {
    const plan = this.holdings.plans.find(({ summary }) => summary.id === id);
    if (plan === undefined) return notFound(response);
    if (part === 'overview') return sendJson(response, plan.overview);
    if (part === 'explanations') {
      const about = subjectOfPlan(plan.summary.id);
      return this.#answerQuestion({ request, response }, { about, kind: 'next-site' });
    }
    if (part === 'documents' && file === undefined) {
      return sendJson(response, { documents: [heldBrief(plan.summary.id)] });
    }
    if (file !== 'administration-brief.pdf') return notFound(response);
    response.writeHead(200, {
      'content-type': 'application/pdf',
      'content-disposition': `inline; filename="${file}"`,
    });
    response.end('%PDF-1.7 of a test');
  }

  #answerSolve({ response, parts: [, id, part] }: Asked): void {
    const held = (): SolveReply | undefined => this.holdings.solves.find((one) => one.id === id);
    if (held() === undefined) return notFound(response);
    if (part === 'cancel') this.holdings.onCancel(id ?? '');
    if (part !== 'events') return sendJson(response, held(), part === 'cancel' ? 202 : 200);
    response.writeHead(200, { 'content-type': 'text/event-stream' });
    response.write(`event: solve\ndata: ${JSON.stringify(held())}\n\n`);
    this.#listeners.add(response);
    response.on('close', () => this.#listeners.delete(response));
  }
}
