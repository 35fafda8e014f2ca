/** When a crop group first bears, when it bears in full, and what it bears then. */
export interface CropGroup {
  /** Age of the first crop, in years from planting (1 is the planting year's own season). */
  readonly bearsAt: number;
  readonly fullAt: number;
  /** Pounds per plant in full bearing: low and high. */
  readonly poundsPerPlant: readonly [number, number];
  /** Square feet that one plant takes. */
  readonly sqFtPerPlant: number;
  readonly source: string;
}

const VCE = 'Virginia Cooperative Extension 426-840, Table 1';
const RAMP = 'years to full bearing: Bailey, Farm and Garden Rule Book, 1911';

/** Bushel of apples or pears in pounds, as the extension figures in bushels count it. */
export const POUNDS_PER_BUSHEL = 42;

/** Years to bear are ages here: a plant that bears after 1 year does so at age 2. */
export const CROP_GROUPS = {
  blackberry: { bearsAt: 2, fullAt: 4, poundsPerPlant: [5, 10], sqFtPerPlant: 50, source: VCE },
  blueberry: { bearsAt: 4, fullAt: 8, poundsPerPlant: [4, 6], sqFtPerPlant: 30, source: VCE },
  raspberry: { bearsAt: 2, fullAt: 4, poundsPerPlant: [3, 5], sqFtPerPlant: 24, source: VCE },
  strawberry: { bearsAt: 2, fullAt: 2, poundsPerPlant: [1, 2], sqFtPerPlant: 3, source: VCE },
  currant: {
    bearsAt: 2,
    fullAt: 4,
    poundsPerPlant: [4, 5],
    sqFtPerPlant: 16,
    source: `ATTRA; ${RAMP}`,
  },
  'dwarf apple': {
    bearsAt: 3,
    fullAt: 11,
    poundsPerPlant: [POUNDS_PER_BUSHEL, POUNDS_PER_BUSHEL],
    sqFtPerPlant: 100,
    source: `University of Tennessee and Arizona, 1 bushel at 2 to 3 years; ${RAMP}`,
  },
  'dwarf pear': {
    bearsAt: 4,
    fullAt: 7,
    poundsPerPlant: [POUNDS_PER_BUSHEL / 2, POUNDS_PER_BUSHEL],
    sqFtPerPlant: 100,
    source: `University of Tennessee and Arizona, 0.5 to 1 bushel at 3 years; ${RAMP}`,
  },
  hazelnut: {
    bearsAt: 4,
    fullAt: 11,
    poundsPerPlant: [8, 12],
    sqFtPerPlant: 200,
    source: 'OSU Extension: first harvest at 3 to 4 years, full at about 10; pounds are a default',
  },
} as const satisfies Readonly<Record<string, CropGroup>>;

export type Crop = keyof typeof CROP_GROUPS;
