/**
 * The frame of a full sheet: zones 1 to 4 and A to C, so that people can say where to look, and the title block. On a
 * small screen the style sheet leaves a plain frame of it. The record's code is not here: its chain begins with the
 * whole scenario, so it would differ with what is wrong before anything was measured.
 */
import type { ReactNode } from 'react';
import type { Bench } from '../flow/bench.ts';
import { TitleBlock } from '../parts/TitleBlock.tsx';

interface Props {
  readonly bench: Bench;
  readonly standing: string;
  /** What is kept of it. */
  readonly record: string;
  readonly children: ReactNode;
}

const ACROSS = ['1', '2', '3', '4'] as const;
const DOWN = ['A', 'B', 'C'] as const;

export function Frame({ bench, standing, record, children }: Props) {
  const { scenario } = bench.run;
  return (
    <div className="frame">
      <Zones names={ACROSS} className="zones across above" />
      <Zones names={DOWN} className="zones down before" />
      <div className="frame-inner">
        {children}
        <TitleBlock
          rows={[
            ['job', scenario.title],
            ['rules', scenario.rules],
            ['drawn at', standing],
            ['record', record],
          ]}
        />
      </div>
      <Zones names={DOWN} className="zones down behind" />
      <Zones names={ACROSS} className="zones across below" />
    </div>
  );
}

const Zones = ({ names, className }: { readonly names: readonly string[]; readonly className: string }) => (
  <div className={className} aria-hidden="true">
    {names.map((name) => (
      <span key={name}>{name}</span>
    ))}
  </div>
);
