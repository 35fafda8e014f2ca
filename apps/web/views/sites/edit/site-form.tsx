import type { ReactNode } from 'react';
import type { CampusFile } from '../../../api.js';
import { wholeNumber } from '../../../format/numbers.js';
import { ProblemList } from '../../../parts/problem-list.js';
import { strings } from '../../../strings.data.js';
import type { AnySite } from '../site-rows.js';
import { BoundaryField } from './boundary-field.js';
import type { FieldGroupProps } from './field-group.js';
import { FactFields } from './fact-fields.js';
import { GateFields } from './gate-fields.js';
import { MainFields } from './main-fields.js';
import { siteWith, type Fields } from './site-fields.js';
import { useSiteCheck } from './use-site-check.js';

const words = strings.edit;

interface SiteFormProps {
  readonly campusId: string;
  readonly file: CampusFile;
  readonly site: AnySite;
  readonly fields: Fields;
  readonly isSaving: boolean;
  readonly onFields: (fields: Fields) => void;
  readonly onSave: () => void;
  /** What was typed is thrown away. */
  readonly onDrop: () => void;
}

/** The form of one site; what the api finds wrong is said as it is typed. */
export function SiteForm(props: SiteFormProps): ReactNode {
  const { campusId, file, site, fields, isSaving, onFields, onSave, onDrop } = props;
  const typed = siteWith(site, fields);
  const check = useSiteCheck(campusId, typed);
  const group: FieldGroupProps = {
    file,
    fields,
    set: (field, text) => onFields({ ...fields, [field]: text }),
  };
  return (
    <form
      className="site-form"
      aria-label={words.form(site.id)}
      onSubmit={(event) => {
        event.preventDefault();
        if (!isSaving) onSave();
      }}
    >
      <p className="quiet">{words.lead}</p>
      <MainFields {...group} />
      <FactFields {...group} />
      <GateFields {...group} />
      <BoundaryField {...group} site={typed} />
      <div className="findings" role="status" aria-label={words.findings}>
        {check !== null && (
          <>
            <p>
              {check.drawnAreaSqFt === null
                ? words.noDrawnArea
                : words.drawnArea(wholeNumber(check.drawnAreaSqFt))}{' '}
              {check.problems.length === 0 && words.noFindings}
            </p>
            <ProblemList problems={check.problems} />
          </>
        )}
      </div>
      <p className="form-buttons">
        <button type="submit" className="primary" aria-disabled={isSaving}>
          {words.save}
        </button>
        <button type="button" onClick={onDrop}>
          {words.drop}
        </button>
      </p>
    </form>
  );
}
