/** What each cause of this kind is, where it sits, how it comes about and who is at risk. */
import type { CauseWords } from '../causeWords.ts';

export const notFaults: Readonly<Record<string, CauseWords>> = {
  'start-delay': {
    title: 'Random start delay',
    where: 'the control logic, before an offer',
    cause: 'Units for private use wait a random time before supply starts, unless overridden.',
  },
  'keeps-default-hours': {
    title: 'Default charging hours',
    where: 'the control logic, before an offer',
    cause: 'Units for private use stay off in peak hours unless overridden.',
  },
  'waits-for-authorisation': {
    title: 'Waits to be authorised',
    where: 'the control logic, before an offer',
    cause: 'The pilot stays steady until somebody who may says so.',
  },
  'held-by-load-sharing': {
    title: 'Held back by load sharing',
    where: 'the site’s load management leaves it less than 6 A',
    cause: 'Other loads come first; the pilot stays steady until there is enough.',
  },
  'offer-cut-by-load-sharing': {
    title: 'Offer lowered by load sharing',
    where: 'the site’s load management leaves it less than its rating',
    cause: 'Other loads come first; 6 A is the least that can be offered, 10 %.',
  },
  'customers-small-cable': {
    title: 'Customer’s cable is coded for less than the unit’s rating',
    where: 'the cable at hand',
    cause: 'The unit offers no more than the cable may carry.',
  },
  'set-by-installer': {
    title: 'Set to less than its rating by the installer',
    where: 'the unit’s setting',
    cause: 'The setting suits the supply.',
  },
  'ventilation-refused': {
    title: 'Refuses a vehicle that asks for ventilation',
    where: 'the control logic, in state D',
    cause: 'No ventilation is declared, so no such vehicle may be supplied.',
  },
  'bleed-across-poles': {
    title: 'Ghost voltage at the open outlet',
    where: 'across each pole of the contactor',
    cause: 'The unit senses its poles through resistors; a meter shows that, a detector does not.',
  },
  'arrester-clamps': {
    title: 'Surge arrester brings an insulation reading down',
    where: 'from each live conductor to PE in the unit',
    cause: 'It conducts from about 430 V: good at 250 V, low at 500 V.',
  },
  'device-at-the-board': {
    title: 'The board’s device trips, not the unit’s',
    where: 'the 30 mA device stands at the origin; the unit has the d.c. detector alone',
    cause: 'Who does what is the designer’s choice, and the sheet says it.',
  },
  'goes-on-without-a-line': {
    title: 'Goes on supplying when one of its lines is lost',
    where: 'the control logic, with L2 or L3 gone',
    cause: 'A vehicle takes what lines it finds; no standard asks the unit to stop.',
  },
  'slow-to-start': {
    title: 'Long start-up',
    where: 'the unit’s electronics, after supply returns',
    cause: 'It tests itself first; no standard sets a time.',
  },
};
