/** What is often taken for a fault and is none: each is written in the papers, mostly in the unit's sheet. */
import type { CableCoding } from '../laws/proximity.ts';
import type { UnitSheet } from '../unit/design.ts';
import type { NotFault, Told } from './fault.ts';
import { socketOnly, unless } from './fault.ts';

const frame = { kind: 'not-fault', hazard: 'None.' } as const;

const withSheet = (told: Told, change: Partial<UnitSheet>): Told => ({
  ...told,
  sheet: { ...told.sheet, ...change },
});

export const notFaults: readonly NotFault[] = [
  {
    ...frame,
    id: 'start-delay',
    title: 'Random start delay',
    family: 'supply-wiring',
    parameters: [{ name: 'seconds', unit: 's', min: 1, max: 1800, default: 600 }],
    where: 'the control logic, before an offer',
    cause: 'Units for private use wait a random time before supply starts, unless overridden.',
    source: 'SI 2021/1467 reg. 11',
    alter: (told, { seconds = 0 }) => withSheet(told, { startDelay: seconds }),
  },
  {
    ...frame,
    id: 'keeps-default-hours',
    title: 'Default charging hours',
    family: 'supply-wiring',
    parameters: [],
    where: 'the control logic, before an offer',
    cause: 'Units for private use stay off in peak hours unless overridden.',
    source: 'SI 2021/1467 reg. 10',
    alter: (told) => withSheet(told, { schedule: 'default-hours' }),
  },
  {
    ...frame,
    id: 'waits-for-authorisation',
    title: 'Waits to be authorised',
    family: 'pilot',
    parameters: [],
    where: 'the control logic, before an offer',
    cause: 'The pilot stays steady until somebody who may says so.',
    source: 'IEC 61851-1:2017 A.3',
    alter: (told) => withSheet(told, { permission: 'authorise' }),
  },
  {
    ...frame,
    id: 'held-by-load-sharing',
    title: 'Held back by load sharing',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 0, max: 5.9, default: 4 }],
    where: 'the site’s load management leaves it less than 6 A',
    cause: 'Other loads come first; the pilot stays steady until there is enough.',
    source: 'IEC 61851-1:2017 Table A.7; BS 7671:2018+A2:2022 722.311',
    alter: (told, { amps = 0 }) => withSheet(told, { loadLimit: amps }),
  },
  {
    ...frame,
    id: 'offer-cut-by-load-sharing',
    title: 'Offer lowered by load sharing',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 6, max: 25, default: 6 }],
    where: 'the site’s load management leaves it less than its rating',
    cause: 'Other loads come first; 6 A is the least that can be offered, 10 %.',
    source: 'IEC 61851-1:2017 Table A.7; BS 7671:2018+A2:2022 722.311',
    alter: (told, { amps = 0 }) => withSheet(told, { loadLimit: amps }),
  },
  {
    ...frame,
    id: 'customers-small-cable',
    title: 'Customer’s cable is coded for less than the unit’s rating',
    family: 'proximity-retention',
    parameters: [{ name: 'amps', unit: 'A', min: 13, max: 20, default: 20 }],
    where: 'the cable at hand',
    cause: 'The unit offers no more than the cable may carry.',
    source: 'IEC 61851-1:2017 6.3.1.6, Table B.2',
    impossible: (on, { amps = 20 }) =>
      socketOnly(on) ?? (amps === 13 || amps === 20 ? null : 'amps is 13 or 20'),
    alter: (told, { amps = 20 }) =>
      withSheet(told, {
        cable: { ...told.sheet.cable, area: 2.5, coding: amps as CableCoding },
      }),
  },
  {
    ...frame,
    id: 'set-by-installer',
    title: 'Set to less than its rating by the installer',
    family: 'pilot',
    parameters: [{ name: 'amps', unit: 'A', min: 10, max: 25, default: 16 }],
    where: 'the unit’s setting',
    cause: 'The setting suits the supply.',
    source: 'BS 7671:2018+A2:2022 433.1.1',
    alter: (told, { amps = 0 }) =>
      withSheet(told, { setCurrent: Math.min(told.sheet.ratedCurrent, Math.max(6, amps)) }),
  },
  {
    ...frame,
    id: 'ventilation-refused',
    title: 'Refuses a vehicle that asks for ventilation',
    family: 'pilot',
    parameters: [],
    where: 'the control logic, in state D',
    cause: 'No ventilation is declared, so no such vehicle may be supplied.',
    source: 'IEC 61851-1:2017 6.3.1.4',
    alter: (told) => withSheet(told, { ventilation: false }),
  },
  {
    ...frame,
    id: 'bleed-across-poles',
    title: 'Ghost voltage at the open outlet',
    family: 'switching',
    parameters: [{ name: 'ohms', unit: 'Ω', min: 200_000, max: 1_000_000, default: 470_000 }],
    where: 'across each pole of the contactor',
    cause: 'The unit senses its poles through resistors; a meter shows that, a detector does not.',
    source: 'common practice, no source',
    alter: (told, { ohms = 0 }) => withSheet(told, { poleBleed: ohms }),
  },
  {
    ...frame,
    id: 'arrester-clamps',
    title: 'Surge arrester brings an insulation reading down',
    family: 'insulation',
    parameters: [],
    where: 'from each live conductor to PE in the unit',
    cause: 'It conducts from about 430 V: good at 250 V, low at 500 V.',
    source: 'BS 7671:2018+A2:2022 643.3.3',
    alter: (told) => withSheet(told, { surgeArrester: true }),
  },
  {
    ...frame,
    id: 'device-at-the-board',
    title: 'The board’s device trips, not the unit’s',
    family: 'residual-direct',
    parameters: [],
    where: 'the 30 mA device stands at the origin; the unit has the d.c. detector alone',
    cause: 'Who does what is the designer’s choice, and the sheet says it.',
    source: 'BS 7671:2018+A2:2022 722.531.3.101; IEC 62955:2018',
    impossible: unless(({ sheet }) => sheet.residual.type !== null, 'the unit has no a.c. device as it is'),
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
    id: 'slow-to-start',
    title: 'Long start-up',
    family: 'pilot',
    parameters: [{ name: 'seconds', unit: 's', min: 15, max: 45, default: 30 }],
    where: 'the unit’s electronics, after supply returns',
    cause: 'It tests itself first; no standard sets a time.',
    source: 'common practice, no source',
    alter: (told, { seconds = 0 }) => withSheet(told, { startUp: seconds }),
  },
];
