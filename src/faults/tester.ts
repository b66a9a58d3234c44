/**
 * What whoever verifies has brought. The tester for continuity, insulation and coding that whoever verifies has brought: its source, its leads, its
 * memory of them and its scale. What is wrong with it is wrong with no part of the installation.
 */
import type { Ohms } from '../laws/quantities.ts';

export interface Tester {
  /** What its battery still gives of the voltages that it is made for. */
  readonly battery: number;
  /** Resistance in one of its leads beyond a sound pair's, Ω. */
  readonly lead: Ohms;
  /** Whether it takes off what its leads read when they were nulled. */
  readonly nulls: boolean;
  /** What it makes of each ohm that it meets; a calibrated one makes 1 of it, within its class. */
  readonly gain: number;
}

export const SOUND_TESTER: Tester = { battery: 1, lead: 0, nulls: true, gain: 1 };

/** The two-pole voltage detector that whoever verifies has brought. */
export interface Detector {
  /** Whether one of its leads parts as soon as it is put on terminals: until then it works on a proving unit. */
  readonly leadParts: boolean;
}

export const SOUND_DETECTOR: Detector = { leadParts: false };
