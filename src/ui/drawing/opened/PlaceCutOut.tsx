/**
 * One place of an opened unit, cut out of its drawing, ringed and numbered, with the leads as they stood; under it the
 * same in words. For whoever is told after a test where something sat; never before that.
 */
import { useId } from 'react';
import type { Difference } from '../../../attempt/opened/differences.ts';
import type { Moment } from '../../../attempt/opened/moment.ts';
import type { Side } from '../../../attempt/opened/twin.ts';
import type { Operation } from '../../../bench/operation.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { valueText, whatText } from '../../../words/differences.ts';
import type { Layout, Point } from './layout.ts';
import { openedLayout, spotOf, WIDTH } from './layout.ts';
import { OpenedLeads } from './OpenedLeads.tsx';
import { Inside, Ringed } from './OpenedUnit.tsx';

interface Props {
  /** Whose it is and when, such as `This unit, opened, after S2 opened`. */
  readonly name: string;
  readonly papers: Papers;
  /** Which of the two is shown: the words are that side's. */
  readonly side: Side;
  /** That side's own moment. */
  readonly moment: Moment;
  /** What was measured in it, for the leads; null: none is drawn. */
  readonly operation: Operation | null;
  /** What is ringed, with what it is called and how it stood on either side. */
  readonly difference: Pick<Difference, 'place' | 'what' | Side>;
  /** What the ring is called in the text beside it. */
  readonly number: number;
}

/** At most so large on the page, in CSS pixels: one to a drawing unit. */
export const CUT = { width: 320, height: 160 } as const;

export function PlaceCutOut({ name, papers, side, moment, operation, difference, number }: Props) {
  const title = useId();
  const layout = openedLayout(papers);
  const spot = spotOf(layout, difference.place);
  const from = spot === null ? { x: 0, y: 0 } : cutFrom(layout, spot);
  const words = `${whatText(difference.what)}: ${valueText(difference[side])}`;
  return (
    <figure className="cut-out">
      {spot === null ? null : (
        <svg
          className="opened"
          viewBox={`${from.x} ${from.y} ${CUT.width} ${CUT.height}`}
          role="img"
          aria-labelledby={title}
        >
          <title id={title}>{`${name}. ${number}, ringed: ${words}`}</title>
          <Inside
            papers={papers}
            layout={layout}
            moment={moment}
            across={{ from: from.x, to: from.x + CUT.width }}
          />
          <OpenedLeads layout={layout} moment={moment} operation={operation} />
          <Ringed layout={layout} place={difference.place} number={number} />
        </svg>
      )}
      <figcaption>
        {name}. <strong>{number}</strong> {words}
      </figcaption>
    </figure>
  );
}

/** The corner of the cut: the spot in its middle, as far as the drawing goes. */
function cutFrom({ height }: Layout, { x, y }: Point): Point {
  const from = (middle: number, size: number, whole: number) =>
    Math.max(0, Math.min(whole - size, middle - size / 2));
  return { x: from(x, CUT.width, WIDTH), y: from(y, CUT.height, height) };
}
