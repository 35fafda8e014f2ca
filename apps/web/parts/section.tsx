import type { ReactNode } from 'react';

interface SectionProps {
  readonly id: string;
  readonly heading: string;
  readonly children: ReactNode;
}

/** One section of the document, a landmark named by its heading. */
export function Section({ id, heading, children }: SectionProps): ReactNode {
  return (
    <section id={id} aria-labelledby={`${id}-heading`} className="section">
      <h2 id={`${id}-heading`}>{heading}</h2>
      {children}
    </section>
  );
}
