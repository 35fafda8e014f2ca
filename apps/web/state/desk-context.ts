import { createContext, useContext } from 'react';
import type { DeskContent } from './desk-content.js';
import type { DeskState } from './use-desk.js';

/** The desk, for whatever lies on it. */
export const DeskContext = createContext<DeskState | null>(null);

export function useDeskState(): DeskState {
  const desk = useContext(DeskContext);
  if (desk === null) throw new Error('the desk is missing around this part');
  return desk;
}

/** Contents with a campus, with or without a plan of it. */
export type CampusContent = Extract<DeskContent, { kind: 'plan' | 'no-plan-yet' }>;
export type PlanContent = Extract<DeskContent, { kind: 'plan' }>;
