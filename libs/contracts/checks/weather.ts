import { anError, aWarning, type Problem } from '#domain/problem.js';
import { counted } from '#units/in-words.js';
import { allSites, type FileView } from './file-view.js';

/** More than this in a month is most likely in millimeters or centimeters: no campus has so much. */
const USUAL_INCHES = { evapotranspirationInches: 12, rainInches: 20 } as const;

/** Weather in the wrong unit, and tanks that open with more than they hold. */
export function weatherProblems(view: FileView): Problem[] {
  return [...monthProblems(view), ...allSites(view).flatMap(tankProblems)];
}

function monthProblems({ weather }: FileView): Problem[] {
  return (weather?.months ?? []).flatMap((month, index) =>
    (['evapotranspirationInches', 'rainInches'] as const)
      .filter((field) => month[field] > USUAL_INCHES[field])
      .map((field) => {
        const place = { record: 'weather', field: `months[#${index + 1}].${field}` };
        return aWarning({ ...place, code: 'WEATHER-UNUSUAL', value: month[field] }, [
          `${month[field]} inches in a month is unusual: at most ${USUAL_INCHES[field]} is expected.`,
          'Give inches, not millimeters or centimeters.',
        ]);
      }),
  );
}

function tankProblems({ id, rainTank }: ReturnType<typeof allSites>[number]): Problem[] {
  if (!rainTank || rainTank.openingGallons <= rainTank.gallons) return [];
  const place = { record: `site ${id}`, field: 'rainTank.openingGallons' };
  return [
    anError({ ...place, code: 'TANK-OVERFULL', value: rainTank.openingGallons }, [
      `The tank opens with more than it holds, ${counted(rainTank.gallons, 'gallon')}.`,
      'Correct what is in it at the start, or its size.',
    ]),
  ];
}
