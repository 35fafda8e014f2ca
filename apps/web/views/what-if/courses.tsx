import type { ReactNode } from 'react';
import type { Alternative, PlanOverview } from '#explain/overview/plan-overview.js';
import { dollars, signed, wholeNumber } from '../../format/numbers.js';
import { DataTable, type Column } from '../../parts/data-table.js';
import { Section } from '../../parts/section.js';
import { strings } from '../../strings.data.js';

const words = strings.alternatives;

const columns: readonly Column[] = [
  { head: words.course, kind: 'name' },
  { head: words.sites, kind: 'number' },
  { head: words.area, kind: 'number' },
  { head: words.capital, kind: 'number' },
  { head: words.positions, kind: 'number' },
  { head: words.hours, kind: 'number' },
  { head: words.givenUp, kind: 'words' },
];

/** The named courses, each as its differences from the plan on the desk. */
export function Courses({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const [plan, ...others] = overview.alternatives;
  return (
    <Section id="alternatives" heading={strings.sections.alternatives}>
      {plan === undefined ? (
        <p>{words.none}</p>
      ) : (
        <>
          <DataTable
            caption={words.differenceCaption}
            columns={columns}
            rows={[
              { key: plan.kind, cells: whole(plan) },
              ...others.map((course) => ({ key: course.kind, cells: difference(course, plan) })),
            ]}
          />
          <p className="quiet">{words.basis}</p>
        </>
      )}
    </Section>
  );
}

function whole(plan: Alternative): readonly ReactNode[] {
  return [
    <CourseName key="name" course={plan} />,
    wholeNumber(plan.sitesBuilt),
    wholeNumber(plan.areaBuiltSqFt),
    dollars(plan.capitalDollars),
    dollars(plan.positionDollars),
    words.hoursIn(wholeNumber(plan.busySeasonHours), plan.busySeason),
    plan.givenUp.length === 0 ? words.nothing : plan.givenUp.join('; '),
  ];
}

function difference(course: Alternative, plan: Alternative): readonly ReactNode[] {
  const by = (value: (row: Alternative) => number): number => value(course) - value(plan);
  return [
    <CourseName key="name" course={course} />,
    signed(
      by((row) => row.sitesBuilt),
      wholeNumber,
    ),
    signed(
      by((row) => row.areaBuiltSqFt),
      wholeNumber,
    ),
    signed(
      by((row) => row.capitalDollars),
      dollars,
    ),
    signed(
      by((row) => row.positionDollars),
      dollars,
    ),
    signed(
      by((row) => row.busySeasonHours),
      wholeNumber,
    ),
    onlyHere(course, plan),
  ];
}

/** What it gives up that the plan does not. */
function onlyHere(course: Alternative, plan: Alternative): string {
  const lost = course.givenUp.filter((one) => !plan.givenUp.includes(one));
  return lost.length === 0 ? words.nothingMore : lost.join('; ');
}

function CourseName({ course }: { readonly course: Alternative }): ReactNode {
  return (
    <>
      {course.title} <small>{course.summary}</small>
    </>
  );
}
