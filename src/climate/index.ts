/**
 * Air and floor: dew point, humidity, and when a floor may be laid.
 * @module climate
 */
export { dewPoint } from './dewPoint.ts';
export type { DewPointInput } from './dewPoint.ts';
export { dewPointMargin } from './dewPointMargin.ts';
export type { DewPointMarginInput } from './dewPointMargin.ts';
export type { InstrumentErrors } from './margin.ts';
