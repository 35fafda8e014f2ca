import { useCallback } from 'react';
import { useDeskState } from './desk-context.js';

/** Puts a plan of the campus on the desk, in whatever view is open. */
export function useShowPlan(): (planId: string) => void {
  const { content, goTo } = useDeskState();
  const campusId = 'campus' in content ? content.campus.id : null;
  return useCallback((planId: string) => goTo({ campusId, planId }), [goTo, campusId]);
}
