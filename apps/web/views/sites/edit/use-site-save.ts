import { useCallback, useState } from 'react';
import { api, type CampusSummary, type Problem } from '../../../api.js';
import { useDeskState } from '../../../state/desk-context.js';
import { useKept } from '../../../state/use-kept.js';
import { failureOf, type Failure } from '../../../state/use-loaded.js';
import type { AnySite } from '../site-rows.js';

/** How a save stands. */
export type SaveState =
  | { readonly kind: 'idle' | 'saving' | 'undone' }
  | { readonly kind: 'saved'; readonly warnings: readonly Problem[] }
  | {
      readonly kind: 'conflict';
      readonly version: number;
      readonly theirs: AnySite;
      readonly base: AnySite;
    }
  | { readonly kind: 'failed'; readonly failure: Failure };

export interface SiteSave {
  readonly state: SaveState;
  readonly canUndo: boolean;
  /** Resolves to true once the site is saved. */
  readonly save: (site: AnySite, basedOn: number) => Promise<boolean>;
  readonly undo: () => void;
}

interface Undo {
  readonly before: AnySite | null;
  readonly version: number;
}

/** Saves a site, tells of another's change of it, and undoes the last save. */
export function useSiteSave(campus: CampusSummary, siteId: string): SiteSave {
  const { refresh } = useDeskState();
  const [state, setState] = useState<SaveState>({ kind: 'idle' });
  const [undoable, setUndoable] = useKept<Undo>(`undo of ${campus.id} ${siteId}`);

  const put = useCallback(
    async (site: AnySite | null, basedOn: number) => {
      setState({ kind: 'saving' });
      const body = { basedOn, site: site as unknown as Record<string, unknown> | null };
      const saved = await api.saveSite({ id: campus.id, site: siteId }, body);
      refresh();
      return saved;
    },
    [campus.id, siteId, refresh],
  );

  const save = useCallback(
    async (site: AnySite, basedOn: number) => {
      try {
        const saved = await put(site, basedOn);
        setUndoable({ before: saved.before as AnySite | null, version: saved.campus.version });
        setState({ kind: 'saved', warnings: ofSite(saved.warnings, siteId) });
        return true;
      } catch (error) {
        setState(stateOf(failureOf(error)));
        return false;
      }
    },
    [put, setUndoable, siteId],
  );

  const undo = useCallback(() => {
    if (undoable === null) return;
    put(undoable.before, undoable.version).then(
      () => {
        setUndoable(null);
        setState({ kind: 'undone' });
      },
      (error: unknown) => setState(stateOf(failureOf(error))),
    );
  }, [put, undoable, setUndoable]);

  return { state, canUndo: undoable !== null, save, undo };
}

function stateOf(failure: Failure): SaveState {
  if (failure === 'offline' || failure.conflict === null) return { kind: 'failed', failure };
  const { version, base, current } = failure.conflict;
  // A site that somebody took out cannot be merged with; the refusal says what happened.
  if (current === null || base === null) return { kind: 'failed', failure };
  return { kind: 'conflict', version, theirs: current as AnySite, base: base as AnySite };
}

function ofSite(problems: readonly Problem[], siteId: string): readonly Problem[] {
  return problems.filter(({ record }) => record === `site ${siteId}`);
}
