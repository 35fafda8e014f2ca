import type { ReactNode } from 'react';
import type { Alternative, PlanOverview } from '#explain/overview/plan-overview.js';
import { dollars, wholeNumber } from '../format/numbers.js';
import { DataTable, type Column } from '../parts/data-table.js';
import { Section } from '../parts/section.js';
import { strings } from '../strings.data.js';

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

/** What else could be decided, with the same space for doing less. */
export function Alternatives({ overview }: { readonly overview: PlanOverview }): ReactNode {
  const rows = overview.alternatives.map((course) => ({
    key: course.kind,
    cells: [
      <CourseName key="name" course={course} />,
      wholeNumber(course.sitesBuilt),
      wholeNumber(course.areaBuiltSqFt),
      dollars(course.capitalDollars),
      dollars(course.positionDollars),
      `${wholeNumber(course.busySeasonHours)} in ${course.busySeason}`,
      course.givenUp.length === 0 ? words.nothing : course.givenUp.join('; '),
    ],
  }));
  return (
    <Section id="alternatives" heading={strings.sections.alternatives}>
      {rows.length === 0 ? (
        <p>{words.none}</p>
      ) : (
        <>
          <DataTable caption={words.caption} columns={columns} rows={rows} />
          <p className="quiet">{words.basis}</p>
        </>
      )}
    </Section>
  );
}

function CourseName({ course }: { readonly course: Alternative }): ReactNode {
  return (
    <>
      {course.title} <small>{course.summary}</small>
    </>
  );
}
