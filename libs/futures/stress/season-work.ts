import { ageAt } from '#domain/calendar.js';
import { TASK_CLASSES } from '#domain/labor.js';
import { ageAfterNeglect } from '#estimating/care-hours/weeds.js';
import { CARE_CLASSES, SETTLED_AGE } from '#estimating/site-charges/type-profile.js';
import type { World } from '../sampling/world.js';
import type { Piece } from './pieces.js';
import { bitsOf, SeasonLabor, SERVED } from './season-labor.js';
import type { Setting, Worker } from './setting.js';

const PREPARE = TASK_CLASSES.indexOf('prepare');
const PLANT = TASK_CLASSES.indexOf('plant');
const SUPERVISE = TASK_CLASSES.indexOf('supervise');
const CARE_PLACES = CARE_CLASSES.map((c) => TASK_CLASSES.indexOf(c));
const MUST = bitsOf(['prepare', 'plant', 'supervise']);
const CARE = bitsOf(CARE_CLASSES);
/** Hours without bound, as a need that takes all that is there. */
const ENDLESS = 1e12;

const WEEDED = [bitsOf(['care-food']), bitsOf(['care-other'])];

/** A piece of ground in one future. */
export interface Ground {
  readonly piece: Piece;
  readonly ends: number;
  /** Supplies by year in dollars of the price year. */
  readonly supplies: readonly number[];
  /** Years of age that neglect took back. */
  lost: number;
  /** Not yet, or never, prepared. */
  open: boolean;
}

/** Whose hours there are in a future, and what they are given to. */
export interface WorkOf {
  readonly setting: Setting;
  readonly world: World;
  /** Who works; some may be added while time goes on. */
  readonly workers: readonly Worker[];
  /** All ground; some may be added while time goes on. */
  readonly grounds: readonly Ground[];
  readonly isSkipped: (piece: Piece) => boolean;
}

/** The work of one future: hours wanted and given, season by season, and the weeds of what is left. */
export class SeasonWork {
  readonly wanted: Float32Array;
  readonly there: Float32Array;
  readonly unserved: Float32Array;
  /** Hundredths of an hour left undone at [season x classes]. */
  readonly unservedBy: Float64Array;
  /** Whether each worker is paid this year. */
  readonly working: boolean[] = [];
  private readonly labor = new SeasonLabor();
  private readonly needs = new Float64Array(TASK_CLASSES.length);
  /** Care wanted this year and as it would be had none been left undone, from the last building season on. */
  private careWanted = 0;
  private carePlanned = 0;
  private weedsWanted = 0;
  private weedsLeft = 0;

  constructor(private readonly of: WorkOf) {
    const { seasons } = of.setting;
    this.wanted = new Float32Array(seasons.length);
    this.there = new Float32Array(seasons.length);
    this.unserved = new Float32Array(seasons.length);
    this.unservedBy = new Float64Array(seasons.length * TASK_CLASSES.length);
  }

  /** Gathers the hours of a season, and what is wanted of them before anything is prepared. */
  open(s: number, year: number): void {
    this.gather(s, year);
    this.wantCare(s);
  }

  /** Wants these hours of preparing as well, and tells whether all that must be done still can be. */
  prepare(hours: number): boolean {
    this.needs[PREPARE] = (this.needs[PREPARE] ?? 0) + hours;
    return this.labor.most(this.needs, MUST) >= this.wantedOf(MUST) - 1;
  }

  /** All hours of a season, and what leaders are needed for. */
  private gather(s: number, year: number): void {
    const { workers, setting } = this.of;
    const { workDays } = setting;
    this.labor.clear();
    this.needs.fill(0);
    workers.forEach((worker, i) => this.labor.add(this.hoursOf(worker, i, s), worker.mask));
    workDays.forEach(({ count, hoursEach, leaderHoursEach, mask }, d) => {
      const events = count[s] ?? 0;
      if (events === 0) return;
      this.labor.add(hoursEach * (this.of.world.turnout[d]?.[year]?.[events] ?? 0), mask);
      const held = this.of.world.held[d]?.[year]?.[events] ?? 0;
      this.needs[SUPERVISE] = (this.needs[SUPERVISE] ?? 0) + leaderHoursEach * held;
    });
  }

