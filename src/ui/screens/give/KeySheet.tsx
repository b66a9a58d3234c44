/** On paper for the tutor: what is wrong, where it shows, and the right verdict. Every page says KEY. */
import { rightVerdict } from '../../../attempt/marks/verdict.ts';
import type { Job, ReadGiving } from '../../../desk/giving.ts';
import { nthVariant, variantFor } from '../../../desk/variantOf.ts';
import { severityOf } from '../../../fairness/cause.ts';
import type { FaultChoice } from '../../../faults/catalogue.ts';
import { faultsAmong } from '../../../faults/catalogue.ts';
import type { CatalogueEntry } from '../../../faults/fault.ts';
import { LINE } from '../../../faults/fault.ts';
import { readScenario } from '../../../scenario/readScenario.ts';
import type { Scenario } from '../../../scenario/scenario.ts';
import { papersOf } from '../../../scenario/scenario.ts';
import { verify } from '../../../scenario/verify.ts';
import { limitText, lineText } from '../../../words/actions.ts';
import { amountText } from '../../../words/amounts.ts';
import { causeTitle } from '../../../words/causeTitles.ts';
import { gateText } from '../../../words/collect.ts';
import { ownLimitLines } from '../../../words/ownLimits.ts';
import { sourceText } from '../../../words/sources.ts';
import { OWN_WORDS } from '../../../words/subjects.ts';
import { testTitle } from '../../../words/testTitles.ts';
import { VERDICT_WORDS } from '../../../words/verdicts.ts';
import { shownText } from '../../format/figures.ts';
import { SheetBlock } from './SheetBlock.tsx';

interface Props {
  readonly read: ReadGiving;
  readonly second: string | null;
}

export function KeySheet({ read: { giving, jobs }, second }: Props) {
  const labels = giving.tutor?.labels ?? [];
  return (
    <div className="on-paper key-sheet">
      {jobs.map((job, i) => (
        <article key={job.scenario.id} className="sheet-page">
          <h2>KEY: {job.scenario.title}</h2>
          <p>
            {giving.group === '' ? '' : `${giving.group} · `}word <strong>{giving.word}</strong>
            {second === null ? '' : `, second word ${second}`}
          </p>
          <Answer scenario={job.scenario} />
          {giving.variants.map((n, i) => (
            <Variant
              key={n}
              job={job}
              word={giving.word}
              n={n}
              number={i + 1}
              whose={labels.filter((label) => variantFor(giving, label) === i)}
            />
          ))}
          <SheetBlock
            title={job.scenario.title}
            word={giving.word}
            rules={job.scenario.rules}
            page={i + 1}
            of={jobs.length}
            isKey
          />
        </article>
      ))}
    </div>
  );
}

/** How bad it is, and on which line. */
function sizeText(entry: CatalogueEntry, faults: readonly FaultChoice[]): string {
  const values = faults.find(({ fault }) => fault === entry.id)?.values ?? {};
  const size = severityOf(entry);
  const line = values[LINE.name];
  const said = [
    ...(size === null || values[size.name] === undefined
      ? []
      : [amountText(values[size.name] as number, size.unit)]),
    ...(line === undefined ? [] : [`L${line}`]),
  ];
  return said.length === 0 ? '' : ` (${said.join(', ')})`;
}

function Answer({ scenario }: { readonly scenario: Scenario }) {
  const verified = verify(scenario);
  const causes = faultsAmong(scenario.faults);
  return (
    <>
      <p>
        <strong>
          {causes.length === 0
            ? 'Nothing is wrong.'
            : `Wrong: ${causes.map((entry) => `${causeTitle(entry.id)}${sizeText(entry, scenario.faults)}`).join('; ')}.`}
        </strong>{' '}
        Right verdict: {VERDICT_WORDS[rightVerdict(scenario, verified)]}.
      </p>
      {scenario.accept.length === 0 ? null : (
        <p>Counts in full as well: {scenario.accept.map((id) => causeTitle(id)).join('; ')}.</p>
      )}
      {ownLimitLines(papersOf(scenario)).map(({ term, text }) => (
        <p key={term}>
          Value of your own: {term}, {text}
        </p>
      ))}
      {(scenario.marking.setAside ?? []).map(({ gate, reason }) => (
        <p key={gate}>
          Gate set aside: {gateText(gate)}. {reason}
        </p>
      ))}
      <ul>
        {verified.actions.flatMap(({ action, expectations, limits }) => [
          ...expectations
            .filter(({ finding }) => finding === 'broken')
            .map(({ expectation: line }) => (
              <li key={`${action.id} ${line.id}`}>
                <strong>{testTitle(action.id)}:</strong> {OWN_WORDS[line.of]}{' '}
                {line.should ? 'should, and does not:' : 'should not, and does:'} {lineText(action.id, line)}{' '}
                <span className="note">{sourceText(line.source)}</span>
              </li>
            )),
          ...limits
            .filter(({ pass }) => !pass)
            .map(({ limit, reading }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: one list that never changes
              <li key={`${action.id} ${limit.id} ${i}`}>
                <strong>{testTitle(action.id)}:</strong> outside: {limitText(action.id, limit)},{' '}
                {shownText(reading)} <span className="note">{sourceText(limit.source)}</span>
              </li>
            )),
        ])}
      </ul>
    </>
  );
}

interface VariantProps {
  readonly job: Job;
  readonly word: string;
  readonly n: number;
  readonly number: number;
  readonly whose: readonly string[];
}

function Variant({ job, word, n, number, whose }: VariantProps) {
  const read = readScenario(nthVariant(job.file, word, n));
  if (!read.ok) return null;
  const { site, faults } = read.scenario;
  const earth =
    site.electrodeResistance === null
      ? `Ze ${site.loopImpedance ?? '–'} Ω`
      : `electrode ${site.electrodeResistance} Ω`;
  const sizes = faultsAmong(faults)
    .map((entry) => sizeText(entry, faults))
    .join('');
  return (
    <p className="note">
      Variant {number}
      {whose.length === 0 ? '' : ` (${whose.join(', ')})`}:{' '}
      {[`${site.voltage} V`, earth, `circuit ${site.circuit.length} m`, ...sizes].join(', ')}.
    </p>
  );
}
