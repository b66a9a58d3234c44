/** How bad: the size of each cause that has one, on a scale or as a figure, and what comes of it for trainees. */
import type { FairnessView } from '../../../fairness/view.ts';
import { entryNamed } from '../../../faults/catalogue.ts';
import type { Parameter } from '../../../faults/fault.ts';
import { LINE } from '../../../faults/fault.ts';
import { lineText } from '../../../words/actions.ts';
import { amountText } from '../../../words/amounts.ts';
import { JUDGED_WORDS } from '../../../words/answers.ts';
import { causeTitle } from '../../../words/causeTitles.ts';
import { readText } from '../../../words/desk.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';
import type { Weighed } from '../../flow/useWeigher.ts';
import type { FaultLine } from './jobFile.ts';
import { withValue } from './jobFile.ts';
import type { LineProps } from './LineFrame.tsx';
import { LineFrame } from './LineFrame.tsx';
import { SizedFigure } from './SizedFigure.tsx';

interface Sized {
  readonly at: number;
  readonly line: FaultLine;
  readonly parameter: Parameter;
  readonly value: number;
}

function sizedIn(faults: readonly FaultLine[]): readonly Sized[] {
  return faults.flatMap((line, at) => {
    const parameter = entryNamed(line.fault)?.parameters.find((one) => one !== LINE);
    if (parameter === undefined) return [];
    const given = line[parameter.name];
    return [{ at, line, parameter, value: typeof given === 'number' ? given : parameter.default }];
  });
}

export function HowBad(props: LineProps & { readonly weighed: Weighed }) {
  const { file, weighed, onChange } = props;
  const sized = sizedIn(file.faults);
  if (sized.length === 0)
    return file.faults.length === 0 ? null : (
      <section className="desk-line" aria-labelledby="how-bad">
        <h2 className="desk-line-name" id="how-bad">
          How bad
        </h2>
        <div className="desk-line-body stack">
          <p className="answer">There is no more or less of it</p>
          <Consequence weighed={weighed} />
        </div>
      </section>
    );
  const answer = sized.map(({ value, parameter }) => amountText(value, parameter.unit)).join(', and ');
  return (
    <LineFrame {...props} name="How bad" answer={answer} more={<Consequence weighed={weighed} />}>
      {sized.map(({ at, line, parameter, value }) => (
        <Size
          key={`${at} ${line.fault}`}
          title={sized.length === 1 ? null : causeTitle(line.fault)}
          parameter={parameter}
          value={value}
          onChange={(next) =>
            onChange(withValue(file, at, parameter.name, next), `${at} ${line.fault} ${parameter.name}`)
          }
        />
      ))}
      <Consequence weighed={weighed} />
      {weighed.is === 'weighed' ? <Shows view={weighed.view} /> : null}
    </LineFrame>
  );
}

interface SizeProps {
  readonly title: string | null;
  readonly parameter: Parameter;
  readonly value: number;
  readonly onChange: (value: number) => void;
}

/** Steps of the scale: fine enough for two digits. */
const STEPS = 200;

function Size({ title, parameter, value, onChange }: SizeProps) {
  const { min, max, unit } = parameter;
  const scale = scaleOf(parameter);
  return (
    <div className="size">
      {title === null ? null : <p className="note">{title}</p>}
      <div className="size-scale">
        <input
          type="range"
          aria-label={`how bad, ${min} to ${max} ${unit}`}
          aria-valuetext={amountText(value, unit)}
          min={0}
          max={STEPS}
          value={Math.round(STEPS * scale.share(value))}
          onChange={(event) => onChange(scale.value(Number(event.target.value) / STEPS))}
        />
        <div className="size-marks" aria-hidden="true">
          {scale.marks.map((mark) => (
            <span key={mark} style={{ left: `${100 * scale.share(mark)}%` }}>
              {amountText(mark, unit === 'of a period' ? '' : unit).replace(/\u202f.*/, '')}
            </span>
          ))}
        </div>
      </div>
      <SizedFigure
        label={unit}
        range={{ least: min, greatest: max, unit }}
        value={value}
        onChange={(figure) => (figure === undefined ? undefined : onChange(figure))}
      />
    </div>
  );
}

