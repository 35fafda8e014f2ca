import { aWarning, type Problem } from '#domain/problem.js';
import { bedShare } from '#domain/build-type.js';
import { COMPONENTS } from '#domain/component.js';
import type { FileView } from './file-view.js';

/** More bed than this is more than most campuses care for: common practice. */
const HIGH_BED_SHARE = 0.6;

type BuildTypePart = FileView['buildTypes'][number];

/** Build types and care coefficients that hold together as numbers and yet deserve a look. */
export function buildTypeProblems(view: FileView): Problem[] {
  return [
    ...view.buildTypes.flatMap((type) => [...bedProblems(type), ...edibleProblems(type)]),
    ...youngProblems(view),
  ];
}

function bedProblems({ id, componentShares }: BuildTypePart): Problem[] {
  const share = bedShare(componentShares);
  if (share <= HIGH_BED_SHARE + 1e-9) return [];
  const place = {
    code: 'BUILD-BED-SHARE-HIGH',
    record: `build type ${id}`,
    field: 'componentShares',
  };
  return [
    aWarning({ ...place, value: Number(share.toFixed(4)) }, [
      `${Math.round(share * 100)} % of the site is planted bed, where 25 to 40 % is usual.`,
      'Check that its care was meant: beds are what takes the hours.',
    ]),
  ];
}

/** Contamination gates bar edible types only, so the mark must be right. */
function edibleProblems({ id, edible, componentShares }: BuildTypePart): Problem[] {
  const place = { code: 'BUILD-EDIBLE-UNCLEAR', record: `build type ${id}`, field: 'edible' };
  const food = componentShares['annual-bed'];
  if (edible && food === 0 && componentShares.woody === 0) {
    return [
      aWarning({ ...place, value: edible }, [
        'It is marked edible and has neither annual beds nor woody plants.',
        'Set edible to false, or give it the beds that feed people.',
      ]),
    ];
  }
  if (edible || food === 0) return [];
  return [
    aWarning({ ...place, value: edible }, [
      'It has annual beds and is not marked edible, so no contamination gate bars it.',
      'Set edible to true, unless all food grows in imported soil above a barrier.',
    ]),
  ];
}

function youngProblems({ care }: FileView): Problem[] {
  return COMPONENTS.flatMap((component) => {
    const row = care?.[component];
    if (!row || row.firstYearHoursPer1000SqFt >= row.matureHoursPer1000SqFt) return [];
    const place = {
      code: 'CARE-YOUNG-BELOW-MATURE',
      record: `care ${component}`,
      field: 'firstYearHoursPer1000SqFt',
      value: row.firstYearHoursPer1000SqFt,
    };
    return [
      aWarning(place, [
        `A new planting takes fewer hours than an old one (${row.matureHoursPer1000SqFt} h).`,
        'Young plantings take more care: check whether the two were exchanged.',
      ]),
    ];
  });
}
