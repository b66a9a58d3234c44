/** What is often taken for a fault and is none: each is written in the papers, mostly in the unit's sheet. */
import type { CableCoding } from '../laws/proximity.ts';
import type { UnitSheet } from '../unit/design.ts';
import type { NotFault, Told } from './fault.ts';
import { openPenOnly, socketOnly, unless } from './fault.ts';

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
    source: 'SI 2021/1467 reg. 11',
    alter: (told, { seconds = 0 }) => withSheet(told, { startDelay: seconds }),
  },
  {
    ...frame,
    id: 'keeps-default-hours',
    component: 'pilot',
    family: 'supply-wiring',
    parameters: [],
    source: 'SI 2021/1467 reg. 10',
    alter: (told) => withSheet(told, { schedule: 'default-hours' }),
  },
  {
    ...frame,
    id: 'waits-for-authorisation',
    component: 'pilot',
    family: 'pilot',
    parameters: [],
    source: 'IEC 61851-1:2017 A.3',
    alter: (told) => withSheet(told, { permission: 'authorise' }),
  },
  {
    ...frame,
    id: 'held-by-load-sharing',
    component: 'pilot',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 0, max: 5.9, default: 4 }],
    source: 'IEC 61851-1:2017 Table A.7; BS 7671:2018+A2:2022 722.311',
    alter: (told, { amps = 0 }) => withSheet(told, { loadLimit: amps }),
  },
  {
    ...frame,
    id: 'offer-cut-by-load-sharing',
    component: 'pilot',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 6, max: 25, default: 6 }],
    source: 'IEC 61851-1:2017 Table A.7; BS 7671:2018+A2:2022 722.311',
    alter: (told, { amps = 0 }) => withSheet(told, { loadLimit: amps }),
  },
  {
    ...frame,
    id: 'customers-small-cable',
    component: 'outlet',
    family: 'proximity-retention',
    parameters: [{ name: 'amps', unit: 'A', min: 13, max: 20, default: 20 }],
    source: 'IEC 61851-1:2017 6.3.1.6, Table B.2',
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
    source: 'BS 7671:2018+A2:2022 433.1.1',
    alter: (told, { amps = 0 }) =>
      withSheet(told, { setCurrent: Math.min(told.sheet.ratedCurrent, Math.max(6, amps)) }),
  },
  {
    ...frame,
    id: 'ventilation-refused',
    component: 'pilot',
    family: 'pilot',
    parameters: [],
    source: 'IEC 61851-1:2017 6.3.1.4',
    alter: (told) => withSheet(told, { ventilation: false }),
  },
  {
    ...frame,
    id: 'bleed-across-poles',
    component: 'contactor',
    family: 'switching',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 200_000, max: 1_000_000, default: 470_000 }],
    source: 'IEC 61851-1:2017 12.6: under a touch current of 3.5 mA',
    alter: (told, { ohms = 0 }) => withSheet(told, { poleBleed: ohms }),
  },
  {
    ...frame,
    id: 'arrester-clamps',
    component: 'arrester',
    family: 'insulation',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 643.3.3',
    alter: (told) => withSheet(told, { surgeArrester: true }),
  },
  {
    ...frame,
    id: 'device-at-the-board',
    component: 'upstream-device',
    family: 'residual-direct',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 722.531.3.101; IEC 62955:2018',
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
    source: 'common practice, no source',
    impossible: unless(({ site }) => site.phases === 3, 'one-line'),
    alter: (told) => withSheet(told, { lostLine: 'goes-on' }),
  },
  {
    ...frame,
    id: 'plug-free-until-supplied',
    component: 'lock',
    family: 'proximity-retention',
    parameters: [],
    source: 'IEC 61851-1:2017 Table A.6: locked before the supply closes',
    impossible: socketOnly,
    alter: (told) => withSheet(told, { holdInB: false }),
  },
  {
    ...frame,
    id: 'earth-pole-open-unpowered',
    component: 'open-pen',
    family: 'protective-conductor',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 722.411.4.1; common practice, no source',
    impossible: openPenOnly,
    alter: (told) => withSheet(told, { openPenUnpowered: 'open' }),
  },
  {
    ...frame,
    id: 'open-pen-acts-at-once',
    component: 'open-pen',
    family: 'supply-wiring',
    parameters: [],
    source: 'BS 7671:2018+A2:2022 722.411.4.1: riding out is permitted, and never required',
    impossible: openPenOnly,
    alter: (told) => withSheet(told, { openPenRidesOut: false }),
  },
  {
    ...frame,
    id: 'steel-beside-earth',
    component: 'circuit',
    family: 'protective-conductor',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 0.02, max: 1, default: 0.1 }],
    source: 'BS 7671:2018+A2:2022 543.2.1, 643.2.1',
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
    source: 'BS 7671:2018+A2:2022 536.4.1.4 (from memory); IEC 61008-1, S type',
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
    source:
      'the unit’s sheet; IEC 61851-1:2017 clause 14, UK note: off and on by hand is no reclosing by itself',
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
    source: 'common practice, no source',
    alter: (told, { seconds = 0 }) => withSheet(told, { startUp: seconds }),
  },
];
