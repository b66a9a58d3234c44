/** The opened unit with the place of what is wrong, filled and ringed, and those of what reads the same, open. */
import { useId, useMemo } from 'react';
import type { Moment } from '../../../attempt/opened/moment.ts';
import { lookInside } from '../../../attempt/opened/moment.ts';
import { solvedNow } from '../../../attempt/opened/potentials.ts';
import { rootsOf } from '../../../attempt/opened/roots.ts';
import type { TableRow } from '../../../fairness/view.ts';
import { withFaults } from '../../../faults/catalogue.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { benchOf, papersOf, soundPartsOf } from '../../../scenario/scenario.ts';
import { causesTitle } from '../../../words/causeTitles.ts';
import { openedLayout, spotOf, WIDTH } from '../../drawing/opened/layout.ts';
import { Inside } from '../../drawing/opened/OpenedUnit.tsx';

interface Props {
  readonly scenario: Scenario;
  readonly rows: readonly TableRow[];
}

interface Marked {
  readonly number: number;
  readonly isOwn: boolean;
  readonly x: number;
  readonly y: number;
  /** How many stand at this spot before it. */
  readonly before: number;
}

export function Places({ scenario, rows }: Props) {
  const title = useId();
  const papers = papersOf(scenario);
  const layout = openedLayout(papers);
  const moment = useMemo(() => restingMoment(scenario), [scenario]);
  const marks = useMemo(() => marksOf(scenario, rows), [scenario, rows]);
  const named = rows.filter(({ of }) => of !== 'sound');
  if (named.length === 0) return null;
  return (
    <svg
      className="opened places"
      viewBox={`0 0 ${WIDTH} ${layout.height}`}
      role="img"
      aria-labelledby={title}
    >
      <title id={title}>
        {`Drawing of the unit with its cover off. ${named
          .map(
            ({ causes, of }, i) => `${i + 1}${of === 'own' ? ', what is wrong' : ''}: ${causesTitle(causes)}`,
          )
          .join('. ')}`}
      </title>
      <Inside papers={papers} layout={layout} moment={moment} />
      {marks.map(({ number, isOwn, x, y, before }) => (
        <g key={number}>
          {isOwn ? <circle className="ringed" cx={x} cy={y} r={20} /> : null}
          <circle
            className={isOwn ? 'ring-number' : 'place-open'}
            cx={numberX(x, before)}
            cy={y - 17}
            r={9}
          />
          <text
            className={isOwn ? 'ring-number-text' : 'place-open-text'}
            x={numberX(x, before)}
            y={y - 12.5}
            textAnchor="middle"
          >
            {number}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** Beside each other where several stand at one spot, inside the drawing. */
const numberX = (x: number, before: number): number =>
  Math.min(WIDTH - 10, Math.max(10, x + 17 + 20 * before));

/** The sound bench as it is found, without its potentials: nothing was measured. */
function restingMoment(scenario: Scenario): Moment {
  const world = benchOf({ ...scenario, handover: null }, []);
  const look = lookInside(world, solvedNow(world, null));
  return { ...look, volts: {}, met: [], heard: [], refused: null, found: [] };
}

function marksOf(scenario: Scenario, rows: readonly TableRow[]): readonly Marked[] {
  const layout = openedLayout(papersOf(scenario));
  const sound = soundPartsOf(scenario);
  const marks: Marked[] = [];
  for (const [i, { faults, of }] of rows.entries()) {
    if (of === 'sound') continue;
    const [root] = rootsOf(withFaults(sound, faults), sound);
    const spot = root === undefined ? null : spotOf(layout, root.place);
    if (spot === null) continue;
    const before = marks.filter(({ x, y }) => x === spot.x && y === spot.y).length;
    marks.push({ number: i + 1, isOwn: of === 'own', ...spot, before });
  }
  return marks;
}

/** The same number in a table. */
export const PlaceNumber = ({ number, isOwn }: { readonly number: number; readonly isOwn: boolean }) => (
  <span className={isOwn ? 'place-number own' : 'place-number'}>{number}</span>
);
