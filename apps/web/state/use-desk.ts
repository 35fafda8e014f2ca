import { useCallback, useEffect, useMemo, useState } from 'react';
import { addressQuery, readAddress, type Address } from './address.js';
import { loadDesk, type DeskContent } from './desk-content.js';

export interface DeskState {
  readonly content: DeskContent;
  /** Shows what another address names, and puts it into the browser's address line. */
  readonly goTo: (address: Address) => void;
  /** Loads the same address anew. */
  readonly reload: () => void;
}

/** What is on the desk: follows the address line, back and forward included. */
export function useDesk(): DeskState {
  const [request, setRequest] = useState(() => ({ address: readAddress() }));
  const [content, setContent] = useState<DeskContent>({ kind: 'loading' });

  useEffect(() => {
    let isCurrent = true;
    void loadDesk(request.address).then((loaded) => {
      if (isCurrent) setContent(loaded);
    });
    return () => {
      isCurrent = false;
    };
  }, [request]);

  useEffect(() => {
    const follow = (): void => setRequest({ address: readAddress() });
    window.addEventListener('popstate', follow);
    return () => window.removeEventListener('popstate', follow);
  }, []);

  const shown = useMemo(() => shownAddress(content), [content]);
  const goTo = useCallback(
    (address: Address) => {
      if (shown !== null) window.history.replaceState(null, '', addressQuery(shown));
      window.history.pushState(null, '', addressQuery(address));
      setRequest({ address });
    },
    [shown],
  );

  const reload = useCallback(() => {
    setContent({ kind: 'loading' });
    setRequest({ address: readAddress() });
  }, []);

  return { content, goTo, reload };
}

/** Names the plan shown, so that Back finds it even where it was only the newest one then. */
function shownAddress(content: DeskContent): Address | null {
  if (content.kind !== 'plan') return null;
  return { campusId: content.campus.id, planId: content.plan.id };
}
