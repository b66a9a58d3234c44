/**
 * A sound unit meets every expectation of it, whatever it is, wherever it hangs: hundreds drawn at random for one kind of
 * site. A file a kind, so that they run side by side.
 */
import { expect, test } from 'vitest';
import { type Verified, verify } from '../../../src/scenario/verify.ts';
import { scenarioOf } from '../../scenario/build.ts';
import { type Configuration, type Kind, sampleConfigurations } from '../configurations.ts';

const SEED = 4711;
/** Of each kind of site; `npm run soak` takes the first 500 of the same row. */
const COUNT = Number(process.env.SOUND_UNITS ?? 100);

const verified = ({ site, sheet, seed }: Configuration): Verified =>
  verify(scenarioOf({ site, sheet, seed }));

/** What was not met, of the unit or of the circuit, and unsafe acts: none of them is the fault of a faultless trainee. */
const complaints = ({ actions, stopped }: Verified): readonly string[] => [
  ...actions.flatMap(({ action, expectations, unsafe }) => [
    ...expectations
      .filter(({ finding }) => finding !== 'met')
      .map(({ expectation, finding }) => `${action.id}: ${expectation.id} ${finding}`),
    ...unsafe.map(({ id }) => `${action.id}: unsafe ${id}`),
  ]),
  ...(stopped === null ? [] : [`stopped at ${stopped.action}`]),
];

export const holdSoundUnits = (kind: Kind): void =>
  test(`${COUNT} sound units on sound circuits, ${kind}`, { timeout: 600_000 }, () => {
    let poor = 0;
    let three = 0;
    for (const [i, configuration] of sampleConfigurations(COUNT, SEED, kind).entries()) {
      const verification = verified(configuration);
      expect(
        complaints(verification),
        `configuration ${i}, seed ${SEED}, ${kind}: ${JSON.stringify(configuration)}`,
      ).toEqual([]);
      // A poor site may fail a limit of the circuit, and nothing else: too much loop for its device.
      const failed = verification.actions.flatMap(({ limits }) => limits.filter(({ pass }) => !pass));
      expect(failed.filter(({ limit }) => limit.quantity !== 'loop')).toEqual([]);
      if (failed.length > 0) poor += 1;
      if (configuration.site.phases === 3) three += 1;
    }
    console.log(`${kind}, seed ${SEED}: ${three} on three phases, ${poor} on sites whose loop is too high`);
    // Were every site poor, the sample would show little.
    expect(COUNT - poor).toBeGreaterThan(COUNT / 10);
    expect(three).toBeGreaterThan(COUNT / 4);
  });
