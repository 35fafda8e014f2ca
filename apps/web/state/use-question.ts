import { useCallback, useEffect, useState } from 'react';
import { api, type Explanation, type Question } from '../api.js';
import { failureOf, type Failure } from './use-loaded.js';

const LOOK_EVERY_MS = 1_000;

export interface QuestionControl {
  /** The newest time that it was asked of the plan; null: never. */
  readonly asked: Explanation | null;
  readonly failure: Failure | null;
  /** Asks it, to be answered in so many seconds; in the usual time where none are given. */
  readonly ask: (seconds?: number) => void;
}

/** Asks one question of a plan, follows the answer, and finds one that was given before. */
export function useQuestion(planId: string, question: Question): QuestionControl {
  const [asked, setAsked] = useState<Explanation | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const key = JSON.stringify(question);
  const fail = useCallback((error: unknown) => setFailure(failureOf(error)), []);

  useEffect(() => {
    let isCurrent = true;
    api.explanations(planId).then((all) => {
      const before = all.find((one) => JSON.stringify(one.question) === key);
      if (isCurrent && before !== undefined) setAsked(before);
    }, fail);
    return () => {
      isCurrent = false;
    };
  }, [planId, key, fail]);

  const openId = asked?.state === 'queued' || asked?.state === 'working' ? asked.id : null;
  useEffect(() => {
    if (openId === null) return undefined;
    const timer = setInterval(() => {
      api.explanation(openId).then(setAsked, fail);
    }, LOOK_EVERY_MS);
    return () => clearInterval(timer);
  }, [openId, fail]);

  const ask = useCallback(
    (seconds?: number) => {
      setFailure(null);
      api.ask(planId, JSON.parse(key) as Question, seconds).then(setAsked, fail);
    },
    [planId, key, fail],
  );

  return { asked, failure, ask };
}
