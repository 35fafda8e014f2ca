import { useCallback, useEffect, useMemo, useRef, type ReactNode, type RefObject } from 'react';
import { api } from '../../api.js';
import { FailureNote } from '../../parts/failure-note.js';
import { ViewLink } from '../../parts/view-link.js';
import { useDeskState, type CampusContent } from '../../state/desk-context.js';
import { useLoaded } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';
import { CampusMap } from './map/campus-map.js';
import { SiteRecord } from './record/site-record.js';
import { SiteList } from './site-list.js';
import { siteRows } from './site-rows.js';
import './sites.css';

const words = strings.sites;

/** The map of the campus beside the list of its sites, and the record of the one that is opened. */
export default function SitesView({ content }: { readonly content: CampusContent }): ReactNode {
  const { campus } = content;
  const load = useCallback(() => api.campus(campus.id), [campus]);
  const [loaded] = useLoaded(load);
  return (
    <>
      <h1 className="view-heading">{words.heading}</h1>
      {loaded.kind === 'loading' && <p className="quiet">{strings.states.loadingView}</p>}
      {loaded.kind === 'failed' && <FailureNote failure={loaded.failure} />}
      {loaded.kind === 'loaded' && <Sites content={content} loaded={loaded.value} />}
    </>
  );
}

interface SitesProps {
  readonly content: CampusContent;
  readonly loaded: Awaited<ReturnType<typeof api.campus>>;
}

function Sites({ content, loaded }: SitesProps): ReactNode {
  const { file } = loaded;
  const { address, goTo } = useDeskState();
  const overview = content.kind === 'plan' ? content.overview : null;
  const rows = useMemo(() => siteRows(file, overview), [file, overview]);
  const select = useCallback((siteId: string) => goTo({ siteId }), [goTo]);
  const chosen = rows.find(({ id }) => id === address.siteId);
  const record = useRef<HTMLDivElement>(null);
  useOpened(record, chosen?.id ?? null);
  if (rows.length === 0) {
    return (
      <p>
        {words.none} <ViewLink to={{ view: 'set-up' }}>{words.toSetUp}</ViewLink>
      </p>
    );
  }
  return (
    <>
      <div className="sites">
        <CampusMap file={file} rows={rows} selected={chosen?.id ?? null} onSelect={select} />
        <SiteList rows={rows} selected={chosen?.id ?? null} onSelect={select} />
      </div>
      <div ref={record} tabIndex={-1}>
        {chosen !== undefined && (
          <SiteRecord key={chosen.id} row={chosen} content={content} loaded={loaded} />
        )}
        {chosen === undefined && address.siteId !== null && (
          <p className="section">{words.unknownSite(address.siteId)}</p>
        )}
      </div>
      {chosen === undefined && address.siteId === null && <p className="quiet">{words.choose}</p>}
    </>
  );
}

/** The record of a site that a reader has just opened comes into sight, and takes the focus. */
function useOpened(record: RefObject<HTMLElement | null>, siteId: string | null): void {
  const before = useRef(siteId);
  useEffect(() => {
    if (siteId === null || before.current === siteId) return;
    before.current = siteId;
    record.current?.focus({ preventScroll: true });
    record.current?.scrollIntoView({ block: 'start' });
  }, [record, siteId]);
}
