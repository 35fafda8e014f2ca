import { useCallback, useEffect, useMemo, useState } from 'react';
import { addressQuery, readAddress, type Address } from './address.js';
import { loadDesk, type DeskContent } from './desk-content.js';

export interface DeskState {
  readonly address: Address;
  readonly content: DeskContent;
  /** Shows what a changed address names, and puts it into the browser's address line. */
  readonly goTo: (change: Partial<Address>) => void;
  /** Loads the same address anew, with a notice meanwhile. */
  readonly reload: () => void;
  /** Loads the same address anew, and leaves the page as it is until then. */
  readonly refresh: () => void;
}

/** What is on the desk: follows the address line, back and forward included. */
export function useDesk(): DeskState {
  const [address, setAddress] = useState(readAddress);
  const [content, setContent] = useState<DeskContent>({ kind: 'loading' });
  const [asked, setAsked] = useState(0);
  const { campusId, planId } = address;

  useEffect(() => {
    let isCurrent = true;
    void loadDesk({ campusId, planId }).then((loaded) => {
      if (isCurrent) setContent(loaded);
    });
    return () => {
      isCurrent = false;
    };
  }, [campusId, planId, asked]);

  const refresh = useCallback(() => setAsked((times) => times + 1), []);

  useEffect(() => {
    const follow = (): void => {
      setAddress(readAddress());
      refresh();
    };
    window.addEventListener('popstate', follow);
    return () => window.removeEventListener('popstate', follow);
  }, [refresh]);

  const shown = useMemo(() => shownPlan(content), [content]);
  const goTo = useCallback(
    (change: Partial<Address>) => {
      const now = readAddress();
      const next = { ...now, ...change };
      if (shown !== null) window.history.replaceState(null, '', addressQuery({ ...now, ...shown }));
      window.history.pushState(null, '', addressQuery(next));
      setAddress(next);
    },
    [shown],
  );

  const reload = useCallback(() => {
    setContent({ kind: 'loading' });
    refresh();
  }, [refresh]);

  return useMemo(
    () => ({ address, content, goTo, reload, refresh }),
    [address, content, goTo, reload, refresh],
  );
}

/** Names the plan shown, so that Back finds it even where it was only the newest one then. */
function shownPlan(content: DeskContent): Pick<Address, 'campusId' | 'planId'> | null {
  if (content.kind !== 'plan') return null;
  return { campusId: content.campus.id, planId: content.plan.id };
}
