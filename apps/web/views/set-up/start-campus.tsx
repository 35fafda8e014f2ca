import { useState, type ReactNode } from 'react';
import { api, type Problem } from '../../api.js';
import { FailureNote } from '../../parts/failure-note.js';
import { ProblemList } from '../../parts/problem-list.js';
import { Section } from '../../parts/section.js';
import { ViewLink } from '../../parts/view-link.js';
import { useDeskState } from '../../state/desk-context.js';
import type { DeskContent } from '../../state/desk-content.js';
import { failureOf, type Failure } from '../../state/use-loaded.js';
import { strings } from '../../strings.data.js';

const words = strings.setUp;

/** The invented campus that comes with the program; it is fetched when it is asked for. */
const sampleUrl = new URL('../../../../seeds/demo-strained.json', import.meta.url);

type State =
  | { readonly kind: 'idle' | 'adding' }
  | {
      readonly kind: 'added';
      readonly id: string;
      readonly name: string;
      readonly warnings: readonly Problem[];
    }
  | { readonly kind: 'not-json' }
  | { readonly kind: 'failed'; readonly failure: Failure };

/** The sample campus, or a campus file of one's own. */
export function StartCampus({ content }: { readonly content: DeskContent }): ReactNode {
  const { goTo } = useDeskState();
  const [state, setState] = useState<State>({ kind: 'idle' });
  const add = async (text: Promise<string>): Promise<void> => {
    setState({ kind: 'adding' });
    try {
      const { campus, warnings } = await api.addCampus(parsed(await text));
      setState({ kind: 'added', id: campus.id, name: campus.name, warnings });
      goTo({ campusId: campus.id, planId: null });
    } catch (error) {
      setState(
        error instanceof SyntaxError
          ? { kind: 'not-json' }
          : { kind: 'failed', failure: failureOf(error) },
      );
    }
  };
  return (
    <Section id="start" heading={words.start}>
      {'campus' in content && <p>{words.onDesk(content.campus.name)}</p>}
      <div className="ways">
        <div>
          <h3>{words.sample}</h3>
          <p>{words.sampleLead}</p>
          <button type="button" onClick={() => void add(sampleText())}>
            {words.loadSample}
          </button>
        </div>
        <div>
          <h3>{words.ownFile}</h3>
          <p>{words.ownFileLead}</p>
          <label className="field stacked">
            {words.chooseFile}
            <input
              type="file"
              accept=".json,application/json"
              onChange={(event) => {
                const file = event.target.files?.[0];
                if (file !== undefined) void add(file.text());
              }}
            />
          </label>
        </div>
      </div>
      <Outcome state={state} />
    </Section>
  );
}

function Outcome({ state }: { readonly state: State }): ReactNode {
  return (
    <>
      <div role="status">
        {state.kind === 'adding' && <p>{words.adding}</p>}
        {state.kind === 'added' && <p>{words.added(state.name)}</p>}
        {state.kind === 'not-json' && <p>{words.notJson}</p>}
        {state.kind === 'failed' && <FailureNote failure={state.failure} />}
      </div>
      {state.kind === 'added' && (
        <>
          <ProblemList problems={state.warnings} />
          <p>
            <ViewLink to={{ view: 'plan' }}>{words.toFirstPlan}</ViewLink>
          </p>
        </>
      )}
    </>
  );
}

async function sampleText(): Promise<string> {
  return (await fetch(sampleUrl)).text();
}

function parsed(text: string): unknown {
  return JSON.parse(text) as unknown;
}
