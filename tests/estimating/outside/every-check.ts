import { compostChecks } from './compost.checks.js';
import { costChecks } from './cost.checks.js';
import { gateChecks } from './gate.checks.js';
import { geometryChecks } from './geometry.checks.js';
import { careChecks, installChecks, supplyChecks } from './labor.checks.js';
import type { OutsideCheck } from './outside-check.js';
import { suitabilityChecks } from './suitability.checks.js';
import { takeoffChecks } from './takeoff.checks.js';
import { waterChecks } from './water.checks.js';
import { yieldChecks } from './yield.checks.js';

/** Every value that was not made here, by formula. */
export const EVERY_CHECK: readonly OutsideCheck[] = [
  ...geometryChecks,
  ...takeoffChecks,
  ...installChecks,
  ...careChecks,
  ...supplyChecks,
  ...costChecks,
  ...compostChecks,
  ...waterChecks,
  ...yieldChecks,
  ...gateChecks,
  ...suitabilityChecks,
];
