/** The switch between light and dark: as the device has it until somebody chooses. */
import { useEffect } from 'react';
import { THEME, type Theme } from '../../store/choices.ts';
import { ChoiceSwitch } from './ChoiceSwitch.tsx';

const WORDS: Readonly<Record<Theme, string>> = { device: 'as the device', light: 'light', dark: 'dark' };

function show(theme: Theme): void {
  const { dataset } = document.documentElement;
  if (theme === 'device') delete dataset.theme;
  else dataset.theme = theme;
}

export function ThemeSwitch() {
  useEffect(() => {
    show(THEME.kept());
  }, []);
  return <ChoiceSwitch label="Paper" choice={THEME} words={WORDS} onChange={show} />;
}
