/**
 * What a July to June program on an upper-Midwest academic calendar usually has to decide or hand in
 * by month, 1 for January. Common practice, no source.
 */
export const monthWork: Readonly<Record<number, readonly string[]>> = {
  1: [
    'Administration brief to the budget office',
    'Plan again with last year’s actuals',
    'Plant orders: nurseries want 8 to 16 weeks',
  ],
  2: [
    'Design review with the neighbors of the site',
    'Woody pruning, but not of oaks in the growing season',
    'Donor prospectus',
  ],
  3: [
    'Check the plan against the new construction list',
    'Look over the winter’s mulch',
    'Order irrigation parts',
  ],
  4: [
    'Work calendar for spring planting',
    'Spring work days',
    'Last purchase orders of the fiscal year',
  ],
  5: [
    'Tender planting after the last frost, as students leave',
    'Spend or encumber what lapses on June 30',
    'Dedications',
  ],
  6: ['Year-close checklist', 'Establishment watering and the first flush of weeds'],
  7: [
    'Close last year’s actuals',
    'Update the coefficients',
    'Peak of weeding, watering and harvest',
  ],
  8: [
    'Site walk of the candidates with grounds, utilities and EHS',
    'Soil samples: two to three weeks at the laboratory',
    'Purchase orders for compost and chips',
  ],
  9: [
    'The committee confirms the site',
    'Locate request before any core aeration',
    'Materials order and work-day plan',
  ],
  10: ['Sheet mulching work days', 'Sign-in sheets become actual hours', 'Delivery schedule'],
  11: [
    'Last mulching before the ground freezes',
    'Position and operating requests for next year',
    'Grounds staffing request',
  ],
  12: ['Harvest and hours report', 'Calendar-year-end gifts', 'Sites rest'],
};
