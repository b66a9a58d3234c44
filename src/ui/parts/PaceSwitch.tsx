/** The choice of how long a wait on the bench lasts for the person who sits here. */
import { PACE, type Pace } from '../../store/choices.ts';
import { ChoiceSwitch } from './ChoiceSwitch.tsx';

const WORDS: Readonly<Record<Pace, string>> = {
  'at once': 'pass at once',
  'as it lasts': 'last as on site (×1)',
  'with extra time': 'last twice as long (extra time)',
};

export const PaceSwitch = () => <ChoiceSwitch label="Waits" choice={PACE} words={WORDS} />;
