import { useCallback, useEffect, useMemo, useState } from 'react';
import { api, type CampusQuestion, type Explanation, type Question } from '../api.js';
import { failureOf, type Failure } from './use-loaded.js';

const LOOK_EVERY_MS = 1_000;

/** A question with what it is asked of. */
export type Asking =
  | { readonly planId: string; readonly question: Question }
  | {
      readonly campusId: string;
      /** Answers about earlier versions of the campus are not shown. */
      readonly fromVersion: number;
      readonly question: CampusQuestion;
    };

export interface QuestionControl {
  /** The newest time that it was asked; null: never. */
  readonly asked: Explanation | null;
  readonly failure: Failure | null;
  /** Asks it, to be answered in so many seconds; in the usual time where none are given. */
  readonly ask: (seconds?: number) => void;
}

/** Asks one question, follows the answer, and finds one that was given before. */
export function useQuestion(asking: Asking): QuestionControl {
  const [asked, setAsked] = useState<Explanation | null>(null);
  const [failure, setFailure] = useState<Failure | null>(null);
  const key = JSON.stringify(asking);
  // Made anew at every drawing, so that only what it says tells whether it is another.
  const same = useMemo(() => JSON.parse(key) as Asking, [key]);
  const fail = useCallback((error: unknown) => setFailure(failureOf(error)), []);

  useEffect(() => {
    let isCurrent = true;
    beforeOf(same).then((before) => {
      if (isCurrent && before !== undefined) setAsked(before);
    }, fail);
    return () => {
      isCurrent = false;
    };
  }, [same, fail]);

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
      const added =
        'planId' in same
          ? api.ask(same.planId, same.question, seconds)
          : api.askCampus(same.campusId, same.question, seconds);
      added.then(setAsked, fail);
    },
    [same, fail],
  );

  return { asked, failure, ask };
}

async function beforeOf(asking: Asking): Promise<Explanation | undefined> {
  const wanted = JSON.stringify(asking.question);
  const all =
    'planId' in asking
      ? await api.explanations(asking.planId)
      : (await api.campusExplanations(asking.campusId)).filter(
          ({ campusVersion }) => (campusVersion ?? 0) >= asking.fromVersion,
        );
  return all.find(({ question }) => JSON.stringify(question) === wanted);
}
