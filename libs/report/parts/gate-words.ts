import type { Gate, GateKind } from '#domain/site.js';

/** Names of gates as a reader is told them. */
export const GATE_WORDS: Readonly<Record<GateKind, string>> = {
  contamination: 'Soil contamination',
  utilities: 'Utilities',
  construction: 'Construction',
  'root-protection': 'Tree roots',
  slope: 'Slope',
  access: 'Truck access',
  heritage: 'Heritage',
  'flood-or-wetland': 'Flood or wetland',
  'fire-lane': 'Fire lane',
  structure: 'Structure below',
  accessibility: 'Accessible route',
};

/** A status of a gate in words that need no color. */
export const STATUS_WORDS: Readonly<Record<Gate['status'], string>> = {
  pass: 'Passed',
  fail: 'Failed',
  unknown: 'Not known',
};
