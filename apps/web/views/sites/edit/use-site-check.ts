import { useEffect, useState } from 'react';
import { api, type SiteCheck } from '../../../api.js';
import type { AnySite } from '../site-rows.js';

const SETTLE_MS = 500;

/** What the api makes of a site as it is typed, half a second after the last key; null: not yet. */
export function useSiteCheck(campusId: string, site: AnySite): SiteCheck | null {
  const [check, setCheck] = useState<SiteCheck | null>(null);
  const text = JSON.stringify(site);
  useEffect(() => {
    let isCurrent = true;
    const timer = setTimeout(() => {
      api.checkSite(campusId, JSON.parse(text) as AnySite).then(
        (answer) => isCurrent && setCheck(answer),
        // A check that could not be made is no finding: saving will tell.
        () => undefined,
      );
    }, SETTLE_MS);
    return () => {
      isCurrent = false;
      clearTimeout(timer);
    };
  }, [campusId, text]);
  return check;
}
