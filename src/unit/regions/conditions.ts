/**
 * Conditions that several regions ask about, as guards over their states: is a vehicle there, is all clear, may the
 * unit offer, may it supply.
 */
import { and, not, or, stateIn } from 'xstate';
import type { PilotBand } from '../sensed.ts';

export const inLevel = (...bands: readonly PilotBand[]) => or(bands.map((band) => stateIn(`#level-${band}`)));

export const vehicle = inLevel('B', 'C', 'D');

export const allClear = and([
  stateIn('#clear'),
  or([and([stateIn('#residual-ready'), stateIn('#direct-ready')]), 'trip opens nothing']),
  not(stateIn('#pen-locked-out')),
  not(stateIn('#emergency')),
  not(stateIn('#over-code-cut')),
]);

export const mayOffer = and([
  vehicle,
  allClear,
  stateIn('#permitted'),
  stateIn('#not-stopped'),
  stateIn('#supply-within'),
  'has something to offer',
]);

/** Supply that stands may stay: the vehicle still asks, and nothing calls for opening at once. */
export const mayRemain = and([
  or([inLevel('C'), and([inLevel('D'), 'has ventilation'])]),
  allClear,
  stateIn('#supply-within'),
  // A plug that is no longer felt is as good as one that is out (IEC 61851-1:2017 Annex B).
  or([not('has socket'), and(['plug held', 'cable coded'])]),
]);

/**
 * The vehicle asks (C, or D where ventilation is declared) and nothing stands against it: IEC 61851-1:2017 Table A.6
 * sequence 4, 6.3.1.4. Nothing closes onto an open PEN, not even in the time it may ignore (BS 7671 722.411.4.1).
 */
export const maySupply = and([mayRemain, stateIn('#oscillating'), stateIn('#pen-watching')]);
