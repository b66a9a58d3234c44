/** A choice that this device keeps, as a list of its words. */
import { useState } from 'react';
import type { KeptChoice } from '../../store/choices.ts';
import { Choice } from './Choice.tsx';

interface Props<T extends string> {
  readonly label: string;
  readonly choice: KeptChoice<T>;
  readonly words: Readonly<Record<T, string>>;
  readonly onChange?: (word: T) => void;
}

export function ChoiceSwitch<T extends string>({ label, choice, words, onChange }: Props<T>) {
  const [chosen, setChosen] = useState<T>(choice.kept);
  return (
    <Choice
      label={label}
      options={choice.words.map((word) => [word, words[word]])}
      value={chosen}
      onChange={(value) => {
        const word = choice.words.find((one) => one === value) ?? choice.kept();
        choice.keep(word);
        setChosen(word);
        onChange?.(word);
      }}
    />
  );
}
