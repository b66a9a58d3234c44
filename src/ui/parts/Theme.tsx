/** The switch between light and dark: as the device has it until somebody chooses. */
import { useEffect, useState } from 'react';
import { keepTheme, keptTheme, THEMES, type Theme } from '../../store/theme.ts';
import { Choice } from './Choice.tsx';

const WORDS: Readonly<Record<Theme, string>> = { device: 'as the device', light: 'light', dark: 'dark' };

export function ThemeSwitch() {
  const [theme, setTheme] = useState<Theme>(keptTheme);
  useEffect(() => {
    const { dataset } = document.documentElement;
    if (theme === 'device') delete dataset.theme;
    else dataset.theme = theme;
  }, [theme]);
  return (
    <Choice
      label="Paper"
      options={THEMES.map((name) => [name, WORDS[name]])}
      value={theme}
      onChange={(value) => {
        const chosen = THEMES.find((name) => name === value) ?? 'device';
        keepTheme(chosen);
        setTheme(chosen);
      }}
    />
  );
}