  private hoursOf({ hours, person }: Worker, place: number, s: number): number {
    if (!this.working[place]) return 0;
    return person !== undefined && this.of.world.away(person)[s] === 1 ? 0 : (hours[s] ?? 0);
  }

  /** Care and planting of all ground that stands. */
  private wantCare(s: number): void {
    const { campus } = this.of.setting;
    const perYear = campus.calendar.seasons.length;
    const order = s % perYear;
    for (const { piece, ends, lost, open } of this.of.grounds) {
      const { life, care, charges } = piece;
      if (s < life.planted || s >= ends || (!open && this.of.isSkipped(piece))) continue;
      if (s === life.planted) this.needs[PLANT] = (this.needs[PLANT] ?? 0) + charges.plantHours;
      const planned = ageAt(campus.calendar, life.planted, s);
      const age = Math.min(SETTLED_AGE, Math.max(1, planned - lost));
      const whole = Math.floor(age);
      const part = age - whole;
      const at = ((whole - 1) * perYear + order) * CARE_CLASSES.length;
      const next = part > 0 ? at + perYear * CARE_CLASSES.length : at;
      const old = (Math.min(SETTLED_AGE, Math.max(1, planned)) - 1) * perYear * CARE_CLASSES.length;
      CARE_PLACES.forEach((place, c) => {
        const hours = (care[at + c] ?? 0) * (1 - part) + (care[next + c] ?? 0) * part;
        this.needs[place] = (this.needs[place] ?? 0) + hours;
        this.careWanted += hours;
        this.carePlanned += care[old + order * CARE_CLASSES.length + c] ?? 0;
      });
    }
  }

  /** Gives out the hours: what must be done, food care, harvest, other care. */
  serve(s: number): void {
    let classes = 0;
    let served = 0;
    for (const group of SERVED) {
      classes |= group;
      const most = this.labor.most(this.needs, classes);
      this.leave(s, group, this.wantedOf(group) - (most - served));
      served = most;
    }
    this.wanted[s] = this.wantedOf(CARE) / 100;
    const must = this.labor.most(this.needs, MUST);
    for (const place of CARE_PLACES) this.needs[place] = ENDLESS;
    this.there[s] = (this.labor.most(this.needs, MUST | CARE) - must) / 100;
  }

  private wantedOf(mask: number): number {
    let sum = 0;
    for (let c = 0; c < TASK_CLASSES.length; c++) if (mask & (1 << c)) sum += this.needs[c] ?? 0;
    return sum;
  }

  private leave(s: number, group: number, hours: number): void {
    // Up to a hundredth of an hour for each class is the rounding of a plan's accounts.
    const left = hours > TASK_CLASSES.length ? hours : 0;
    this.unserved[s] = (this.unserved[s] ?? 0) + left / 100;
    for (let c = 0; c < TASK_CLASSES.length; c++) {
      if (group === 1 << c) this.unservedBy[s * TASK_CLASSES.length + c] = left;
    }
    if (!WEEDED.includes(group)) return;
    this.weedsWanted += this.wantedOf(group);
    this.weedsLeft += left;
  }

  /** How much more care was wanted than planned since this was last asked; 1 where none was. */
  takeCareFactor(): number {
    const factor = this.carePlanned > 0 ? this.careWanted / this.carePlanned : 1;
    this.careWanted = 0;
    this.carePlanned = 0;
    return factor;
  }

  /** At the end of a year all ground loses the same years of age: nobody knows which bed was left. */
  growWeeds(): void {
    const unservedShare = this.weedsWanted > 0 ? this.weedsLeft / this.weedsWanted : 0;
    this.weedsWanted = 0;
    this.weedsLeft = 0;
    if (unservedShare === 0) return;
    const yearsPerShare = this.of.setting.odds.weedSetBack;
    for (const ground of this.of.grounds) {
      if (!ground.open && ground.piece.placement >= 0) continue;
      const age = SETTLED_AGE;
      const after = ageAfterNeglect({ age, unservedShare, yearsPerShare });
      ground.lost = Math.min(SETTLED_AGE - 1, ground.lost + age - after);
    }
  }
}
