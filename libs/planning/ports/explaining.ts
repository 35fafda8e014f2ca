import type { JsonDocument } from '../json-document.js';
import type { ExplanationProgress } from './explanation-store.js';

export interface ExplainingJob {
  readonly campus: JsonDocument;
  readonly plan: JsonDocument;
  readonly question: JsonDocument;
  readonly seconds: number;
}

/** Answers a question about a plan. Rejects where it fails, which is a defect. */
export interface Explaining {
  explain(
    job: ExplainingJob,
    hooks: {
      readonly signal: AbortSignal;
      readonly onProgress: (progress: ExplanationProgress) => void;
    },
  ): Promise<JsonDocument>;
}
