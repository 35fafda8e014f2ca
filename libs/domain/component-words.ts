import type { Component } from './component.js';

/** Names of components as a reader is told them. */
export const COMPONENT_WORDS: Readonly<Record<Component, string>> = {
  'annual-bed': 'Annual beds',
  'perennial-bed': 'Perennial beds',
  woody: 'Shrubs, berries and trees',
  'rain-garden': 'Rain garden',
  meadow: 'Meadow',
  path: 'Paths and gathering',
};
