/** The instruments as tiles, by symbol and word: one is taken, and its leads go on. No settings, no order. */
import { useState } from 'react';
import type { Stage } from '../../../verification/testAction.ts';
import type { InstrumentChoice } from '../../flow/measurement.ts';
import { INSTRUMENT_CHOICES } from '../../flow/measurement.ts';
import { useMatches } from '../../flow/useMatches.ts';

/** The word under each tile; its whole name is read aloud. */
const SHORT: Readonly<Record<InstrumentChoice, string>> = {
  'two-pole': 'detector',
  meter: 'meter',
  continuity: 'continuity',
  insulation: 'insulation',
  pilot: 'pilot',
  coding: 'coding',
  loop: 'loop',
  residual: 'residual',
  'opening-time': 'time',
  electrode: 'electrode',
  'phase-sequence': 'rotation',
};

/** What stands in the instrument's circle (IEC 60617-8: a measuring instrument by the symbol of what it measures): letters, or a line. */
const LETTERS: Readonly<Partial<Record<InstrumentChoice, string>>> = {
  'two-pole': 'V',
  meter: 'V~',
  continuity: 'Ω',
  insulation: 'MΩ',
  coding: 'PP',
  loop: 'Z',
  residual: 'IΔ',
  electrode: 'RA',
  'phase-sequence': '123',
};
const LINES: Readonly<Partial<Record<InstrumentChoice, string>>> = {
  pilot: 'M5 15h4V8h5v7h4',
  'opening-time': 'M5 8h6v7h7',
};

/** Those that tests of a stage mostly take, first; which of them a test takes is for the trainee to say. */
const FIRST: Readonly<Record<Stage, readonly InstrumentChoice[]>> = {
  'before power': ['two-pole', 'continuity', 'insulation', 'coding', 'electrode'],
  'with power': ['two-pole', 'pilot', 'loop', 'opening-time', 'phase-sequence'],
  protection: ['two-pole', 'loop', 'residual', 'pilot', 'meter'],
  'fault response': ['two-pole', 'pilot', 'opening-time', 'residual', 'coding'],
};

/** There is room for all of them: in a desk’s column, and in a row of a tablet. */
const ROOM_FOR_ALL = '(min-width: 60rem), (min-width: 48rem) and (min-height: 40rem)';

interface Props {
  readonly stage: Stage;
  readonly value: InstrumentChoice | '';
  readonly onTake: (instrument: InstrumentChoice) => void;
}

export function Tiles({ stage, value, onTake }: Props) {
  const [isUnfolded, setUnfolded] = useState(false);
  const isAll = useMatches(ROOM_FOR_ALL) || isUnfolded;
  const first = FIRST[stage];
  const ordered = [
    ...first.flatMap((name) => INSTRUMENT_CHOICES.filter(([other]) => other === name)),
    ...INSTRUMENT_CHOICES.filter(([name]) => !first.includes(name)),
  ];
  // The one that is taken is always in sight, in place of the last of the row.
  const row = first.some((name) => name === value) || value === '' ? first : [...first.slice(0, -1), value];
  const shown = ordered.filter(([name]) => isAll || row.includes(name));
  return (
    <fieldset>
      <legend className="unseen">instrument</legend>
      <div className={isAll ? 'tiles all' : 'tiles'}>
        {shown.map(([name, words]) => (
          <label key={name} className="tile">
            <input
              type="radio"
              name="instrument"
              value={name}
              aria-label={words}
              checked={value === name}
              onChange={() => onTake(name)}
            />
            <svg viewBox="0 0 24 24" aria-hidden="true">
              <circle cx="12" cy="12" r="11" />
              {LETTERS[name] === undefined ? (
                <path d={LINES[name]} />
              ) : (
                <text x="12" y="15.5" textAnchor="middle">
                  {LETTERS[name]}
                </text>
              )}
            </svg>
            <span aria-hidden="true">{SHORT[name]}</span>
          </label>
        ))}
        {isAll ? null : (
          <button type="button" className="tile" onClick={() => setUnfolded(true)}>
            {ordered.length - shown.length} more
          </button>
        )}
      </div>
    </fieldset>
  );
}
