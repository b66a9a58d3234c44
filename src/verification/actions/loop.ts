/** Test action `loop`: loop impedance at the outlet. */
import { LOW_TEST_CURRENT } from '../../bench/instruments/loopTester.ts';
import { NON_TRIPPING_SHARE } from '../../laws/residualLimits.ts';
import { linesOf } from '../../site/site.ts';
import { unplug, untilSupplied } from '../offer.ts';
import { rulesFor } from '../rules/rules.ts';
import { loop as loopTest, outletVoltages } from '../steps.ts';
import type { Papers, Procedure } from '../testAction.ts';
import { suppliedAgain } from './residual.ts';

/** Whether a residual device in the way is so small that the low-current test, above half its rating, may open it. */
export const answersToTest = ({ site, sheet }: Papers): boolean =>
  LOW_TEST_CURRENT >
  NON_TRIPPING_SHARE *
    Math.min(site.circuit.residualDevice?.rated ?? Infinity, sheet.residual.rated ?? Infinity);

export const loop: Procedure = {
  id: 'loop',
  stage: 'protection',
  from: 'energised',
  leaves: 'energised',
  needsSupply: true,
  restsOn: ['supply', 'earthing', 'breaker', 'circuit', 'unit-earth', 'outlet', 'contactor', 'filter'],
  applies: () => true,
  steps: (papers) => [
    ...untilSupplied(papers),
    ...outletVoltages(papers),
    ...linesOf(papers.site).flatMap((x) => [
      loopTest(`outlet.${x}`, 'outlet.PE'),
      ...(answersToTest(papers) ? suppliedAgain(papers, 'residual') : []),
    ]),
    ...linesOf(papers.site).map((x) => loopTest(`outlet.${x}`, 'outlet.N')),
    ...unplug,
  ],
  untold: (papers) => [
    {
      id: 'device-acts',
      toldBy: [
        'residual-origin',
        'residual-rated',
        'residual-five',
        'residual-ramp',
        'half-wave',
        'residual-again',
      ],
      of: 'circuit',
      source: rulesFor(papers).regulation('643.7, 643.8'),
    },
  ],
};
