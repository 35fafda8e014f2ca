import { coefficient, type Overrides } from '../defaults/coefficients.js';
import { haulFactor } from './haul.js';
import type { Task } from './task-hours.js';

/** Quantities of an installation, as the takeoff has them (waste included in the yards). */
export interface InstallQuantities {
  readonly preparedSqFt: number;
  readonly compostCuYd: number;
  readonly chipsCuYd: number;
  /** Net area under cardboard; 0 in the variant without a barrier. */
  readonly barrierSqFt: number;
  readonly plugs: number;
  readonly gallonPlants: number;
  readonly trees: number;
  readonly edgingFt: number;
}

export interface InstallMethod {
  /** Feet from the tipping point to the middle of the site. */
  readonly haulFeet: number;
  readonly spreading: 'by-hand' | 'by-machine';
}

/**
 * The tasks of sheet mulching and planting, at by-hand volunteer rates that already hold breaks and
 * inexperience: no effectiveness factor belongs on top. A machine carries, so it has no haul penalty.
 */
export function installTasks(
  quantities: InstallQuantities,
  method: InstallMethod,
  overrides: Overrides = {},
): Task[] {
  const rate = (key: Parameters<typeof coefficient>[0]): number => coefficient(key, overrides);
  const byMachine = method.spreading === 'by-machine';
  const walked = haulFactor({
    haulFeet: method.haulFeet,
    freeFeet: rate('install.haul-free-ft'),
    perFoot: rate('install.haul-per-ft'),
  });
  const carried = byMachine ? 1 : walked;
  const compostRate = rate(byMachine ? 'install.compost-by-machine' : 'install.compost-by-hand');
  const { preparedSqFt, barrierSqFt, compostCuYd, chipsCuYd } = quantities;
  return [
    task('mow low and aerate', [preparedSqFt, rate('install.aerate-and-mow')], ['prepare', 1]),
    task('spread compost', [compostCuYd, compostRate], ['prepare', carried]),
    task('lay cardboard', [barrierSqFt, rate('install.cardboard')], ['prepare', 1]),
    task('spread chips', [chipsCuYd, rate('install.chips-by-hand')], ['prepare', carried]),
    task('set edging', [quantities.edgingFt, rate('install.edging')], ['prepare', 1]),
    task('plant plugs', [quantities.plugs, rate('install.plugs')], ['plant', 1]),
    task(
      'plant gallon plants',
      [quantities.gallonPlants, rate('install.gallon-plants')],
      ['plant', 1],
    ),
    task('plant trees', [quantities.trees, rate('install.trees')], ['plant', 1]),
  ];
}

function task(
  name: string,
  [quantity, ratePerHour]: readonly [number, number],
  [phase, factor]: readonly [Task['phase'], number],
): Task {
  return { name, quantity, ratePerHour, phase, factor };
}
