import type { Moment, PeerRun } from '../peers/outcome.js';
import type { Contest } from './contest.js';

const PANEL = { width: 440, height: 240, left: 52, right: 12, top: 26, bottom: 34 };
/** Shares of our last plan between which a panel shows plans and bounds. */
const LOW = 0.85;
const HIGH = 1.2;
const FIRST_SECOND = 0.2;

/** Told apart by dash as well as by color. */
const STYLES: Readonly<Record<string, { readonly color: string; readonly dash: string }>> = {
  ours: { color: '#1b5e3f', dash: '' },
  highs: { color: '#8c4a1d', dash: '6 3' },
  'glpk.js': { color: '#6a5a9c', dash: '2 3' },
  cbc: { color: '#1f5f8b', dash: '8 3 2 3' },
  glpsol: { color: '#7a7a7a', dash: '1 3' },
};

interface Panel {
  readonly contest: Contest;
  readonly formulation: string;
}

/**
 * Plans (rising) and bounds (falling) against time, as shares of our last plan. A line of panels for each
 * program, one for each model that the peers were given.
 */
export function benchPlot(contests: readonly Contest[]): string {
  const formulations = formulationsIn(contests);
  const columns = Math.max(1, formulations.length);
  const [width, height] = [columns * PANEL.width, contests.length * PANEL.height + 30];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="11">`,
    `<rect width="${width}" height="${height}" fill="white"/>`,
    legend(['ours', ...contests.flatMap(({ peers }) => peers.map((p) => p.peer))]),
    ...contests.flatMap((contest, line) =>
      formulations.map((formulation, column) => {
        const [left, top] = [column * PANEL.width, 30 + line * PANEL.height];
        return `<g transform="translate(${left} ${top})">${panel({ contest, formulation })}</g>`;
      }),
    ),
    '</svg>',
    '',
  ].join('\n');
}

function formulationsIn(contests: readonly Contest[]): string[] {
  const met = contests.flatMap(({ peers }) => peers.map((p) => p.formulation));
  return met.length > 0 ? [...new Set(met)] : [''];
}

function legend(drawn: readonly string[]): string {
  return Object.entries(STYLES)
    .filter(([name]) => drawn.includes(name))
    .map(([name, style], i) => {
      const x = 20 + i * 84;
      return `<line x1="${x}" y1="16" x2="${x + 30}" y2="16" ${stroke(style)}/><text x="${x + 36}" y="20">${name}</text>`;
    })
    .join('');
}

function panel({ contest, formulation }: Panel): string {
  const unit = contest.ours.objective ?? NaN;
  const peers = contest.peers.filter((p) => p.formulation === formulation);
  const runs: [string, PeerRun][] = [
    // Ours is drawn last, so that it lies on top.
    ...peers.map(({ peer, run }): [string, PeerRun] => [peer, run]),
    ['ours', contest.ours],
  ];
  const given = formulation === '' ? '' : `: peers on the ${formulation} model`;
  return [
    `<text x="${PANEL.left}" y="16"><tspan font-weight="bold">${contest.name}</tspan>${given}</text>`,
    axes(contest.seconds),
    ...runs.flatMap(([name, run]) =>
      (['objective', 'bound'] as const).map((what) => curve(contest, { name, run, what, unit })),
    ),
  ].join('\n');
}

interface Curve {
  readonly name: string;
  readonly run: PeerRun;
  readonly what: 'objective' | 'bound';
  readonly unit: number;
}

/** A step at each moment, and level from the last one to the end. */
function curve({ seconds: end }: Contest, { name, run, what, unit }: Curve): string {
  const style = STYLES[name];
  const told = timesOf(run.moments, what).map(([at, value]) => [at, value / unit] as const);
  if (told.length === 0 || style === undefined || !Number.isFinite(unit)) return '';
  const points = told.flatMap(([at, value], i) => {
    const next = told[i + 1]?.[0] ?? Math.max(at, end);
    return [`${x(at, end)},${y(value)}`, `${x(next, end)},${y(value)}`];
  });
  return `<polyline points="${points.join(' ')}" fill="none" ${stroke(style)}/>`;
}

function timesOf(moments: readonly Moment[], what: 'objective' | 'bound'): [number, number][] {
  return moments.flatMap((moment): [number, number][] => {
    const value = moment[what];
    return value === undefined ? [] : [[moment.seconds, value]];
  });
}

function axes(end: number): string {
  const bottom = PANEL.height - PANEL.bottom;
  const times = [0.2, 0.5, 1, 2, 5, 10, 20, 60, 120, 300, 600].filter((t) => t <= end);
  const shares = [0.9, 1, 1.1];
  return [
    ...times.map(
      (t) =>
        `<line x1="${x(t, end)}" y1="${PANEL.top}" x2="${x(t, end)}" y2="${bottom}" stroke="#e4e4e4"/><text x="${x(t, end)}" y="${bottom + 14}" text-anchor="middle">${t}</text>`,
    ),
    ...shares.map(
      (s) =>
        `<line x1="${PANEL.left}" y1="${y(s)}" x2="${PANEL.width - PANEL.right}" y2="${y(s)}" stroke="#d0d0d0"/><text x="${PANEL.left - 6}" y="${y(s) + 4}" text-anchor="end">${s.toFixed(1)}</text>`,
    ),
    `<text x="${(PANEL.left + PANEL.width) / 2}" y="${bottom + 28}" text-anchor="middle">seconds; plans rise, bounds fall; 1.0 is our last plan</text>`,
  ].join('');
}

function x(seconds: number, end: number): number {
  const span = Math.log(end / FIRST_SECOND);
  const at = Math.log(Math.min(end, Math.max(seconds, FIRST_SECOND)) / FIRST_SECOND) / span;
  return Math.round(10 * (PANEL.left + at * (PANEL.width - PANEL.left - PANEL.right))) / 10;
}

function y(share: number): number {
  const at = (Math.min(HIGH, Math.max(LOW, share)) - LOW) / (HIGH - LOW);
  return (
    Math.round(
      10 * (PANEL.height - PANEL.bottom - at * (PANEL.height - PANEL.top - PANEL.bottom)),
    ) / 10
  );
}

function stroke({ color, dash }: { readonly color: string; readonly dash: string }): string {
  return `stroke="${color}" stroke-width="1.6"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}`;
}
