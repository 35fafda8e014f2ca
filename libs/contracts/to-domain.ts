import type { Campus } from '#domain/campus.js';
import type { CampusFile } from './campus-file.schema.js';
import { toBuildType, toCare } from './conversion/build-types.js';
import { toCalendar } from './conversion/calendar.js';
import { toFunds } from './conversion/funds.js';
import { toLaterChange, toPublished } from './conversion/lives.js';
import { toPool, toPosition, toWorkDay } from './conversion/labor.js';
import { toCommitment, toConstruction, toHandPlacement } from './conversion/rules.js';
import { toCandidate, toExisting, toZone } from './conversion/sites.js';
import { toBenefit, toCompost, toEscalation, toStandingCost } from './conversion/supply.js';
import { optional, toShare } from './conversion/values.js';
import { toWeather } from './conversion/weather.js';

/**
 * The campus of a file that has passed the schema and its checks: dollars become cents, hours and
 * cubic yards hundredths, percent shares, series of inflows single ones. Site areas are as stated.
 */
export function toDomain(file: CampusFile): Campus {
  const calendar = toCalendar(file.calendar);
  return {
    id: file.id,
    name: file.name,
    program: file.program,
    dataDate: file.dataDate,
    calendar,
    zones: file.zones.map(toZone),
    candidates: file.candidateSites.map(toCandidate),
    existing: file.existingSites.map(toExisting),
    buildTypes: file.buildTypes.map(toBuildType),
    care: toCare(file.care),
    pools: file.pools.map(toPool),
    workDays: file.workDays.map(toWorkDay),
    positions: file.positions.map(toPosition),
    funds: file.funds.flatMap((fund) => toFunds(fund, calendar)),
    standingCosts: file.standingCosts.map(toStandingCost),
    escalation: toEscalation(file.escalationPercent),
    compost: toCompost(file.compost),
    materialWaste: toShare(file.materialWastePercent),
    construction: file.construction.map(toConstruction),
    hardAtCertaintyPercent: file.hardAtCertaintyPercent,
    paybackYears: file.paybackYears,
    precedence: file.precedence,
    exclusiveGroups: file.exclusiveGroups,
    commitments: file.commitments.map(toCommitment),
    benefit: toBenefit(file.benefit),
    handPlacements: file.handPlacements.map(toHandPlacement),
    ...optional('laterChanges', file.laterChanges?.map(toLaterChange)),
    ...optional('published', file.published && toPublished(file.published)),
    ...optional('weather', file.weather && toWeather(file.weather)),
    ...optional('suitabilityWeights', file.suitabilityWeightsPercent),
    ...optional('overrides', file.overrides),
  };
}
