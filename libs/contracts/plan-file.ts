/** The plan file: its schema, and the ways into and out of it. */
export { PLAN_FILE_FORMAT, planFileSchema, type PlanFile } from './plan-file.schema.js';
export { fromPlan, type PlanOrigin } from './plan-file/from-plan.js';
export { toPlan, type PlanReading } from './plan-file/to-plan.js';
export { parsePlanFile, planOriginProblems, type PlanParse } from './plan-file/parse.js';
export { writePlanFile } from './plan-file/write.js';
