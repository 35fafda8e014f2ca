import { useId, type ReactNode } from 'react';
import type { PlanOverview } from '#explain/overview/plan-overview.js';
import { CareFigure, careSpec } from '../../charts/care-figure.js';
import { careRows, seasonNames, shortIn } from '../../charts/care-rows.js';
import { Legend, stackKey, stripKey } from '../../charts/legend.js';
import { StripFigure } from '../../charts/strip-figure.js';
import { capitalized, counted, dollars } from '../../format/numbers.js';
import { remedyWithoutSite } from '../../format/remedy-without-site.js';
import { strings } from '../../strings.data.js';

const words = strings.meeting;

/** One page of the story: a sentence that can be read from the back of the room, and what bears it out. */
export interface Slide {
  readonly title: string;
  readonly body: ReactNode;
}

/** The story in the order in which a room asks: what now, how far, what gives, what else, what is open. */
export function slidesOf(overview: PlanOverview): readonly Slide[] {
  const { headline, solve, promises, unknowns, totals } = overview;
  const main = seasonNames(overview)[0];
  return [
    {
      title: headline.nextSite,
      body: <Reasons overview={overview} />,
    },
    {
      title: words.years(counted(totals.sitesBuilt, 'site', 'sites'), overview.lastYear),
      body: <Strip overview={overview} />,
    },
    {
      title: headline.firstLimit,
      body: main === undefined ? null : <Care overview={overview} season={main} />,
    },
    {
      title: headline.promise,
      body: (
        <Lines
          lines={promises.map(({ name, status, sentence }) => [
            name,
            `${capitalized(status)}. ${sentence}`,
          ])}
        />
      ),
    },
    { title: words.otherwise, body: <Otherwise overview={overview} /> },
    {
      title: words.unknown(unknowns.length),
      body: (
        <Lines
          lines={unknowns
            .slice(0, 6)
            .map(({ site, what, clearedBy }) => [
              site,
              `${what} ${strings.next.clearedBy(clearedBy)}`,
            ])}
        />
      ),
    },
    {
      title: words.certain,
      body: (
        <Lines
          lines={[
            ['', solve.sentence],
            ['', strings.advice],
          ]}
        />
      ),
    },
  ];
}

function Reasons({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const [site] = overview.next.sites;
  if (site === undefined) return <p>{remedyWithoutSite(overview)}</p>;
  return (
    <>
      <Lines lines={site.reasons.slice(0, 4).map(({ sentence }) => ['', sentence])} />
      <p>
        {words.cost(strings.next.costRange(dollars(site.cost.low), dollars(site.cost.high)))}{' '}
        {strings.next.costClass}
      </p>
    </>
  );
}

interface CareProps {
  readonly overview: PlanOverview;
  readonly season: string;
}

function Care({ overview, season }: CareProps): ReactNode {
  const id = useId();
  const rows = careRows(overview, season);
  const name = capitalized(season);
  return (
    <figure>
      <h3>{strings.care.title(name)}</h3>
      <CareFigure name={name} rows={rows} shortIn={shortIn(overview, season)?.label ?? null} />
      <figcaption>
        <Legend id={id} items={stackKey(careSpec, id)} />
      </figcaption>
    </figure>
  );
}

function Strip({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const id = useId();
  return (
    <figure>
      <StripFigure overview={overview} />
      <figcaption>
        <Legend id={id} items={stripKey(id)} />
      </figcaption>
    </figure>
  );
}

function Otherwise({ overview }: { readonly overview: PlanOverview }): ReactNode {
  return (
    <Lines
      lines={overview.alternatives.map(({ title, summary, givenUp }) => [
        title,
        givenUp.length === 0 ? summary : `${summary} ${words.givesUp(givenUp.join('; '))}`,
      ])}
    />
  );
}

/** A few lines, each with what it is about in front. */
function Lines({ lines }: { readonly lines: readonly (readonly [string, string])[] }): ReactNode {
  return (
    <ul className="slide-lines">
      {lines.map(([about, line]) => (
        <li key={`${about} ${line}`}>
          {about !== '' && <strong>{about}: </strong>}
          {line}
        </li>
      ))}
    </ul>
  );
}
