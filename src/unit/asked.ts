/**
 * What the control's logic may ask of a unit's design. Two designs that agree in it have one logic, so what the chart
 * makes of an event is worked out once for both (chart/known.ts). A guard that asks for what is left out here does not
 * compile: take it off the list, and no more is to be done.
 */
import type { UnitDesign, UnitSheet } from './design.ts';

/** Parts, levels and sensors, which the control only feels, and its times, which its timers alone go by. */
const NOT_OF_DESIGN = [
  'pilot',
  'thresholds',
  'poles',
  'shortRule',
  'codingRule',
  'lock',
  'serviceSensor',
  'serviceLimitOver',
  'watchedLines',
  'residualType',
  'residualPickup',
  'directPickup',
  'directFeels',
  'residualDelay',
  'directDelay',
  'firstTripLater',
  'sticks',
  'timing',
  'delayShare',
] as const satisfies readonly (keyof UnitDesign)[];
const NOT_OF_SHEET = [
  'cable',
  'residual',
  'surgeArrester',
  'insulationTestVoltageMax',
  'openPenRidesOut',
  'startUp',
  'serviceLimit',
  'overCode',
  'poleBleed',
] as const satisfies readonly (keyof UnitSheet)[];

export type AskedSheet = Omit<UnitSheet, (typeof NOT_OF_SHEET)[number]>;
export type AskedDesign = Omit<UnitDesign, 'sheet' | (typeof NOT_OF_DESIGN)[number]> & {
  readonly sheet: AskedSheet;
};

/** The part of a design that the logic may ask for, and nothing else of it. */
export const askedOf = (design: UnitDesign): AskedDesign => ({
  ...without(design, NOT_OF_DESIGN),
  sheet: without(design.sheet, NOT_OF_SHEET),
});

function without<T extends object, Key extends keyof T>(whole: T, keys: readonly Key[]): Omit<T, Key> {
  const rest = { ...whole };
  for (const key of keys) delete rest[key];
  return rest;
}
