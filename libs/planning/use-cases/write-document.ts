import { newestAnswers } from '../documents/plan-answers.js';
import type { CampusStore } from '../ports/campus-store.js';
import type {
  DocumentWriter,
  ListedDocument,
  Paper,
  PlanJson,
  WrittenDocument,
} from '../ports/document-writer.js';
import type { ExplanationStore } from '../ports/explanation-store.js';
import type { PlanOverview } from '../ports/plan-overview.js';
import type { PlanStore } from '../ports/plan-store.js';
import { shownPlan } from './shown-plan.js';

interface Ports {
  readonly campuses: CampusStore;
  readonly plans: PlanStore;
  readonly overview: PlanOverview;
  readonly writer: DocumentWriter;
  readonly explanations: Pick<ExplanationStore, 'listOf'>;
}

export type WriteOutcome =
  | { readonly kind: 'written'; readonly document: WrittenDocument }
  | { readonly kind: 'unknown-plan' }
  | { readonly kind: 'unknown-document' };

/** Writes one document of a stored plan, by its file name. */
export async function writeDocument(
  ports: Ports,
  { planId, fileName, paper }: { planId: string; fileName: string; paper: Paper },
): Promise<WriteOutcome> {
  const plan = await planJson(ports, planId);
  if (plan === null) return { kind: 'unknown-plan' };
  const document = await ports.writer.write(plan, fileName, paper);
  return document === null ? { kind: 'unknown-document' } : { kind: 'written', document };
}

/** The documents of a stored plan. Null: no such plan. */
export async function listDocuments(
  ports: Ports,
  planId: string,
): Promise<readonly ListedDocument[] | null> {
  const plan = await planJson(ports, planId);
  return plan === null ? null : ports.writer.list(plan);
}

async function planJson(ports: Ports, planId: string): Promise<PlanJson | null> {
  const shown = await shownPlan(ports, planId);
  if (shown === null) return null;
  const { campus, plan, overview } = shown;
  const answers = newestAnswers(await ports.explanations.listOf(planId));
  return { campus: campus.document, plan: plan.plan, overview, answers };
}
