/** Loop impedance from a line, and the current into a short there. */
import type { Ohms, Volts } from '../../laws/quantities.ts';
import { ohmsShown } from './display.ts';
import { quantityOf } from './quantity.ts';
import { bandOn, figuresOn, OHMS, type Scale } from './scale.ts';

const LOW: Scale = { gain: 0.05, digits: 0.03, spans: OHMS };
/** From here up a loop reading has no digits' error worth counting (contract), Ω. */
const HIGH_FROM: Ohms = 20;
const HIGH: Scale = { ...LOW, digits: 0 };
/** The scale on which a loop of so much is shown. */
export const loopScaleAt = (truth: Ohms): Scale => (truth >= HIGH_FROM ? HIGH : LOW);

/** What the display divides by what it shows, as far down as it shows a loop at all. */
const NOMINAL: Volts = 230;
const LEAST: Ohms = 0.01;

export const loop = quantityOf({
  quantity: 'loop',
  unit: 'Ω',
  shown: (truth, _, key, draw) => {
    const figures = figuresOn(loopScaleAt(truth), truth, 'loop', key, draw);
    return figures.value === null
      ? figures
      : { ...figures, prospective: Math.round(NOMINAL / Math.max(LEAST, figures.value)) };
  },
  band: (truth) => ({ told: '', figures: [bandOn(loopScaleAt(truth), 'value', truth)] }),
  display: ohmsShown,
  typedIn: ['Ω', 'kΩ'],
});
