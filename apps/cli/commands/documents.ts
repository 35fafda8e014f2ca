import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { checkPlanFile } from '#planning/check-plan-file.js';
import type { JsonDocument } from '#planning/json-document.js';
import { DOCUMENT_QUESTIONS, planAnswers } from '#planning/documents/plan-answers.js';
import { documentSource, type DocumentSource } from '#planning/documents/document-source.js';
import { siteDocuments, usualDocuments } from '#planning/documents/plan-documents.js';
import { refusals } from '#planning/documents/release-check.js';
import { overviewDocument, overviewOf } from '#planning/overview-document.js';
import type { DocumentKind, DocumentWish, Paper } from '#planning/ports/document-writer.js';
import type { ExplanationProgress } from '#planning/ports/explanation-store.js';
import type { ExplainingJob } from '#planning/ports/explaining.js';
import type { Edition } from '#report/document/edition.js';
import type { PlanAnswers } from '#report/parts/plan-answers.js';
import { drawDocument, editionOf } from '../../adapters/plan-documents.js';
import { threadExplaining } from '../../adapters/thread-explaining.js';
import { reportOf } from '../../adapters/saved-plan.js';
import { stepPrinter } from '../ask.js';
import { CommandFailure, EXIT } from '../exit-codes.js';
import { asJson, type Output } from '../output.js';
import { breachLines } from '../problem-lines.js';
import { readCampus, readPlan, writeText } from '../read-files.js';

export interface DocumentsOptions {
  readonly out: string;
  /** Left out: every kind. */
  readonly only?: readonly DocumentKind[];
  /** Left out: the sites that are prepared first. */
  readonly site?: string;
  readonly paper: Paper;
  /** Write them as approved, not as drafts; refused where something is missing. */
  readonly final?: true;
  readonly approvedBy?: string;
  /** Ask what documents answer first; a number: seconds for each question. Left out: nothing is asked. */
  readonly withAnswers?: true | number;
  readonly json?: true;
}

/** `documents CAMPUS.json PLAN.json --out DIR`: the documents of a plan; a plan that is not verified gets none. */
export async function documents(
  files: { campus: string; plan: string },
  options: DocumentsOptions,
  output: Output,
): Promise<number> {
  const input = await readCampus(files.campus);
  const { plan, file, campus } = await readPlan(files.plan, input);
  const breaches = checkPlanFile(campus, plan, file);
  if (breaches.length > 0) {
    const refusal = 'The plan does not pass its checks, so no document is written:';
    throw new CommandFailure(EXIT.checkFailed, [refusal, ...breachLines(breaches)]);
  }
  const overview = overviewOf(overviewDocument(campus, plan, reportOf(file)));
  const answers = await answersFor({ campus: input.document, plan: file }, options, output);
  const source = documentSource({ campus, plan, overview, answers });
  const wishes = wishesOf(source, options);
  const edition: Edition = {
    ...editionOf(file, source),
    paper: options.paper,
    ...(options.final ? { approvedBy: options.approvedBy ?? '' } : {}),
  };
  if (options.final) refuseUnready(source, wishes, edition);
  await makeFolder(options.out);
  const written: string[] = [];
  for (const wish of wishes) {
    const made = await drawDocument(source, wish, edition);
    const path = join(options.out, made.fileName);
    await writeText(path, made.bytes);
    written.push(path);
  }
  const text = written.map((path) => `Wrote ${path}`).join('\n');
  output.out(options.json ? asJson({ documents: written }) : text);
  return EXIT.fine;
}

/** Seconds for each question, unless told otherwise. */
const QUESTION_SECONDS = 28;

/** Answers to the questions that documents show, one after the other. */
async function answersFor(
  of: { readonly campus: unknown; readonly plan: unknown },
  { withAnswers }: DocumentsOptions,
  output: Output,
): Promise<PlanAnswers> {
  if (withAnswers === undefined) return {};
  const seconds = withAnswers === true ? QUESTION_SECONDS : withAnswers;
  const step = stepPrinter(output);
  const onProgress = ({ message, share }: ExplanationProgress) => step(message, share);
  const signal = new AbortController().signal;
  const byKind: Record<string, JsonDocument> = {};
  for (const kind of DOCUMENT_QUESTIONS) {
    const job = { ...(of as Asked), question: { kind }, seconds };
    byKind[kind] = await threadExplaining.explain(job, { signal, onProgress });
  }
  return planAnswers(byKind);
}

type Asked = Pick<ExplainingJob, 'campus' | 'plan'>;

function wishesOf(source: DocumentSource, { only, site }: DocumentsOptions): DocumentWish[] {
  const usual = usualDocuments(source);
  const wished = site === undefined ? usual : withSite(source, usual, site);
  const kept = wished.filter(({ kind }) => only === undefined || only.includes(kind));
  if (kept.length > 0) return kept;
  throw new CommandFailure(EXIT.badInput, [
    'The plan prepares no site, so that there is no document of this kind; name a site with --site.',
  ]);
}

/** The usual documents, with those about a site for this one instead of the sites that come first. */
function withSite(source: DocumentSource, usual: DocumentWish[], site: string): DocumentWish[] {
  if (source.campus.candidates.some(({ id }) => id === site)) {
    return [...usual.filter((wish) => wish.site === undefined), ...siteDocuments(source, site)];
  }
  throw new CommandFailure(EXIT.badInput, [
    `There is no candidate site ${site}; the campus file lists them under candidateSites.`,
  ]);
}

/** Fails where a document may not be called final, with all that is missing. */
function refuseUnready(source: DocumentSource, wishes: DocumentWish[], edition: Edition): void {
  const found = refusals(source, wishes, edition);
  if (found.length === 0) return;
  const lines = found.flatMap(({ document, problems }) => [
    `  ${document}:`,
    ...problems.map(({ missing, problem, remedy }) => `    ${missing}: ${problem} ${remedy}`),
  ]);
  throw new CommandFailure(EXIT.checkFailed, [
    'Not ready to be final, so no document is written:',
    ...lines,
  ]);
}

async function makeFolder(path: string): Promise<void> {
  try {
    await mkdir(path, { recursive: true });
  } catch {
    throw new CommandFailure(EXIT.badInput, [
      `${path} cannot be made or is not a folder; give a folder that this user may write into`,
    ]);
  }
}
