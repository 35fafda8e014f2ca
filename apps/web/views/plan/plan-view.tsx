import { useCallback, type ReactNode } from 'react';
import { api } from '../../api.js';
import { Contents } from '../../parts/contents.js';
import { Section } from '../../parts/section.js';
import { Compost } from '../../sections/compost.js';
import { Headline } from '../../sections/headline.js';
import { Hires } from '../../sections/hires.js';
import { Limits } from '../../sections/limits.js';
import { Money } from '../../sections/money.js';
import { PlanByYear } from '../../sections/plan-by-year.js';
import { Promises } from '../../sections/promises.js';
import { SeasonCare } from '../../sections/season-care.js';
import { SolvePanel } from '../../sections/solve-panel.js';
import { YearStrip } from '../../sections/year-strip.js';
import type { PlanContent } from '../../state/desk-context.js';
import { useLoaded } from '../../state/use-loaded.js';
import { useKept } from '../../state/use-kept.js';
import { useShowPlan } from '../../state/use-show-plan.js';
import { useSolve } from '../../state/use-solve.js';
import { strings } from '../../strings.data.js';
import { TryChange } from './try-change.js';
import { useTrial } from './use-trial.js';
import { placementsWith, type Wish } from './wish.js';
import { yearsOf } from './years.js';

const sections = [
  ...([
    'strip',
    'change',
    'care',
    'plan',
    'hires',
    'promises',
    'limits',
    'money',
    'compost',
  ] as const),
  'solve',
] as const;

const emptyWish: Wish = { site: '', kind: 'fixed', year: '', reason: '' };

/** One plan in full, in the order in which the job asks its questions. */
export default function PlanView({ content }: { readonly content: PlanContent }): ReactNode {
  const { overview, plan, campus, lastSolve } = content;
  const control = useSolve(campus.id, lastSolve?.planId ? null : lastSolve);
  const showPlan = useShowPlan();
  const load = useCallback(() => api.campus(campus.id), [campus]);
  const [loaded] = useLoaded(load);
  const trial = useTrial(content);
  const [kept, keep] = useKept<Wish>(`change of ${campus.id}`);
  const wish = kept ?? emptyWish;
  const moveSite = useCallback(
    (site: string) => {
      keep({ ...emptyWish, site });
      document.getElementById('change')?.scrollIntoView();
      document.getElementById('change-site')?.focus();
    },
    [keep],
  );
  const isBusy = trial.trial.kind === 'saving' || trial.trial.kind === 'solving';
  const drop = (site: string, place: number): void => {
    if (loaded.kind !== 'loaded') return;
    const { file } = loaded.value;
    const year = yearsOf(file)[place] ?? '';
    const dropped: Wish = { site, kind: 'fixed', year, reason: strings.change.draggedReason };
    keep(dropped);
    trial.start(site, placementsWith(dropped, file));
    document.getElementById('change')?.scrollIntoView({ block: 'nearest' });
  };
  return (
    <>
      <Headline overview={overview} planId={plan.id} />
      <Contents ids={sections} />
      <YearStrip overview={overview} onMove={isBusy || loaded.kind !== 'loaded' ? null : drop} />
      <TryChange
        loaded={loaded}
        control={trial}
        wish={wish}
        onWish={keep}
        onKept={() => keep(null)}
      />
      <SeasonCare overview={overview} />
      <PlanByYear overview={overview} onMove={moveSite} />
      <Hires overview={overview} />
      <Promises overview={overview} />
      <Limits overview={overview} />
      <Money overview={overview} />
      <Compost overview={overview} />
      <Section id="solve" heading={strings.sections.solve}>
        <SolvePanel
          control={control}
          lead={strings.solve.lead}
          shownPlanId={plan.id}
          onShow={showPlan}
        />
      </Section>
    </>
  );
}
