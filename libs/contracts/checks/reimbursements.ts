import { anError, aWarning, type Problem } from '#domain/problem.js';
import { toReimbursement } from '../conversion/funds.js';
import type { FileView, FundPart } from './file-view.js';

/** Grants that pay back what another fund has spent: what they may say, and what fronts them. */
export function reimbursementProblems(view: FileView): Problem[] {
  return view.funds.flatMap((grant) => {
    if (!grant.reimbursement) return [];
    const front = view.funds.find(({ id }) => id === grant.reimbursement?.frontedBy);
    return [...termProblems(grant), ...(front ? frontProblems(view, grant, front) : [])];
  });
}

/** A payback is neither charged nor shared nor kept: it goes whole to the fund that fronted it. */
function termProblems(grant: FundPart): Problem[] {
  const record = `fund ${grant.id}`;
  const whole = (['feePercent', 'careSharePercent', 'floorDollars'] as const)
    .filter((field) => grant[field] > 0)
    .map((field) =>
      anError({ code: 'GRANT-NOT-PAID-WHOLE', record, field, value: grant[field] }, [
        'What a reimbursable grant pays back goes whole to the fund that fronted it.',
        'Set it to 0, and give as inflows what the grant pays back at most.',
      ]),
    );
  if (grant.restriction.lines.includes('build')) return whole;
  const field = 'restriction.lines';
  return [
    ...whole,
    anError({ code: 'GRANT-PAYS-NO-BUILD', record, field, value: grant.restriction.lines }, [
      'A reimbursable grant pays back what is spent on building, and this one may not.',
      'Add build to its lines, or leave reimbursement out if it pays by itself.',
    ]),
  ];
}

function frontProblems(view: FileView, grant: FundPart, front: FundPart): Problem[] {
  const place = {
    record: `fund ${grant.id}`,
    field: 'reimbursement.frontedBy',
    value: front.id,
  };
  if (front.reimbursement) {
    return [
      anError({ ...place, code: 'GRANT-FRONTED-BY-GRANT' }, [
        front.id === grant.id
          ? 'The grant is said to front its own money.'
          : `The fund ${front.id} pays only afterward itself, so it has nothing to front.`,
        'Name a fund whose money is there before the grant pays.',
      ]),
    ];
  }
  if (grant.counted && !front.counted) {
    return [
      aWarning({ ...place, code: 'GRANT-FRONT-NOT-COUNTED' }, [
        `The plan does not count on fund ${front.id}, so nothing is fronted and the grant pays nothing.`,
        'Name a fund that is counted, or count this one.',
      ]),
    ];
  }
  if (!front.restriction.lines.includes('build')) {
    return [
      aWarning({ ...place, code: 'GRANT-FRONT-PAYS-NO-BUILD' }, [
        `The fund ${front.id} may not pay for building, so nothing is fronted and the grant pays nothing.`,
        'Name a fund that pays for building.',
      ]),
    ];
  }
  return lapseProblems(view, { grant, front, place });
}

interface Fronted {
  readonly grant: FundPart;
  readonly front: FundPart;
  readonly place: { record: string; field: string; value: string };
}

/** Money keeps its last year while it is away: back later than that, nobody may spend it. */
function lapseProblems({ time }: FileView, { grant, front, place }: Fronted): Problem[] {
  if (!time || !grant.reimbursement || front.carryYears === 'unlimited') return [];
  const { lagYears } = toReimbursement(grant.reimbursement, time);
  if (lagYears <= front.carryYears) return [];
  return [
    aWarning({ ...place, code: 'GRANT-FRONT-LAPSES' }, [
      `Money of fund ${front.id} lapses before the grant pays it back, so the plan fronts nothing and the grant pays nothing.`,
      'Name a fund that carries its money for as long as the payback takes.',
    ]),
  ];
}
