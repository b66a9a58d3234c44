/** What is often taken for a fault and is none: each is written in the papers, mostly in the unit's sheet. */
import type { CableCoding } from '../laws/proximity.ts';
import type { UnitSheet } from '../unit/design.ts';
import type { NotFault, Told } from './fault.ts';
import { nextPointOnly, openPenOnly, sensorOnly, socketOnly, unless } from './fault.ts';

const frame = { kind: 'not-fault' } as const;

const withSheet = (told: Told, change: Partial<UnitSheet>): Told => ({
  ...told,
  sheet: { ...told.sheet, ...change },
});

export const notFaults: readonly NotFault[] = [
  {
    ...frame,
    id: 'start-delay',
    component: 'pilot',
    family: 'supply-wiring',
    parameters: [{ name: 'seconds', unit: 's', min: 1, max: 1800, default: 600 }],
    alter: (told, { seconds = 0 }) => withSheet(told, { startDelay: seconds }),
  },
  {
    ...frame,
    id: 'keeps-default-hours',
    component: 'pilot',
    family: 'supply-wiring',
    parameters: [],
    alter: (told) => withSheet(told, { schedule: 'default-hours' }),
  },
  {
    ...frame,
    id: 'waits-for-authorisation',
    component: 'pilot',
    family: 'pilot',
    parameters: [],
    alter: (told) => withSheet(told, { permission: 'authorise' }),
  },
  {
    ...frame,
    id: 'held-by-load-sharing',
    component: 'pilot',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 0, max: 5.9, default: 4 }],
    alter: (told, { amps = 0 }) => withSheet(told, { loadLimit: amps }),
  },
  {
    ...frame,
    id: 'offer-cut-by-load-sharing',
    component: 'pilot',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 6, max: 25, default: 6 }],
    alter: (told, { amps = 0 }) => withSheet(told, { loadLimit: amps }),
  },
  {
    ...frame,
    id: 'next-point-charges',
    component: 'pilot',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 10, max: 32, default: 32 }],
    impossible: (on) => sensorOnly(on) ?? nextPointOnly(on),
    alter: ({ site, sheet }, { amps = 0 }) => ({
      site:
        site.nextPoint === undefined
          ? site
          : { ...site, nextPoint: { ...site.nextPoint, draws: Math.min(site.nextPoint.ratedCurrent, amps) } },
      sheet,
    }),
  },
  {
    ...frame,
    id: 'customers-small-cable',
    component: 'outlet',
    family: 'proximity-retention',
    parameters: [{ name: 'amps', unit: 'A', min: 13, max: 20, default: 20 }],
    impossible: (on, { amps = 20 }) =>
      socketOnly(on) ?? (amps === 13 || amps === 20 ? null : 'customer-cable-amps'),
    alter: (told, { amps = 20 }) =>
      withSheet(told, {
        cable: { ...told.sheet.cable, area: 2.5, coding: amps as CableCoding },
      }),
  },
  {
    ...frame,
    id: 'set-by-installer',
    component: 'pilot',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 10, max: 25, default: 16 }],
    alter: (told, { amps = 0 }) =>
      withSheet(told, { setCurrent: Math.min(told.sheet.ratedCurrent, Math.max(6, amps)) }),
  },
  {
    ...frame,
    id: 'ventilation-refused',
    component: 'pilot',
    family: 'pilot',
    parameters: [],
    alter: (told) => withSheet(told, { ventilation: false }),
  },
  {
    ...frame,
    id: 'bleed-across-poles',
    component: 'contactor',
    family: 'switching',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 200_000, max: 1_000_000, default: 470_000 }],
    alter: (told, { ohms = 0 }) => withSheet(told, { poleBleed: ohms }),
  },
  {
    ...frame,
    id: 'arrester-clamps',
    component: 'arrester',
    family: 'insulation',
    parameters: [],
    alter: (told) => withSheet(told, { surgeArrester: true }),
  },
  {
    ...frame,
    id: 'device-at-the-board',
    component: 'upstream-device',
    family: 'residual-direct',
    parameters: [],
    impossible: unless(({ sheet }) => sheet.residual.type !== null, 'no-ac-device'),
    alter: ({ site, sheet }) => ({
      site: {
        ...site,
        circuit: {
          ...site.circuit,
          residualDevice: { type: 'A', rated: 0.03, delay: 'general', poles: site.phases + 1 },
        },
      },
      sheet: { ...sheet, residual: { type: null, rated: null, by: null, direct: 'monitoring' } },
    }),
  },
  {
    ...frame,
    id: 'goes-on-without-a-line',
    component: 'pilot',
    family: 'supply-wiring',
    parameters: [],
    impossible: unless(({ site }) => site.phases === 3, 'one-line'),
    alter: (told) => withSheet(told, { lostLine: 'goes-on' }),
  },
  {
    ...frame,
    id: 'plug-free-until-supplied',
    component: 'lock',
    family: 'proximity-retention',
    parameters: [],
    impossible: socketOnly,
    alter: (told) => withSheet(told, { holdInB: false }),
  },
  {
    ...frame,
    id: 'earth-pole-open-unpowered',
    component: 'open-pen',
    family: 'protective-conductor',
    parameters: [],
    impossible: openPenOnly,
    alter: (told) => withSheet(told, { openPenUnpowered: 'open' }),
  },
  {
    ...frame,
    id: 'open-pen-acts-at-once',
    component: 'open-pen',
    family: 'supply-wiring',
    parameters: [],
    impossible: openPenOnly,
    alter: (told) => withSheet(told, { openPenRidesOut: false }),
  },
  {
    ...frame,
    id: 'steel-beside-earth',
    component: 'circuit',
    family: 'protective-conductor',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.02, max: 1, default: 0.1 }],
    alter: ({ site, sheet }, { ohms = 0 }) => ({
      site: { ...site, circuit: { ...site.circuit, parallelEarth: ohms } },
      sheet,
    }),
  },
  {
    ...frame,
    id: 'delayed-device-ahead',
    component: 'upstream-device',
    family: 'residual-direct',
    parameters: [],
    impossible: unless(({ sheet }) => sheet.residual.type !== null, 'no-residual-device'),
    alter: ({ site, sheet }) => ({
      site: {
        ...site,
        circuit: {
          ...site.circuit,
          residualDevice: { type: 'A', rated: 0.1, delay: 'S', poles: site.phases + 1 },
        },
      },
      sheet,
    }),
  },
  {
    ...frame,
    id: 'trip-clears-with-supply',
    component: 'residual-device',
    family: 'residual-direct',
    parameters: [],
    impossible: unless(({ sheet }) => sheet.residual.by === 'contactor', 'breaker-stays-open'),
    alter: (told) =>
      withSheet(told, { clearsBy: { ...told.sheet.clearsBy, residual: 'supply', direct: 'supply' } }),
  },
  {
    ...frame,
    id: 'slow-to-start',
    component: 'pilot',
    family: 'pilot',
    parameters: [{ name: 'seconds', unit: 's', min: 15, max: 45, default: 30 }],
    alter: (told, { seconds = 0 }) => withSheet(told, { startUp: seconds }),
  },
];
