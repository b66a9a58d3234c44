/**
 * The attempt step by step: the time line, the keys to step with, the unit opened beside its correct twin, and what
 * differs. Which step is shown belongs to the debrief, since its cards jump here.
 */

import { useDeferredValue, useMemo, useState } from 'react';
import type { Debrief } from '../../../attempt/marks/debrief.ts';
import { differences } from '../../../attempt/opened/differences.ts';
import type { Elimination, Undone } from '../../../attempt/opened/elimination.ts';
import { causesOf } from '../../../attempt/opened/roots.ts';
import type { Timeline } from '../../../attempt/opened/timeline.ts';
import type { Lockstep, Progress, Step } from '../../../attempt/opened/twin.ts';
import { headOf } from '../../../attempt/record/attempt.ts';
import { benchTime } from '../../../words/benchTime.ts';
import { presentsText } from '../../../words/standIn.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { operationText } from '../../../words/trade.ts';
import { useAfterPicture } from '../../flow/useAfterPicture.ts';
import type { Sliced } from '../../flow/useSliced.ts';
import { TitleBlock } from '../../parts/TitleBlock.tsx';
import { Differences } from './Differences.tsx';
import { InWords } from './InWords.tsx';
import { OpenedPair } from './OpenedPair.tsx';
import { OutletPairs } from './OutletPairs.tsx';
import { TimeLine } from './TimeLine.tsx';
import { ToldTable } from './ToldTable.tsx';
import type { Stepping } from './useStepping.ts';

interface Props {
  readonly told: Debrief;
  readonly lockstep: Lockstep;
  readonly timeline: Timeline;
  readonly elimination: Sliced<Progress, Elimination>;
  /** The test not done that would have told most. */
  readonly undone: Undone | null;
  readonly stepping: Stepping;
  /** Steps that cards point to, in order. */
  readonly wrongSteps: readonly number[];
}

export function Replay({ told, lockstep, timeline, elimination, undone, stepping, wrongSteps }: Props) {
  // The keys answer first; the drawings and what is beside them follow in slices.
  const step = useDeferredValue(stepping.step);
  const here = lockstep.steps[step] as Step;
  const unit = lockstep.installations.unit[step];
  const twin = lockstep.installations.twin[step];
  const { faults } = lockstep.scenario;
  const causes = useMemo(
    () => (unit === undefined || twin === undefined ? [] : causesOf(unit, twin, faults)),
    [unit, twin, faults],
  );
  const list = useMemo(() => differences(here.unit, here.twin, causes), [here, causes]);
  const [chosen, setChosen] = useState({ step: 0, ring: 0 });
  // Another step begins with its first difference.
  const ring = chosen.step === step ? chosen.ring : 0;
  const { papers } = told.run;
  // What stands below the drawings comes after them; nothing that is below all of it is in sight until then.
  const isShown = useAfterPicture();
  return (
    <section className={isShown ? 'replay' : 'replay marking'} aria-labelledby="replay-heading">
      <TimeLine
        lockstep={lockstep}
        timeline={timeline}
        elimination={elimination.result}
        step={step}
        concluded={told.verdict.said !== null}
        onStep={stepping.go}
      />
      <Controls lockstep={lockstep} timeline={timeline} stepping={stepping} wrongSteps={wrongSteps} />
      <OpenedPair papers={papers} step={here} difference={list[ring] ?? null} number={ring + 1} />
      {isShown ? (
        <>
          <div className="opened-under">
            <OutletPairs lockstep={lockstep} step={step} />
            <Differences
              list={list}
              ring={ring}
              onRing={(next) => setChosen({ step, ring: next })}
              elimination={elimination}
              lockstep={lockstep}
              step={step}
            />
          </div>
          <TitleBlock
            framed
            rows={[
              ['job', told.run.scenario.title],
              ['rules', `${told.run.scenario.rules}, ${told.run.scenario.site.earthing}`],
              ['drawn at', `${benchTime(here.unit.at)}, ${presentsText(here.unit.standIn)}`],
              ['record', headOf(told.run.attempt).toUpperCase()],
            ]}
          />
          <InWords step={here} />
          <ToldTable
            lockstep={lockstep}
            timeline={timeline}
            elimination={elimination.result}
            undone={undone}
          />
        </>
      ) : null}
    </section>
  );
}

type ControlsProps = Pick<Props, 'lockstep' | 'timeline' | 'stepping' | 'wrongSteps'>;

function Controls({ lockstep, timeline, stepping, wrongSteps }: ControlsProps) {
  const { step, playing, go, play, stop } = stepping;
  const last = lockstep.steps.length - 1;
  const here = lockstep.steps[step] as Step;
  const mark = timeline.tests.find(({ first, last: end }) => step >= first && step <= end);
  const next = wrongSteps.find((wrong) => wrong > step) ?? wrongSteps[0];
  return (
    <div className="replay-controls">
      <button type="button" disabled={step === 0} onClick={() => go(0)}>
        First
      </button>
      <button type="button" disabled={step === 0} onClick={() => go(step - 1)}>
        Step back
      </button>
      <button type="button" className="strong" disabled={step === last} onClick={() => go(step + 1)}>
        Step on
      </button>
      <button type="button" disabled={step === last && !playing} onClick={playing ? stop : play}>
        {playing ? 'Stop playing' : 'Play'}
      </button>
      <label className="unseen" htmlFor="to-test">
        Go to test
      </label>
      <select
        id="to-test"
        value={mark?.test ?? ''}
        onChange={(event) => {
          const wanted = timeline.tests.find(({ test }) => test === event.target.value);
          if (wanted !== undefined) go(wanted.first);
        }}
      >
        <option value="">go to test …</option>
        {timeline.tests.map(({ test, number, wrong }) => (
          <option key={test} value={test}>
            {number} {testTitle(test)}
            {wrong.length === 0 ? '' : ' (sure and wrong)'}
          </option>
        ))}
      </select>
      {wrongSteps.length === 0 || next === undefined ? null : (
        <button type="button" onClick={() => go(next)}>
          Next sure-and-wrong
        </button>
      )}
      <p className="replay-where" role="status">
        <strong>{benchTime(here.unit.at)}</strong> · operation {step} of {last}
        {mark === undefined ? '' : ` · test ${mark.number}`} ·{' '}
        {here.operation === null ? 'as it was found' : operationText(here.operation)}
      </p>
    </div>
  );
}
