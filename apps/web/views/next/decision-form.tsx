import type { ReactNode } from 'react';
import type { NextYear } from '#explain/overview/plan-overview.js';
import type { NewDecision } from '../../api.js';
import { ChoiceField, LongTextField, Radios, TextField } from '../../parts/fields.js';
import { strings } from '../../strings.data.js';

const words = strings.decision;

interface DecisionFormProps {
  readonly next: NextYear;
  /** Candidates that the plan does not propose for the year, each with its name. */
  readonly others: readonly (readonly [site: string, name: string])[];
  /** What was typed so far; null: nothing. */
  readonly kept: NewDecision | null;
  readonly isSaving: boolean;
  readonly onKeep: (decision: NewDecision) => void;
  readonly onRecord: (decision: NewDecision) => void;
}

const verdicts = (['approved', 'put off', 'refused'] as const).map(
  (verdict) => [verdict, words.verdicts[verdict]] as const,
);

/** The words of a decision; an approval needs a name and a reason. */
export function DecisionForm(props: DecisionFormProps): ReactNode {
  const { next, others, kept, isSaving, onKeep, onRecord } = props;
  const first = next.sites[0]?.site ?? others[0]?.[0];
  if (first === undefined) return <p>{strings.next.none(next.year)}</p>;
  const decision: NewDecision = kept ?? {
    ...{ site: first, year: next.year, verdict: 'approved' },
    ...{ decidedBy: '', reason: '', dissent: '' },
  };
  const change = (part: Partial<NewDecision>): void => onKeep({ ...decision, ...part });
  return (
    <form
      className="decision-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (!isSaving) onRecord(decision);
      }}
    >
      <ChoiceField
        label={words.site}
        value={decision.site}
        options={[
          ...next.sites.map(({ site, name }) => [site, `${site} ${name}`] as const),
          ...others.map(([site, name]) => [site, words.otherSite(site, name)] as const),
        ]}
        onText={(site) => change({ site })}
      />
      <Radios
        legend={words.verdict}
        name="verdict"
        value={decision.verdict}
        options={verdicts}
        onChoose={(verdict) => change({ verdict })}
      />
      <TextField
        label={words.by}
        need="required"
        value={decision.decidedBy}
        onText={(decidedBy) => change({ decidedBy })}
      />
      <Why decision={decision} onChange={change} />
      <button type="submit" className="primary" aria-disabled={isSaving}>
        {words.record}
      </button>
    </form>
  );
}

interface WhyProps {
  readonly decision: NewDecision;
  readonly onChange: (part: Partial<NewDecision>) => void;
}

function Why({ decision, onChange }: WhyProps): ReactNode {
  return (
    <>
      <LongTextField
        label={words.reason}
        need="required"
        rows={3}
        value={decision.reason}
        onText={(reason) => onChange({ reason })}
      />
      <LongTextField
        label={words.dissentLabel}
        rows={2}
        value={decision.dissent}
        onText={(dissent) => onChange({ dissent })}
      />
    </>
  );
}
