/** Which readings of a sitting a line's finding rests on. */

import type { Reading } from '../../bench/reading.ts';
import type { TestAction } from '../../verification/testAction.ts';
import type { Run } from './run.ts';
import type { Sitting } from './sitting.ts';
import { readingsIn } from './sitting.ts';
import { observedAsTyped } from './typed.ts';

/** Figures of any other size, SI: one of them breaks or meets whatever looks at a reading. */
const OTHERWISE = [0, 230, 1e6] as const;

/** Of a pilot the figure is its high level. */
const withFigure = (reading: Reading, value: number): Reading => ({
  ...reading,
  qualifier: null,
  value,
  ...(reading.quantity === 'pilot' ? { high: value } : {}),
});

/**
 * The readings without which the finding would be another, by their places among all of the attempt, in order; where no
 * single one decides it, those whose other value would. None where it was seen or heard, where several say the same, or where
 * the line is not one to be judged.
 */
export function restsOn(run: Run, action: TestAction, sitting: Sitting, line: string): readonly number[] {
  const expectation = action.expectations(run.papers).find(({ id }) => id === line);
  if (expectation === undefined) return [];
  const observed = observedAsTyped(run, sitting);
  const finding = expectation.judge(observed);
  /** Whether it is found otherwise with other readings in the place of one. */
  const tells = (of: Reading, others: readonly Reading[]): boolean => {
    const samples = observed.samples.map((sample) => ({
      ...sample,
      readings: sample.readings.flatMap((reading) => (reading === of ? others : [reading])),
    }));
    return expectation.judge({ ...observed, samples }) !== finding;
  };
  // The same readings in the same order, as they were typed.
  const typed = observed.samples.flatMap((sample) => sample.readings);
  const own = readingsIn(run, sitting).flatMap(({ index }, i) => {
    const reading = typed[i];
    return reading === undefined ? [] : [{ index, reading }];
  });
  const deciding = own.filter(({ reading }) => tells(reading, []));
  const found =
    deciding.length > 0
      ? deciding
      : own.filter(({ reading }) => OTHERWISE.some((value) => tells(reading, [withFigure(reading, value)])));
  return found.map(({ index }) => index);
}
