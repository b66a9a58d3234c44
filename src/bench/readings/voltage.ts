/** R.m.s. voltage between two leads, and its d.c. part. */
import { quantityOf } from './quantity.ts';
import { bandOn, figuresOn, onScale, type Scale } from './scale.ts';

const ALTERNATING: Scale = { gain: 0.01, digits: 1, spans: [{ to: 700, step: 1 }] };
const DIRECT: Scale = { ...ALTERNATING, signed: true };

export const voltage = quantityOf({
  quantity: 'voltage',
  unit: 'V',
  shown: (truth, { dc }, key, draw) => {
    const figures = figuresOn(ALTERNATING, truth, 'voltage', key, draw);
    return figures.value === null || dc === undefined
      ? figures
      : { ...figures, dc: onScale(DIRECT, dc, 'voltage', `${key} dc`, draw).value };
  },
  band: (truth, { dc }) => ({
    told: '',
    figures: [bandOn(ALTERNATING, 'value', truth), ...(dc === undefined ? [] : [bandOn(DIRECT, 'dc', dc)])],
  }),
  display: () => ({ unit: 'V', decimals: 0 }),
  typedIn: ['V', 'mV'],
});
