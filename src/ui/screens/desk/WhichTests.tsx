/** Which tests are allowed: by aim, or one by one. */
import { useEffect, useRef, useState } from 'react';
import { testsOf } from '../../../fairness/dictionary.ts';
import { AIMS } from '../../../scenario/aims.ts';
import { allowedActions, applicableActions } from '../../../scenario/scenario.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { withAllowed } from './jobFile.ts';
import type { LineProps } from './LineFrame.tsx';
import { LineFrame } from './LineFrame.tsx';

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
  const aims = AIMS.map(({ id, tests }) => ({
    id,
    tests: applicable.filter((test) => (tests as readonly string[]).includes(test)),
  })).filter(({ tests }) => tests.length > 0);
  const touched = aims.filter(({ tests }) => tests.some((test) => allowed.includes(test))).length;
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
      <div className="test-ticks">
        {aims.map(({ id, tests }) => {
          const on = tests.filter((test) => allowed.includes(test)).length;
          return (
            <div key={id}>
              <Tick
                label={`${AIM_WORDS[id].question}${on > 0 && on < tests.length ? ` ${on} of ${tests.length}` : ''}`}
                state={on === 0 ? 'off' : on === tests.length ? 'on' : 'some'}
                // A job without any test is none.
                isFixed={on === allowed.length && on > 0}
                onChange={(isOn) => set(tests, isOn)}
              />
              {isOneByOne
                ? tests.map((test) => (
                    <div key={test} className="one-test">
                      <Tick
                        label={testTitle(test)}
                        state={allowed.includes(test) ? 'on' : 'off'}
                        isFixed={allowed.length === 1 && allowed.includes(test)}
                        onChange={(isOn) => set([test], isOn)}
                      />
                    </div>
                  ))
                : null}
            </div>
          );
        })}
      </div>
      <div className="acts">
        <button type="button" className="plain" onClick={() => setOneByOne(!isOneByOne)}>
          {isOneByOne ? 'by aim' : 'one by one'}
        </button>
        <button type="button" className="plain" onClick={() => set(applicable, true)}>
          all of them
        </button>
      </div>
    </LineFrame>
  );
}

interface TickProps {
  readonly label: string;
  readonly state: 'on' | 'off' | 'some';
  readonly isFixed: boolean;
  readonly onChange: (isOn: boolean) => void;
}

function Tick({ label, state, isFixed, onChange }: TickProps) {
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (box.current !== null) box.current.indeterminate = state === 'some';
  }, [state]);
  return (
    <label className="tick">
      <input
        ref={box}
        type="checkbox"
        checked={state === 'on'}
        disabled={isFixed}
        onChange={(event) => onChange(event.target.checked)}
      />
      {label}
    </label>
  );
}
