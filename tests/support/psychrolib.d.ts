/** The few functions of the general-purpose psychrometrics library that the tests compare with; SI units. */
declare module 'psychrolib' {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetTDewPointFromRelHum(air: number, humidity: number): number;
    GetSatVapPres(temperature: number): number;
    GetRelHumFromTWetBulb(air: number, wetBulb: number, pressure: number): number;
    GetTWetBulbFromRelHum(air: number, humidity: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
