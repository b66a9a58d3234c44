/** The choice of how long a wait on the bench lasts for the person who sits here. */
import { useState } from 'react';
import { keepPace, keptPace, PACES, type Pace } from '../../store/pace.ts';
import { Choice } from './Choice.tsx';

const WORDS: Readonly<Record<Pace, string>> = {
  'at once': 'pass at once',
  'as it lasts': 'last as on site (×1)',
  'with extra time': 'last twice as long (extra time)',
};

export function PaceSwitch() {
  const [pace, setPace] = useState<Pace>(keptPace);
  return (
    <Choice
      label="Waits"
      options={PACES.map((name) => [name, WORDS[name]])}
      value={pace}
      onChange={(value) => {
        const chosen = PACES.find((name) => name === value) ?? 'at once';
        keepPace(chosen);
        setPace(chosen);
      }}
    />
  );
}
