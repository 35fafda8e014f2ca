/** What whoever does the work reads beside it. */
export const WORK_CAUTIONS = {
  prepare:
    'Before any digging call the public one-call center and the campus locator, wait as state law says, and dig by hand near marks. Local codes and licensed practice decide. Volunteers: waivers, the rule on minors, enough leaders, a stop in heat or lightning.',
  plant:
    'Locate marks expire: have them renewed before digging. In root zones no grade change and nothing against a trunk. Local codes and licensed practice decide.',
  care: 'Pesticides, organic ones too, only by a licensed applicator as the label says; volunteers never. Water, rest and shade in heat; stop in lightning.',
  harvest:
    'Produce reaches a kitchen only with the approval of the kitchen and the health authority.',
  order:
    'Compost for food needs its heat log and a test for herbicide. Amounts are planning estimates: measure before ordering.',
  ask: 'A planning estimate, not a staffing entitlement; labor agreements and the budget office decide.',
} as const;

/** Weeks between an order and the season that needs it: common practice, no source. */
export const ORDER_WEEKS = 4;
