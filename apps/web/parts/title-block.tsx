import type { ReactNode } from 'react';
import type { CampusSummary } from '../api.js';
import { dateInWords, momentInWords } from '../format/numbers.js';
import type { Address } from '../state/address.js';
import type { DeskContent } from '../state/desk-content.js';
import { strings } from '../strings.data.js';

interface TitleBlockProps {
  readonly content: DeskContent;
  readonly goTo: (change: Partial<Address>) => void;
}

/** As on a survey sheet: whose ground it is, of what date, and which plan lies here. */
export function TitleBlock({ content, goTo }: TitleBlockProps): ReactNode {
  if (!('campus' in content)) {
    return (
      <header className="title-block">
        <p className="title-campus">{strings.productName}</p>
      </header>
    );
  }
  const { campus } = content;
  return (
    <header className="title-block">
      <p className="title-campus">{campus.name}</p>
      {content.kind === 'plan' && (
        <>
          <p>{content.overview.campus.program}</p>
          <p className="title-date">
            {strings.dataOf(dateInWords(content.overview.campus.dataDate))}
          </p>
        </>
      )}
      <Choosers content={content} goTo={goTo} />
    </header>
  );
}

interface ChoosersProps {
  readonly content: Extract<DeskContent, { kind: 'plan' | 'no-plan-yet' }>;
  readonly goTo: (change: Partial<Address>) => void;
}

function Choosers({ content, goTo }: ChoosersProps): ReactNode {
  const { campuses, campus, plans } = content;
  const shown = content.kind === 'plan' ? content.plan : null;
  return (
    <div className="choosers">
      {campuses.length > 1 && (
        <Chooser
          label={strings.chooseCampus}
          value={campus.id}
          options={campusOptions(campuses)}
          onChoose={(campusId) => goTo({ campusId, planId: null, siteId: null })}
        />
      )}
      {shown !== null && plans.length > 1 && (
        <Chooser
          label={strings.choosePlan}
          value={shown.id}
          options={plans.map(({ id, origin, solvedAt }) => [
            id,
            strings.planFrom[origin](momentInWords(solvedAt)),
          ])}
          onChoose={(planId) => goTo({ campusId: campus.id, planId })}
        />
      )}
    </div>
  );
}

/** Campuses by name; those that share one are told apart by when they were saved last. */
function campusOptions(campuses: readonly CampusSummary[]): readonly (readonly [string, string])[] {
  const isShared = (name: string): boolean =>
    campuses.filter((other) => other.name === name).length > 1;
  return campuses.map(({ id, name, savedAt }) => [
    id,
    isShared(name) ? strings.campusSaved(name, momentInWords(savedAt)) : name,
  ]);
}

interface ChooserProps {
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [string, string])[];
  readonly onChoose: (value: string) => void;
}

function Chooser({ label, value, options, onChoose }: ChooserProps): ReactNode {
  return (
    <label className="field">
      {label}
      <select value={value} onChange={(event) => onChoose(event.target.value)}>
        {options.map(([id, name]) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
