import type { SiteSurvey, SiteTree } from '#domain/survey.js';
import { known, UNKNOWN, type Known } from '#units/known.js';
import type { CampusFile } from '../campus-file.schema.js';
import { UNKNOWN_TEXT } from '../campus-file/values.js';

type SitePart = CampusFile['candidateSites'][number];
type TreePart = NonNullable<SitePart['trees']>[number];
type SurveyPart = NonNullable<SitePart['survey']>;

export function toTree({ name, position, trunkInches }: TreePart): SiteTree {
  return { name, position, trunkInches };
}

export function toSurvey(survey: SurveyPart): SiteSurvey {
  const route = survey.route ?? {};
  return {
    truckWidthFeet: fact(survey.truckWidthFeet),
    groundBearsTruck: fact(survey.groundBearsTruck),
    arboristAgreed: fact(survey.arboristAgreed),
    utilityLines: toLines(survey.utilityLines),
    marksInForce: fact(survey.marksInForce),
    digInches: fact(survey.digInches),
    route: {
      clearWidthInches: fact(route.clearWidthInches),
      passingEveryFeet: fact(route.passingEveryFeet),
      runningSlopePercent: fact(route.runningSlopePercent),
      crossSlopePercent: fact(route.crossSlopePercent),
      firmAndStable: fact(route.firmAndStable),
    },
  };
}

function toLines(lines: SurveyPart['utilityLines']): SiteSurvey['utilityLines'] {
  if (lines === undefined || lines === UNKNOWN_TEXT) return UNKNOWN;
  return known(
    lines.map(({ kind, owner, depthInches }) => ({ kind, owner, depthInches: fact(depthInches) })),
  );
}

/** What is left out is as unknown as what is said to be. */
function fact<T extends number | boolean>(given: T | typeof UNKNOWN_TEXT | undefined): Known<T> {
  return given === undefined || given === UNKNOWN_TEXT ? UNKNOWN : known(given);
}
