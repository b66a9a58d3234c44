/**
 * The course of the attempt over bench time: tests by number, the outlet's voltage on this unit and on the twin, and
 * how many causes were left. A press on it goes to the nearest step; the table below it says the same.
 */

import type { PointerEvent } from 'react';
import { memo, useEffect, useId, useRef, useState } from 'react';
import type { Elimination } from '../../../attempt/opened/elimination.ts';
import type { Timeline } from '../../../attempt/opened/timeline.ts';
import type { Lockstep } from '../../../attempt/opened/twin.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Course } from './course.ts';
import { courseOf, SQUARE } from './course.ts';
import { CAUSES, Causes, LANE, Lane } from './TimeLanes.tsx';

interface Props {
  readonly lockstep: Lockstep;
  readonly timeline: Timeline;
  readonly elimination: Elimination | null;
  readonly step: number;
  readonly concluded: boolean;
  readonly onStep: (step: number) => void;
}

/** From this width on, names stand beside their lanes instead of above them. */
const WIDE = 560;
const NAMES = 108;

export const TimeLine = memo(function TimeLine({
  lockstep,
  timeline,
  elimination,
  step,
  concluded,
  onStep,
}: Props) {
  const [box, width] = useWidth();
  const title = useId();
  const isWide = width >= WIDE;
  const left = isWide ? NAMES : 2;
  const course = courseOf(timeline, left, width - (concluded ? 30 : 12));
  const above = isWide ? 0 : 16;
  const squares = 22;
  const unit = squares + course.rows * (SQUARE + 2) + 14 + above;
  const twin = unit + LANE + 14 + above;
  const causes = twin + LANE + 16 + above;
  const axis = causes + CAUSES + 20;
  const now = course.x(lockstep.steps[step]?.unit.at ?? 0);
  const press = (event: PointerEvent<SVGSVGElement>) => {
    const from = event.currentTarget.getBoundingClientRect().left;
    onStep(nearestStep(lockstep, course, event.clientX - from));
  };
  return (
    <div ref={box}>
      <svg
        className="course"
        viewBox={`0 0 ${width} ${axis + 24}`}
        height={axis + 24}
        role="img"
        aria-labelledby={title}
        onPointerDown={press}
      >
        <title id={title}>Time line of the attempt; the table “Time line in figures” says the same</title>
        <Hatching />
        <path className="cursor" d={`M${now} 4V${axis}`} />
        <Squares course={course} top={squares} step={step} />
        {concluded ? <Concluded x={course.right + 18} y={squares + SQUARE / 2} /> : null}
        <Lane
          name="this unit"
          note="outlet to PE"
          y={unit}
          course={course}
          levels={lockstep.levels.unit}
          end={timeline.end}
          isWide={isWide}
        />
        <Lane
          name="correct twin"
          note="outlet to PE"
          y={twin}
          course={course}
          levels={lockstep.levels.twin}
          end={timeline.end}
          isWide={isWide}
        />
        <Causes
          y={causes}
          course={course}
          lockstep={lockstep}
          elimination={elimination}
          step={step}
          isWide={isWide}
        />
        <Axis y={axis} course={course} isWide={isWide} />
        <CursorText x={now} width={width} lockstep={lockstep} timeline={timeline} step={step} />
      </svg>
      <p className="lettering">
        <span aria-hidden="true">■</span> sure and wrong in this test · hatched: live, more than 50 V through
        a two-pole detector{timeline.tests.length === 0 ? ' · no test was done' : ''}
      </p>
    </div>
  );
});

/** The width at hand, CSS px. */
function useWidth(): [React.RefObject<HTMLDivElement | null>, number] {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(640);
  useEffect(() => {
    const { current } = box;
    if (current === null) return;
    const take = () => setWidth(Math.max(280, Math.floor(current.clientWidth)));
    take();
    const observer = new ResizeObserver(take);
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return [box, width];
}

function nearestStep({ steps }: Lockstep, { x }: Course, at: number): number {
  let best = 0;
  for (const [i, { unit }] of steps.entries())
    if (Math.abs(x(unit.at) - at) < Math.abs(x(steps[best]?.unit.at ?? 0) - at)) best = i;
  return best;
}

/** 45° lines for what is live. */
function Hatching() {
  return (
    <defs>
      <pattern
        id="live-hatch"
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path className="hatch" d="M0 0V6" />
      </pattern>
    </defs>
  );
}

function Squares({
  course,
  top,
  step,
}: {
  readonly course: Course;
  readonly top: number;
  readonly step: number;
}) {
  const bottom = top + course.rows * (SQUARE + 2) + 8;
  const yOf = (row: number) => top + row * (SQUARE + 2);
  return (
    <>
      {course.squares.map(({ mark, x, row }) => (
        <path
          key={mark.test}
          className="stem"
          d={`M${x + SQUARE / 2} ${yOf(row) + SQUARE}L${course.x(mark.at)} ${bottom}`}
        />
      ))}
      {course.squares.map(({ mark, x, row }) => {
        const kind = [
          mark.wrong.length > 0 ? 'wrong' : '',
          step >= mark.first && step <= mark.last ? 'now' : '',
        ]
          .filter((name) => name !== '')
          .join(' ');
        return (
          <g key={mark.test}>
            <rect className={`mark ${kind}`} x={x} y={yOf(row)} width={SQUARE} height={SQUARE} />
            <text className={`mark-text ${kind}`} x={x + SQUARE / 2} y={yOf(row) + 14.5} textAnchor="middle">
              {mark.number}
            </text>
          </g>
        );
      })}
    </>
  );
}

/** Where the attempt was concluded: it takes no bench time. */
function Concluded({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <>
      <path className="end" d={`M${x} ${y - 13}l13 13l-13 13l-13 -13z`} />
      <text className="mark-text wrong" x={x} y={y + 4.5} textAnchor="middle">
        C
      </text>
    </>
  );
}

function Axis({
  y,
  course,
  isWide,
}: {
  readonly y: number;
  readonly course: Course;
  readonly isWide: boolean;
}) {
  return (
    <>
      {isWide ? (
        <text x={0} y={y + 17}>
          bench time
        </text>
      ) : null}
      <path className="tick" d={`M${course.left} ${y}H${course.right}`} />
      {course.ticks.map((tick, i) => {
        const x = course.x(tick);
        return (
          <g key={tick}>
            <path className="tick" d={`M${x} ${y}v5`} />
            <text x={x} y={y + 17} textAnchor={i === 0 ? 'start' : x > course.right - 14 ? 'end' : 'middle'}>
              {benchTime(tick)}
            </text>
          </g>
        );
      })}
    </>
  );
}

interface CursorTextProps {
  readonly x: number;
  readonly width: number;
  readonly lockstep: Lockstep;
  readonly timeline: Timeline;
  readonly step: number;
}

function CursorText({ x, width, lockstep, timeline, step }: CursorTextProps) {
  const mark = timeline.tests.find(({ first, last }) => step >= first && step <= last);
  const text = `${benchTime(lockstep.steps[step]?.unit.at ?? 0)} ${mark === undefined ? 'as found' : width < WIDE ? `test ${mark.number}` : `${mark.number} ${testTitle(mark.test)}`}`;
  const toLeft = x > width / 2;
  return (
    <text className="bold edged" x={toLeft ? x - 5 : x + 5} y={14} textAnchor={toLeft ? 'end' : 'start'}>
      {text}
    </text>
  );
}
