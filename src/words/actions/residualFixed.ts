/** Words that the tests at a fixed a.c. residual current share. */
import type { Values } from '../../verification/testAction.ts';
import type { LimitWords, LineWords } from '../actionWords.ts';
import { is, milliamps, milliseconds, num } from '../values.ts';

type Lines = Readonly<Record<string, LineWords>>;

/** A delayed device may not go at once. */
export const inTheTime = (v: Values): string => {
  const [least, greatest] = [milliseconds(num(v, 'least')), milliseconds(num(v, 'greatest'))];
  return least > 0 ? `after ${least} to ${greatest} ms` : `within ${greatest} ms`;
};

export const noTripInTime = (v: Values): string =>
  `no trip at all, or a trip time above ${milliseconds(num(v, 'greatest'))} ms${num(v, 'least') > 0 ? ` or below ${milliseconds(num(v, 'least'))} ms` : ''}`;

export const inTime: Lines = {
  'in-time': {
    text: (v) => `trips ${inTheTime(v)} at ${milliamps(num(v, 'amps'))} mA a.c.`,
    why: 'Such a current may be flowing through a person to earth. The longer it lasts, the more likely it stops the heart.',
    otherwise: noTripInTime,
  },
};

export const whichTrips: Lines = {
  which: {
    text: (v) =>
      is(v, 'own')
        ? is(v, 'alone')
          ? 'trips the residual device in the unit, and none at the origin'
          : 'trips the residual device in the unit, the one at the origin, or both'
        : 'trips the residual device at the origin',
    why: (v) =>
      is(v, 'own')
        ? is(v, 'alone')
          ? 'The leaking current flows through the unit’s own device, which acts at this current. At the origin there is none, or one that waits longer or needs more.'
          : 'The same current flows through both devices, and both are quick. Either one may open first.'
        : 'The unit has no a.c. device by its sheet, so the one at the origin has to act. It takes the supply from the whole unit.',
    otherwise: (v) =>
      is(v, 'own')
        ? is(v, 'alone')
          ? 'the device at the origin open, and the unit dark'
          : 'the current gone, with both residual devices still closed'
        : 'the device at the origin still closed, though something in the unit has opened',
  },
};

export const staysOff: Lines = {
  'closes-again': {
    text: 'closes again by itself after this residual trip',
    why: 'The leak may still be there, perhaps through a person. Closing would start the shock again, so somebody has to look and reset.',
    otherwise: '230 V at the outlet within some 10 s of the trip, with nothing reset',
  },
};

export const goesDark: Lines = {
  dark: {
    text: 'leaves the unit’s display dark after the trip',
    why: 'The device that trips lies before the unit’s electronics, so they lose their supply as well.',
    otherwise: 'a display that stays lit, as if nothing had opened before it',
  },
};

/** `multiple` as in "1 × the rating". */
export const timeLimit = (multiple: number): LimitWords => ({
  text: (v) => `greatest trip time at ${milliamps(num(v, 'amps'))} mA a.c.`,
  sum: (v) =>
    `at most ${milliseconds(num(v, 'greatest'))} ms at ${multiple} × the rating${num(v, 'least') > 0 ? ', for a delayed device' : ''}`,
});
