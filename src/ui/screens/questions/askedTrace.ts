/** The traces of questions, as the bench's own plots take them. */
import type { AskedTrace, PilotPicture } from '../../../quiz/question.ts';
import type { Trace } from '../../drawing/traces/trace.ts';
import { roundNumbers } from '../../drawing/traces/trace.ts';
import { figure, timeText } from '../../format/figures.ts';

type Lines = Pick<Trace, 'title' | 'time' | 'level' | 'levels' | 'levelText' | 'dimension'>;

const PEAKS = [12, 9, 6, 3, 0].map((value) => ({ value, text: value === 12 ? '12 V' : String(value) }));
const SUPPLIED = [
  { value: 1, text: '> 50 V' },
  { value: 0, text: '≤ 50 V' },
];

export function askedTrace({ of, levels, to }: AskedTrace): Lines {
  const unit = of === 'outlet' ? 'ms' : 's';
  const factor = unit === 'ms' ? 1000 : 1;
  const numbers = roundNumbers(0, to * factor, 6);
  const [first = { at: 0, value: 0 }, ...rest] = levels;
  return {
    title: of === 'outlet' ? 'outlet against time, L to N' : 'pilot’s positive peak against time, CP to PE',
    time: {
      unit,
      decimals: unit === 'ms' ? 0 : 1,
      from: 0,
      to,
      ticks: numbers.map((number, i) => ({
        value: number / factor,
        text: i === numbers.length - 1 ? `${number} ${unit}` : String(number),
      })),
    },
    level: of === 'outlet' ? { from: -0.4, to: 1.4, ticks: SUPPLIED } : { from: 0, to: 13.5, ticks: PEAKS },
    levels: [first, ...rest],
    levelText: (value) =>
      of === 'outlet' ? (value === 1 ? 'over 50 V' : 'not over 50 V') : figure(value, 'V', 1),
    dimension: null,
  };
}

/** Two periods of the pilot. */
export function pilotPicture({ high, low, period, highFor }: PilotPicture): Lines {
  const to = 0.002;
  const halves = [0, 1, 2].flatMap((i) => [
    { at: i * period, value: high },
    { at: i * period + highFor, value: low },
  ]);
  return {
    title: 'control pilot against time, CP to PE',
    time: {
      unit: 'ms',
      decimals: 3,
      from: 0,
      to,
      ticks: [
        { value: 0, text: '0' },
        { value: 0.001, text: '1' },
        { value: 0.002, text: '2 ms' },
      ],
    },
    level: {
      from: -13.5,
      to: 13.5,
      ticks: [12, 0, -12].map((value) => ({
        value,
        text: value === 0 ? '0' : value > 0 ? '+12 V' : '−12',
      })),
    },
    levels: [{ at: -period, value: low }, ...halves],
    levelText: (value) => figure(value, 'V', 2),
    dimension: { name: 'period', from: 0, to: period },
  };
}

export const momentText = ({ time }: Lines, at: number): string => timeText(at, time.unit, time.decimals);
export type { Lines };
