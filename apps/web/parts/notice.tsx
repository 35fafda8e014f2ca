import type { ReactNode } from 'react';
import type { Refusal } from '../api.js';

interface NoticeProps {
  readonly heading: string;
  readonly refusal?: Refusal | undefined;
  readonly remedy: string;
  readonly children?: ReactNode;
}

/** A page that cannot show a plan: what is the matter, and what to do. */
export function Notice({ heading, refusal, remedy, children }: NoticeProps): ReactNode {
  return (
    <div className="notice">
      <h1>{heading}</h1>
      {refusal !== undefined && (
        <p>
          {refusal.title}. {refusal.detail}
        </p>
      )}
      <p>{refusal?.remedy ?? remedy}</p>
      {children}
    </div>
  );
}
