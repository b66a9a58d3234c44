/** R.m.s. voltage between two leads, and its d.c. part. */
import * as v from 'valibot';
import { between, measuring, pair } from './fields.ts';
import { quantityOf } from './quantity.ts';
import { bandOn, figuresOn, onScale, type Scale } from './scale.ts';

export const VOLTAGE_TOOLS = ['two-pole', 'meter'] as const;
export type VoltageTool = (typeof VOLTAGE_TOOLS)[number];

const ALTERNATING: Scale = { gain: 0.01, digits: 1, spans: [{ to: 700, step: 1 }] };
const DIRECT: Scale = { ...ALTERNATING, signed: true };

export const voltage = quantityOf({
  quantity: 'voltage',
  unit: 'V',
  measurement: measuring('voltage', { between, tool: v.optional(v.picklist(VOLTAGE_TOOLS), 'two-pole') }),
  fields: { between: pair, tool: v.picklist(VOLTAGE_TOOLS), dc: v.number() },
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
