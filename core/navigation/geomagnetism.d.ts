// Types of the two files of the package geomagnetism that are used: the arithmetic, and the coefficients of one model.
// Its main file would bring the three older models along, and picks one by dates of its own.
declare module 'geomagnetism/lib/model.js' {
  interface MagneticField {
    /** Declination, degrees, east positive. */
    readonly decl: number;
  }
  interface ModelAtOneTime {
    point(place: readonly [latitudeDegrees: number, longitudeDegrees: number, heightKilometres: number]): MagneticField;
  }
  export default class Model {
    constructor(coefficients: object);
    getTimedModel(date: Date): ModelAtOneTime;
  }
}
