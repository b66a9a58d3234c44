/** Lanes of the time line: the outlet of one side as a stepped line, live hatched, and how many causes are left. */
import type { Elimination } from '../../../attempt/opened/elimination.ts';
import type { Level, Lockstep } from '../../../attempt/opened/twin.ts';
import type { Course } from './course.ts';
import { spansOf } from './course.ts';
import { betterAt, betterText } from './told.ts';

/** Heights, CSS px. */
export const LANE = 22;
export const CAUSES = 56;

interface LaneNameProps {
  readonly name: string;
  readonly note: string;
  readonly y: number;
  readonly isWide: boolean;
}

function LaneName({ name, note, y, isWide }: LaneNameProps) {
  return isWide ? (
    <>
      <text className="bold" x={0} y={y + 9}>
        {name}
      </text>
      <text x={0} y={y + 24}>
        {note}
      </text>
    </>
  ) : (
    <text x={2} y={y - 4}>
      <tspan className="bold">{name}</tspan> {note}
    </text>
  );
}

interface LaneProps extends LaneNameProps {
  readonly course: Course;
  readonly levels: readonly Level[];
  readonly end: number;
}

/** Dead below, live above and hatched. */
export function Lane({ name, note, y, isWide, course, levels, end }: LaneProps) {
  const spans = spansOf(levels, end);
  const height = ({ live }: { readonly live: boolean }) => (live ? y : y + LANE);
  const line = spans.map((span) => `V${height(span)}H${course.x(span.to)}`).join('');
  const live = spans.filter((span) => span.live);
  const longest = live.toSorted((a, b) => b.to - b.from - (a.to - a.from))[0];
  return (
    <>
      <LaneName name={name} note={note} y={y} isWide={isWide} />
      {live.map(({ from, to }) => (
        <rect
          key={from}
          x={course.x(from)}
          y={y}
          width={Math.max(1, course.x(to) - course.x(from))}
          height={LANE}
          fill="url(#live-hatch)"
        />
      ))}
      <path
        className="step-line"
        d={`M${course.left} ${spans[0] === undefined ? y + LANE : height(spans[0])}${line}`}
      />
      {longest !== undefined && course.x(longest.to) - course.x(longest.from) > 56 ? (
        <text
          className="bold edged"
          x={(course.x(longest.from) + course.x(longest.to)) / 2}
          y={y + 16}
          textAnchor="middle"
        >
          {Math.round(longest.volts)} V
        </text>
      ) : null}
    </>
  );
}

interface CausesProps {
  readonly y: number;
  readonly course: Course;
  readonly lockstep: Lockstep;
  readonly elimination: Elimination | null;
  readonly step: number;
  readonly isWide: boolean;
}

export function Causes({ y, course, lockstep, elimination, step, isWide }: CausesProps) {
  const name = <LaneName name="causes left" note="after each step" y={y} isWide={isWide} />;
  if (elimination === null)
    return (
      <>
        {name}
        <text x={course.left + 4} y={y + 24}>
          not worked out yet
        </text>
      </>
    );
  const { left } = elimination;
  const most = left[0] ?? 1;
  const height = (count: number) => y + CAUSES * (1 - count / most);
  const line = lockstep.steps
    .map(({ unit }, i) => (i === 0 ? '' : `H${course.x(unit.at)}V${height(left[i] ?? 0)}`))
    .join('');
  const here = left[step] ?? 0;
  const last = left.at(-1) ?? 0;
  const now = course.x(lockstep.steps[step]?.unit.at ?? 0);
  const better = betterAt(elimination, lockstep, step);
  const toLeft = now > (course.left + course.right) / 2;
  return (
    <>
      {name}
      <path className="step-line" d={`M${course.left} ${height(most)}${line}`} />
      {now < course.left + 40 ? null : (
        <text className="bold edged" x={course.left + 3} y={height(most) + 13}>
          {most}
        </text>
      )}
      {now > course.right - 40 ? null : (
        <text className="bold edged" x={course.right} y={height(last) - 5} textAnchor="end">
          {last}
        </text>
      )}
      <text
        className="bold edged"
        x={toLeft ? now - 5 : now + 5}
        y={Math.max(y + 10, height(here) - 5)}
        textAnchor={toLeft ? 'end' : 'start'}
      >
        {here}
      </text>
      {better === null ? null : (
        <text
          className="bold edged"
          x={toLeft ? now - 5 : now + 5}
          y={y + CAUSES + 14}
          textAnchor={toLeft ? 'end' : 'start'}
        >
          {isWide ? betterText(better) : `another would leave ${better.left}`}
        </text>
      )}
    </>
  );
}
