import type { JsonDocument } from '../json-document.js';
import type { ExplanationProgress } from './explanation-store.js';

export interface ExplainingJob {
  readonly campus: JsonDocument;
  /** `null`: the question is about the campus alone. */
  readonly plan: JsonDocument | null;
  readonly question: JsonDocument;
  readonly seconds: number;
}

/** Answers a question about a plan or a campus. Rejects where it fails, which is a defect. */
export interface Explaining {
  explain(
    job: ExplainingJob,
    hooks: {
      readonly signal: AbortSignal;
      readonly onProgress: (progress: ExplanationProgress) => void;
    },
  ): Promise<JsonDocument>;
}
