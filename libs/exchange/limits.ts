/** Largest file that is read, in bytes: the largest body that the api takes. */
export const MOST_BYTES = 25 * 1024 * 1024;
/** Most that an archive may hold when unpacked, in bytes. */
export const MOST_UNPACKED_BYTES = 150 * 1024 * 1024;
/** Most files in an archive. */
export const MOST_ENTRIES = 500;
/** An archive that unpacks to more than this many times its size was made to fill a disk. */
export const MOST_RATIO = 200;
/** Most rows of a table; a campus holds 1,000 sites at most. */
export const MOST_ROWS = 5000;
/** Most characters of one cell: what a spreadsheet holds is less, a long boundary in a CSV more. */
export const MOST_CELL_CHARACTERS = 400_000;
/** Most characters that a spreadsheet program keeps in one cell (its published limit, from memory). */
export const MOST_SHEET_CELL_CHARACTERS = 32_767;
