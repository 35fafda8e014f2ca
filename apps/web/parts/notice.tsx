import type { ReactNode } from 'react';
import type { Problem } from '../api.js';

interface NoticeProps {
  readonly heading: string;
  readonly problem?: Problem | undefined;
  readonly remedy: string;
  readonly children?: ReactNode;
}

/** A page that cannot show a plan: what is the matter, and what to do. */
export function Notice({ heading, problem, remedy, children }: NoticeProps): ReactNode {
  return (
    <div className="notice">
      <h1>{heading}</h1>
      {problem !== undefined && <p>{[problem.title, problem.detail].filter(Boolean).join(' — ')}</p>}
      <p>{problem?.remedy ?? remedy}</p>
      {children}
    </div>
  );
}
