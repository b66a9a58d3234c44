/** The foot of a page: the way to the other pages, the switch for light and dark, and how long waits last. */
import { memo } from 'react';
import { Link } from 'wouter';
import { PaceSwitch } from './PaceSwitch.tsx';
import { ThemeSwitch } from './Theme.tsx';

export const Foot = memo(function Foot() {
  return (
    <footer className="foot">
      <FootLinks />
    </footer>
  );
});

/** The same on a sheet, which is no page. */
export const FootLinks = memo(function FootLinks() {
  return (
    <>
      <Link href="/">Home</Link>
      <Link href="/jobs">Scenarios</Link>
      <Link href="/record">My record</Link>
      <Link href="/sources">Sources</Link>
      <Link href="/words">Words</Link>
      <Link href="/accessibility">Accessibility</Link>
      <ThemeSwitch />
      <PaceSwitch />
      <span>Nothing leaves this device unless you export it.</span>
    </>
  );
});
