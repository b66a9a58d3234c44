/** The instruments as tiles, by symbol and word: one is taken, and its leads go on. No settings, no order. */
import type { InstrumentChoice } from '../../flow/measurement.ts';
import { INSTRUMENT_CHOICES } from '../../flow/measurement.ts';

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

interface Props {
  readonly value: InstrumentChoice | '';
  readonly onTake: (instrument: InstrumentChoice) => void;
}

export function Tiles({ value, onTake }: Props) {
  return (
    <fieldset>
      <legend className="unseen">instrument</legend>
      <div className="tiles">
        {INSTRUMENT_CHOICES.map(([name, words]) => (
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
      </div>
    </fieldset>
  );
}
