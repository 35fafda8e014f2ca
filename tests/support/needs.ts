import { findChromium } from './chromium.js';
import { findProgram } from './programs.js';

/** Tests that need a program which a machine may lack are named for it: `brief.browser.test.ts`. */
export interface Need {
  /** The part of the file name that says so. */
  readonly mark: string;
  /** Which files those are. */
  readonly pattern: string;
  /** What they test, for the line that says they were left out. */
  readonly what: string;
  /** The programs, in words. */
  readonly programs: string;
  /** How to add them on Debian and its kin. */
  readonly remedy: string;
  readonly isMet: () => boolean;
}

export const NEEDS: readonly Need[] = [
  {
    mark: 'browser',
    pattern: 'tests/**/*.browser.test.{ts,tsx}',
    what: 'the tests of the page in a browser',
    programs: 'Chromium',
    remedy: 'apt-get install chromium, or set CHROMIUM_PATH to a Chromium or Chrome',
    isMet: () => findChromium() !== undefined,
  },
  {
    mark: 'pdftools',
    pattern: 'tests/**/*.pdftools.test.{ts,tsx}',
    what: 'the checks of the PDF files by outside programs',
    programs: 'pdfinfo, pdftotext, pdftoppm (Poppler) and qpdf',
    remedy: 'apt-get install poppler-utils qpdf',
    isMet: () => ['pdfinfo', 'pdftotext', 'pdftoppm', 'qpdf'].every(findProgram),
  },
  {
    mark: 'peers',
    pattern: 'tests/**/*.peers.test.{ts,tsx}',
    what: 'the checks of model files by other solvers',
    programs: 'cbc and glpsol',
    remedy: 'apt-get install coinor-cbc glpk-utils',
    isMet: () => ['cbc', 'glpsol'].every(findProgram),
  },
];

/** The needs that this machine does not meet. */
export function leftOut(): readonly Need[] {
  return NEEDS.filter((need) => !need.isMet());
}
