import { useState, type ReactNode } from 'react';
import { strings } from '../../../strings.data.js';
import type { AnySite } from '../site-rows.js';
import { DrawBoundary } from './draw-boundary.js';
import type { FieldGroupProps } from './field-group.js';

const words = strings.edit;

interface BoundaryFieldProps extends FieldGroupProps {
  readonly site: AnySite;
}

/** The boundary, pasted as GeoJSON or drawn corner by corner. */
export function BoundaryField({ file, fields, set, site }: BoundaryFieldProps): ReactNode {
  const [isDrawing, setDrawing] = useState(false);
  return (
    <fieldset className="group">
      <legend>{words.boundary}</legend>
      <label className="field stacked">
        {words.paste}
        <textarea
          rows={4}
          spellCheck={false}
          value={fields['boundary'] ?? ''}
          onChange={(event) => set('boundary', event.target.value)}
        />
      </label>
      {isDrawing ? (
        <DrawBoundary
          file={file}
          site={site}
          onDone={(boundary) => {
            if (boundary !== null) set('boundary', JSON.stringify(boundary));
            setDrawing(false);
          }}
        />
      ) : (
        <button type="button" onClick={() => setDrawing(true)}>
          {words.draw}
        </button>
      )}
    </fieldset>
  );
}
