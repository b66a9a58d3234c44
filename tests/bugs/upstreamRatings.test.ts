/**
 * With no a.c. device in the unit the one upstream is tested. Every one that a scenario may have is verified to its end
 * on a sound installation, and nothing is found but what its papers lack. Five times 0.5 A was more than an operation
 * took, and ended the program; a delayed device was blamed for steps of the ramp that are shorter than its delay; one of
 * 10 mA for answering to 10 mA; one of 0.3 A on TT for a test current that the electrode made less than was set.
 */
import { describe, expect, test } from 'vitest';
import type { Amps } from '../../src/laws/quantities.ts';
import type { DeviceType } from '../../src/laws/residualLimits.ts';
import { DELAYS, DEVICE_TYPES } from '../../src/laws/residualLimits.ts';
import { RESIDUAL_RATINGS } from '../../src/scenario/schema.ts';
import { verify } from '../../src/scenario/verify.ts';
import type { Site } from '../../src/site/site.ts';
import type { UnitSheet } from '../../src/unit/design.ts';
import { scenarioOf } from '../scenario/build.ts';

/** What is not as it should be: broken, outside a limit, or the end of the work; with what was not shown. */
function found(site: Partial<Site['circuit']>, residual: UnitSheet['residual'], earthing: 'TN-S' | 'TT') {
  const electrodeResistance = earthing === 'TT' ? 80 : null;
  const { stopped, actions } = verify(
    scenarioOf({ site: { earthing, electrodeResistance, circuit: site }, sheet: { residual } }),
  );
  const of = (finding: string) =>
    actions.flatMap(({ action, expectations }) =>
      expectations.flatMap((e) => (e.finding === finding ? [`${action.id} ${e.expectation.id}`] : [])),
    );
  const outside = actions.flatMap(({ action, limits }) =>
    limits.flatMap(({ pass, limit }) => (pass ? [] : [`${action.id} ${limit.id}`])),
  );
  return { stopped, wrong: [...of('broken'), ...outside], notShown: of('not shown') };
}

/** 50 V along the electrode are more than a test current may make of it. */
const isPushed = (amps: Amps): boolean => amps * 82 <= 50;

/** BS 7671:2018+A2:2022 722.531.3.101: 30 mA at most, and no type AC. */
const lackingIn = (type: DeviceType, rated: Amps): readonly string[] => [
  ...(rated > 0.03 || type === 'AC' ? ['papers additional'] : []),
  ...(type === 'AC' ? ['papers type-ac'] : []),
];

/** A type AC device may be deaf to half-waves, which ends the work: it is the very reason why it is not for here. */
const butForDeafness = (type: DeviceType, { wrong, stopped }: ReturnType<typeof found>) => ({
  wrong: wrong.filter((line) => type !== 'AC' || !line.startsWith('half-wave')),
  stopped: type === 'AC' && stopped?.action === 'half-wave' ? null : stopped,
});

describe.each(['TN-S', 'TT'] as const)('%s', (earthing) => {
  describe.each(DEVICE_TYPES)('type %s upstream', (type) => {
    test.each(RESIDUAL_RATINGS.flatMap((rated) => DELAYS.map((delay) => ({ rated, delay }))))(
      '$rated A, $delay',
      ({ rated, delay }) => {
        const device = { type, rated, delay, poles: 2 as const };
        const result = found(
          { residualDevice: device },
          { type: null, rated: null, by: null, direct: 'protective' },
          earthing,
        );
        expect(butForDeafness(type, result)).toEqual({ wrong: lackingIn(type, rated), stopped: null });
        if (earthing === 'TN-S' || isPushed(5 * rated)) expect(result.notShown).toEqual([]);
      },
    );
  });

  test.each(DEVICE_TYPES.flatMap((type) => RESIDUAL_RATINGS.map((rated) => ({ type, rated }))))(
    'type $type of $rated A in the unit',
    ({ type, rated }) => {
      const residual = { type, rated, by: 'contactor', direct: 'protective' } as const;
      const upstream = { type: 'A', rated: 0.3, delay: 'S', poles: 2 } as const;
      const result = found({ residualDevice: earthing === 'TT' ? upstream : null }, residual, earthing);
      expect(butForDeafness(type, result)).toEqual({ wrong: lackingIn(type, rated), stopped: null });
    },
  );
});