/** By ratio where the range spans decades, as the eye judges a resistance. */
function scaleOf({ min, max }: Parameter) {
  const isLog = min > 0 && max / min > 10;
  const share = (value: number): number =>
    isLog ? Math.log(value / min) / Math.log(max / min) : (value - min) / (max - min);
  const value = (at: number): number => {
    const raw = isLog ? min * (max / min) ** at : min + at * (max - min);
    const span = isLog ? raw : max - min;
    const step = 10 ** (Math.floor(Math.log10(Math.abs(span))) - 1);
    return Math.min(max, Math.max(min, Number((Math.round(raw / step) * step).toPrecision(6))));
  };
  const between = isLog
    ? [1, 3]
        .flatMap((digit) => Array.from({ length: 18 }, (_, i) => Number(`${digit}e${i - 6}`)))
        .filter((mark) => share(mark) > 0.12 && share(mark) < 0.88)
        .sort((x, y) => x - y)
    : [Number((min + (max - min) / 2).toPrecision(2))];
  const few = between.length <= MOST_MARKS ? between : between.filter((mark) => String(mark).includes('1'));
  return { share, value, marks: [min, ...few.slice(0, MOST_MARKS), max] };
}

const MOST_MARKS = 4;

/** What trainees read of it. */
function Consequence({ weighed }: { readonly weighed: Weighed }) {
  if (weighed.is !== 'weighed') return null;
  const { shown } = weighed.view;
  if (shown === null) return null;
  if (shown.kind === 'line')
    return (
      <p>
        <Read view={weighed.view} test={shown.test} />
        At “{testTitle(shown.test)}” the right answer to “{OWN_WORDS[shown.of]} {lineText(shown.test, shown)}”
        is <strong>{JUDGED_WORDS[shown.should ? 'did-not' : 'did']}</strong>.
      </p>
    );
  const { value, sound, limit, unit, most, quantity } = shown;
  return (
    <p>
      Trainees read <strong>{value === null ? 'nothing' : readText(value, 'value', quantity)}</strong> at “
      {testTitle(shown.test)}”{sound === null ? '' : ' where '}
      {sound === null ? null : <strong>{readText(sound, 'value', quantity)}</strong>}
      {sound === null ? '' : ' is sound'}; the limit is {most ? 'at most' : 'at least'}{' '}
      <strong>{amountText(limit, unit)}</strong>.
    </p>
  );
}

/** The figure that tells it from nothing wrong, where it is a figure that does. */
function Read({ view: { table }, test }: { readonly view: FairnessView; readonly test: string }) {
  const at = table.columns.findIndex((column) => column.test === test && column.isAllowed);
  const of = table.columns[at]?.of;
  const [own, sound] = ['own', 'sound'].map(
    (which) => table.rows.find((row) => row.of === which)?.cells[at]?.value,
  );
  if (of == null || own == null || sound == null) return null;
  return (
    <>
      Trainees read <strong>{readText(own, of.name, of.of)}</strong> where{' '}
      <strong>{readText(sound, of.name, of.of)}</strong> is sound.{' '}
    </>
  );
}

/** From which size on anything shows it. */
function Shows({ view: { severity } }: { readonly view: FairnessView }) {
  return severity.map((one) => (
    <p key={one.cause} className="note">
      {severity.length > 1 ? `${causeTitle(one.cause)}: ` : ''}
      {one.shows === 'throughout'
        ? 'It shows at every size of this scale.'
        : one.shows === 'nowhere'
          ? 'It shows at no size of this scale.'
          : `It shows from ${amountText(one.from ?? 0, one.unit)} on, towards ${amountText(one.mostVisible, one.unit)}.`}
    </p>
  ));
}
