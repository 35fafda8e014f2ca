/** A sheet with the same lap on both ways. Inches of lap on feet of sheet, as they are bought and laid. */
export interface Sheet {
  readonly lengthFt: number;
  readonly widthFt: number;
  readonly lapInches: number;
}

/** Gross over net area of lapped sheets: L W / ((L - o) (W - o)). Throws where the lap is the sheet. */
export function sheetFactor({ lengthFt, widthFt, lapInches }: Sheet): number {
  const lap = lapInches / 12;
  if (lap >= lengthFt || lap >= widthFt) {
    throw new RangeError(
      `a lap of ${lapInches} in leaves nothing of a ${lengthFt} x ${widthFt} ft sheet`,
    );
  }
  return (lengthFt * widthFt) / ((lengthFt - lap) * (widthFt - lap));
}

/** Gross over net area of rolls lapped along their sides only: W / (W - o). Throws as above. */
export function rollFactor(widthFt: number, lapInches: number): number {
  const lap = lapInches / 12;
  if (lap >= widthFt)
    throw new RangeError(`a lap of ${lapInches} in leaves nothing of a ${widthFt} ft roll`);
  return widthFt / (widthFt - lap);
}
