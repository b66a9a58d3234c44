/** Words that the tests at a fixed a.c. residual current share. */
import type { Values } from '../../verification/testAction.ts';
import type { LimitWords, LineWords } from '../actionWords.ts';
import { is, milliamps, milliseconds, num } from '../values.ts';

type Lines = Readonly<Record<string, LineWords>>;

/** A delayed device may not go at once. */
export const notBefore = (v: Values): string =>
  num(v, 'least') > 0 ? `, not before ${milliseconds(num(v, 'least'))} ms` : '';

export const inTime: Lines = {
  'in-time': {
    text: (v) =>
      `trips within ${milliseconds(num(v, 'greatest'))} ms at ${milliamps(num(v, 'amps'))} mA${notBefore(v)}`,
    why: 'Longer than that the current could do harm.',
  },
};

export const whichTrips: Lines = {
  which: {
    text: (v) =>
      is(v, 'own')
        ? is(v, 'alone')
          ? 'opens its own device, and not the one upstream'
          : 'opens its own device, or the one upstream, or both'
        : 'is opened by the device upstream',
    why: (v) =>
      is(v, 'own')
        ? is(v, 'alone')
          ? 'The unit has the device; upstream there is none, or one that stays closed at this current.'
          : 'Two general devices in series may both act: no order is promised.'
        : 'The unit’s sheet leaves the a.c. device to the installation.',
  },
};

export const staysOff: Lines = {
  'closes-again': {
    text: 'closes again by itself',
    why: 'Nothing may close by itself after a residual trip: somebody has to look first.',
  },
};

export const goesDark: Lines = {
  dark: { text: 'goes dark', why: 'What opened lies before its electronics.' },
};

export const timeLimit = (sum: string): LimitWords => ({
  text: (v) => `greatest trip time at ${milliamps(num(v, 'amps'))} mA`,
  sum,
});
