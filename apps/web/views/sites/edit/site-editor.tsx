import { useMemo, useRef, type ReactNode } from 'react';
import type { api, CampusSummary } from '../../../api.js';
import { FailureNote } from '../../../parts/failure-note.js';
import { useKeptFocus } from '../../../parts/kept-focus.js';
import { ProblemList } from '../../../parts/problem-list.js';
import { useKept } from '../../../state/use-kept.js';
import { strings } from '../../../strings.data.js';
import type { SiteRow } from '../site-rows.js';
import { MergeVersions } from './merge-versions.js';
import { fieldsOf, siteWith, type Fields } from './site-fields.js';
import { SiteForm } from './site-form.js';
import { useSiteSave, type SiteSave } from './use-site-save.js';

const words = strings.edit;

interface SiteEditorProps {
  readonly row: SiteRow;
  readonly campus: CampusSummary;
  readonly loaded: Awaited<ReturnType<typeof api.campus>>;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onClose: () => void;
}

/** What was typed, and the version of the campus on which it was begun. */
interface Draft {
  readonly basedOn: number;
  readonly fields: Fields;
}

/** Change a site: typed text is kept until saved, two editors are merged by a person, a save is undone. */
export function SiteEditor(props: SiteEditorProps): ReactNode {
  const { row, campus, loaded, isOpen, onOpen, onClose } = props;
  const [kept, keep] = useKept<Draft>(`draft of ${campus.id} ${row.id}`);
  const control = useSiteSave(campus, row.id);
  const place = useRef<HTMLDivElement>(null);
  useKeptFocus(place, `${isOpen} ${control.state.kind}`);
  const draft = useMemo(
    () => kept ?? { basedOn: loaded.version, fields: fieldsOf(row.site) },
    [kept, loaded.version, row.site],
  );
  const saveSite = async (site: SiteRow['site'], basedOn: number): Promise<void> => {
    if (!(await control.save(site, basedOn))) return;
    keep(null);
    onClose();
  };
  return (
    <div className="editor" ref={place} tabIndex={-1}>
      <SaveNote control={control} />
      {!isOpen && (
        <p>
          <button type="button" onClick={onOpen}>
            {kept === null ? words.open : words.goOn}
          </button>
        </p>
      )}
      {isOpen && control.state.kind === 'conflict' && (
        <MergeVersions
          base={control.state.base}
          theirs={control.state.theirs}
          mine={draft.fields}
          version={control.state.version}
          onSave={(site, version) => void saveSite(site, version)}
        />
      )}
      {isOpen && control.state.kind !== 'conflict' && (
        <SiteForm
          campusId={campus.id}
          file={loaded.file}
          site={row.site}
          fields={draft.fields}
          isSaving={control.state.kind === 'saving'}
          onFields={(fields) => keep({ ...draft, fields })}
          onSave={() => void saveSite(siteWith(row.site, draft.fields), draft.basedOn)}
          onDrop={() => {
            keep(null);
            onClose();
          }}
        />
      )}
    </div>
  );
}

/** How the last save went, and the way back. */
function SaveNote({
  control: { state, canUndo, undo },
}: {
  readonly control: SiteSave;
}): ReactNode {
  const isBusy = state.kind === 'saving';
  return (
    <>
      <div role="status">
        {state.kind === 'saving' && <p>{words.saving}</p>}
        {state.kind === 'saved' && <p>{words.saved}</p>}
        {state.kind === 'undone' && <p>{words.undone}</p>}
        {state.kind === 'failed' && <p>{words.notSaved}</p>}
      </div>
      {state.kind === 'saved' && <ProblemList problems={state.warnings} />}
      {state.kind === 'failed' && <FailureNote failure={state.failure} />}
      {canUndo && !isBusy && (
        <p>
          <button type="button" onClick={undo}>
            {words.undo}
          </button>
        </p>
      )}
    </>
  );
}
