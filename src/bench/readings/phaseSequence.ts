/** The order of three lines: 1 as marked, −1 the other way round. An order has no error. */
import { quantityOf } from './quantity.ts';

export const phaseSequence = quantityOf({
  quantity: 'phase-sequence',
  unit: '',
  shown: (truth) => ({ value: truth, uncertainty: 0, qualifier: null }),
  band: (truth) => ({ told: String(truth), figures: [] }),
  display: () => ({ unit: '', decimals: 0 }),
  typedIn: [''],
});
