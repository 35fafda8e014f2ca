declare module 'geodesy/latlon-ellipsoidal-vincenty.js' {
  /** Ellipsoidal position; distances by T. Vincenty, 1975. */
  export default class LatLon {
    constructor(latitude: number, longitude: number);
    /** Meters. */
    distanceTo(other: LatLon): number;
    /** Degrees. */
    initialBearingTo(other: LatLon): number;
    destinationPoint(meters: number, bearing: number): LatLon;
    readonly lat: number;
    readonly lon: number;
  }
}
