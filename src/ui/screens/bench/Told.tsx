/**
 * In practice, as soon as a test is finished: one thing to take away as the heading, what was wrong open with its place on
 * the opened drawing, what was right folded.
 */
import type { RefObject } from 'react';
import { useEffect, useMemo, useState } from 'react';
import type { EntryOf } from '../../../attempt/record/attempt.ts';
import { aimOf } from '../../../scenario/aims.ts';
import type { TestAction } from '../../../verification/testAction.ts';
import type { Bench } from '../../flow/bench.ts';
import { loaded } from '../../flow/loading.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { opensThisUnit } from './opensThisUnit.ts';
import { StepFrame } from './StepFrame.tsx';
import { RightLine, WrongLine } from './ToldLine.tsx';
import type { ToldLine } from './toldLines.ts';
import { toldLines } from './toldLines.ts';

interface Props {
  readonly bench: Bench;
  readonly action: TestAction;
  readonly prediction: EntryOf<'prediction'> | undefined;
  readonly heading: RefObject<HTMLHeadingElement | null>;
  /** The same test once more, set up as it was; the first prediction counts. */
  readonly onAgain: () => void;
  readonly next: { readonly name: string; readonly go: () => void };
}

export function Told({ bench, action, prediction, heading, onAgain, next }: Props) {
  const lines = useMemo(() => toldLines(bench, action, prediction), [bench, action, prediction]);
  const wrong = lines.filter(({ takeaway }) => takeaway !== null);
  const right = lines.filter(({ takeaway }) => takeaway === null);
  const placed = wrong.filter(({ place }) => place !== null);
  const places = usePlaces(bench, placed.length > 0);
  const topic = aimOf(action.id);
  const bar = (
    <div className="bar-acts">
      <button type="button" onClick={onAgain}>
        Try this test again
      </button>
      <button type="button" className="main" onClick={next.go}>
        {next.name}
      </button>
    </div>
  );
  return (
    <StepFrame bar={bar} reads="Lines of this test">
      <div>
        <h3 ref={heading} tabIndex={-1} className="takeaway">
          <span className="unseen">What was true: </span>
          {wrong[0]?.takeaway ?? 'Every line is right'}
        </h3>
        <p className="note">{[countText(wrong, lines.length), ...settled(lines)].join(' ')}</p>
      </div>
      {wrong.map((line) => (
        <WrongLine key={line.id} line={line} number={line.place === null ? null : placed.indexOf(line) + 1}>
          {line.place === null ? null : places.of(line.place, placed.indexOf(line) + 1)}
        </WrongLine>
      ))}
      {wrong.length === 0 || topic === null ? null : (
        <p>
          <a className="lone" href={`#/questions?topics=${topic}&count=3&from=attempt`}>
            Three questions on this
          </a>
        </p>
      )}
      {right.length === 0 ? null : (
        <div>
          {right.map((line) => (
            <RightLine key={line.id} line={line} />
          ))}
        </div>
      )}
    </StepFrame>
  );
}

const countText = (wrong: readonly ToldLine[], all: number): string =>
  wrong.length === 0
    ? 'Judged against what you wrote down.'
    : `${wrong.length} of ${all} ${all === 1 ? 'line' : 'lines'} to look at, judged against what you wrote down.`;

/** How sure the predictions were and how right: what was wrong first, and what was known without being trusted. */
function settled(lines: readonly ToldLine[]): readonly string[] {
  const counted = (isSure: boolean, isRight: boolean) =>
    lines.filter(
      ({ prediction }) =>
        prediction !== null &&
        (prediction.sure === 'would-sign') === isSure &&
        prediction.isRight === isRight,
    ).length;
  const parts = [
    ['Sure and wrong', counted(true, false)],
    ['Not sure and wrong', counted(false, false)],
    ['Not sure and right', counted(false, true)],
  ] as const;
  return parts.flatMap(([name, count]) => (count === 0 ? [] : [`${name}: ${count}.`]));
}

type Places = typeof import('./ToldPlace.tsx');

/** The opened drawing and the replay that it needs, loaded and worked out only where a place is to be shown. */
function usePlaces({ run }: Bench, isWanted: boolean) {
  const { scenario, attempt, papers } = run;
  const [places, setPlaces] = useState<Places | null>(null);
  const [isMissing, setMissing] = useState(false);
  useEffect(() => {
    if (!isWanted) return;
    let isHere = true;
    loaded(() => import('./ToldPlace.tsx')).then(
      (module) => isHere && setPlaces(module),
      () => isHere && setMissing(true),
    );
    return () => {
      isHere = false;
    };
  }, [isWanted]);
  const make = useMemo(
    () => (places === null ? null : () => places.followingLog(scenario, attempt)),
    [places, scenario, attempt],
  );
  const { result, progress, failed } = useSliced(make);
  return {
    of: (place: NonNullable<ToldLine['place']>, number: number) =>
      places !== null && result !== null ? (
        <places.ToldPlace
          papers={papers}
          followed={result}
          place={place}
          opensUnit={opensThisUnit(scenario)}
          number={number}
        />
      ) : (
        <p className="place-to-come note" role={number === 1 ? 'status' : undefined}>
          {isMissing || failed !== null
            ? 'The drawing of this place did not come. All else is told above.'
            : progress === null || progress.of === 0
              ? 'Opening the drawing …'
              : `Opening the drawing: ${progress.done} of ${progress.of} steps …`}
        </p>
      ),
  };
}
