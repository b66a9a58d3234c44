/** Draw one: a job that can be solved, by level, families of causes, minutes and a seed, always the same for the same. */
import { useState } from 'react';
import type { Level } from '../../../fairness/make.ts';
import type { Family } from '../../../faults/families.ts';
import { FAMILIES } from '../../../faults/families.ts';
import { FAMILY_WORDS } from '../../../words/topics.ts';
import { anySeed } from '../../flow/aimLinks.ts';
import { useDrawing } from '../../flow/useWeigher.ts';
import { figureWithin, rangeText } from '../../format/ranges.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Keys } from '../../parts/Keys.tsx';
import { TextField } from '../../parts/TextField.tsx';
import type { JobFile } from './jobFile.ts';
import { LEVEL_WORDS } from './levels.ts';

const LEVELS = ['1', '2', '3'] as const;
const MINUTES = { least: 3, greatest: 240, unit: 'minutes' };
const SEEDS = { least: 0, greatest: 2_147_483_647, unit: '' };

export function DrawOne({ onDrawn }: { readonly onDrawn: (file: JobFile) => void }) {
  const { isDrawing, draw, cancel } = useDrawing();
  const [level, setLevel] = useState<(typeof LEVELS)[number]>('1');
  const [family, setFamily] = useState('');
  const [minutes, setMinutes] = useState('');
  const [seed, setSeed] = useState(() => String(anySeed()));
  const [said, setSaid] = useState<string | null>(null);
  const isTimed = minutes.trim() === '' || figureWithin(minutes, MINUTES) !== null;
  const isSeeded = figureWithin(seed, SEEDS) !== null && Number.isInteger(Number(seed));
  return (
    <form
      className="stack"
      aria-labelledby="draw-heading"
      onSubmit={(event) => {
        event.preventDefault();
        if (isDrawing || !isTimed || !isSeeded) return;
        setSaid(null);
        draw(
          {
            level: Number(level) as Level,
            seed: Number(seed),
            families: family === '' ? [] : [family as Family],
            minutes: figureWithin(minutes, MINUTES),
          },
          (file) =>
            file === null
              ? setSaid(
                  'No job like that was drawn. Another seed, more minutes or another family may give one.',
                )
              : onDrawn(file as JobFile),
          (why) => setSaid(`It could not be drawn: ${why}`),
        );
      }}
    >
      <h2 id="draw-heading">Draw one</h2>
      <Keys legend="level" options={LEVELS} words={LEVEL_WORDS} value={level} onChange={setLevel} />
      <Choice
        above
        label="family of causes"
        none="any, or nothing wrong"
        options={FAMILIES.map((one) => [one, FAMILY_WORDS[one]] as const)}
        value={family}
        onChange={setFamily}
      />
      <TextField
        label="minutes at most (may stay empty)"
        numeric
        value={minutes}
        error={isTimed ? null : rangeText(MINUTES)}
        onChange={setMinutes}
      />
      <TextField
        label="seed: the same one draws the same job"
        numeric
        value={seed}
        error={isSeeded ? null : 'A whole number from 0 is expected.'}
        onChange={setSeed}
      />
      <div className="acts">
        <button type="submit" disabled={isDrawing}>
          Draw one
        </button>
        {isDrawing ? (
          <button type="button" onClick={cancel}>
            Cancel
          </button>
        ) : null}
      </div>
      <p className="note" role="status">
        {isDrawing ? 'Drawing, and trying whether it can be solved …' : (said ?? '')}
      </p>
    </form>
  );
}
