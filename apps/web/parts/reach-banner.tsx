import { useEffect, useSyncExternalStore, type ReactNode } from 'react';
import { api } from '../api.js';
import { reachability } from '../client/reach.js';
import { strings } from '../strings.data.js';

const ASK_AGAIN_MS = 4_000;

/** Says so while the server does not answer, and keeps asking. */
export function ReachBanner({ onBack }: { readonly onBack: () => void }): ReactNode {
  const isReached = useSyncExternalStore(reachability.subscribe, reachability.isReached);
  useEffect(() => {
    if (isReached) return undefined;
    const timer = setInterval(() => {
      api.health().then(onBack, () => undefined);
    }, ASK_AGAIN_MS);
    return () => clearInterval(timer);
  }, [isReached, onBack]);
  return (
    <div role="status" className="reach">
      {!isReached && <p>{strings.states.lostTouch}</p>}
    </div>
  );
}
