import type { CampusReader } from '#planning/ports/campus-reader.js';
import type { CampusStore } from '#planning/ports/campus-store.js';
import type { DecisionStore } from '#planning/ports/decision-store.js';
import type { DocumentWriter } from '#planning/ports/document-writer.js';
import type { Exchange } from '#planning/ports/exchange.js';
import type { ExplanationStore } from '#planning/ports/explanation-store.js';
import type { PlanChecker } from '#planning/ports/plan-checker.js';
import type { PlanOverview } from '#planning/ports/plan-overview.js';
import type { PlanStore } from '#planning/ports/plan-store.js';
import type { SolveQueue } from '#planning/ports/solve-queue.js';
import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';

/** All that the api needs from outside. Handed to each controller under the token `PORTS`. */
export interface ApiPorts {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly requests: SolveRequestStore;
  readonly queue: SolveQueue;
  readonly decisions: DecisionStore;
  readonly explanations: ExplanationStore;
  readonly reader: CampusReader;
  readonly checker: PlanChecker;
  readonly overview: PlanOverview;
  readonly writer: DocumentWriter;
  readonly exchange: Exchange;
}

export const PORTS = Symbol('PORTS');
