/** Which tests are allowed: by aim, or one by one. */
import { useState } from 'react';
import { testsOf } from '../../../fairness/dictionary.ts';
import { aimOf } from '../../../scenario/aims.ts';
import { allowedActions, applicableActions } from '../../../scenario/scenario.ts';
import { withAllowed } from './jobFile.ts';
import type { LineProps } from './LineFrame.tsx';
import { LineFrame } from './LineFrame.tsx';
import { byAim, TestTicks } from './TestTicks.tsx';

const NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

export function WhichTests(props: LineProps) {
  const { file, scenario, onChange } = props;
  const [isOneByOne, setOneByOne] = useState(false);
  const applicable = applicableActions(scenario).map(({ id }) => id);
  const allowed = allowedActions(scenario).map(({ id }) => id);
  // A job of one aim has no others.
  const theirs = file.task === 'aim' ? applicable.filter((id) => aimOf(id) === file.aim) : applicable;
  const touched = byAim(allowed).length;
  const set = (tests: readonly string[], isOn: boolean) =>
    onChange(
      withAllowed(
        file,
        isOn ? [...allowed, ...tests] : allowed.filter((test) => !tests.includes(test)),
        applicable,
      ),
    );
  const left = testsOf(scenario).length;
  const answer = `${allowed.length} of ${applicable.length}, ${NUMBERS[touched]} ${touched === 1 ? 'aim' : 'aims'}`;
  return (
    <LineFrame
      {...props}
      name="Which tests"
      answer={answer}
      more={
        <p className="note">
          {file.handover == null
            ? allowed.length === applicable.length
              ? 'All that apply on this site.'
              : `${applicable.length - allowed.length} are not theirs to do.`
            : `The ${applicable.length - left} others are handed over as done, by ${file.handover.by}.`}
        </p>
      }
    >
      <TestTicks tests={theirs} ticked={allowed} isOneByOne={isOneByOne} onSet={set} />
      <div className="acts">
        <button type="button" className="plain" onClick={() => setOneByOne(!isOneByOne)}>
          {isOneByOne ? 'by aim' : 'one by one'}
        </button>
        <button type="button" className="plain" onClick={() => set(theirs, true)}>
          all of them
        </button>
      </div>
    </LineFrame>
  );
}
