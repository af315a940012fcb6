// What is used of psychrolib 1.1.1, which comes without types.
declare module "psychrolib" {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetTDewPointFromRelHum(dryBulb: number, humidity: number): number;
    GetSatVapPres(dryBulb: number): number;
    GetRelHumFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
