/** Tests to be ticked, by the aims that they belong to: an aim with all of its tests, or one by one. */
import { useEffect, useRef } from 'react';
import { AIMS } from '../../../scenario/aims.ts';
import { AIM_WORDS } from '../../../words/aims.ts';
import { testTitle } from '../../../words/testTitles.ts';

interface Props {
  /** Those that can be ticked, and those that are. */
  readonly tests: readonly string[];
  readonly ticked: readonly string[];
  readonly isOneByOne: boolean;
  readonly onSet: (tests: readonly string[], isOn: boolean) => void;
}

/** Those of these tests that belong to each aim; aims without any are left out. */
export const byAim = (tests: readonly string[]) =>
  AIMS.map(({ id, tests: own }) => ({
    id,
    tests: tests.filter((test) => (own as readonly string[]).includes(test)),
  })).filter((aim) => aim.tests.length > 0);

/** At least one stays ticked: none at all would be another answer, which is given elsewhere. */
export function TestTicks({ tests, ticked, isOneByOne, onSet }: Props) {
  return (
    <div className="test-ticks">
      {byAim(tests).map(({ id, tests: own }) => {
        const on = own.filter((test) => ticked.includes(test)).length;
        return (
          <div key={id}>
            <Tick
              label={`${AIM_WORDS[id].question}${on > 0 && on < own.length ? ` ${on} of ${own.length}` : ''}`}
              state={on === 0 ? 'off' : on === own.length ? 'on' : 'some'}
              isFixed={on === ticked.length && on > 0}
              onChange={(isOn) => onSet(own, isOn)}
            />
            {isOneByOne
              ? own.map((test) => (
                  <div key={test} className="one-test">
                    <Tick
                      label={testTitle(test)}
                      state={ticked.includes(test) ? 'on' : 'off'}
                      isFixed={ticked.length === 1 && ticked.includes(test)}
                      onChange={(isOn) => onSet([test], isOn)}
                    />
                  </div>
                ))
              : null}
          </div>
        );
      })}
    </div>
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
