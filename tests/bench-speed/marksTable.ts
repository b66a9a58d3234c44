/* Marks for `npm run bench -- marks`: ways of earning them without knowing, and trainees of three skills, on every scenario. */

import { mean } from '../../src/attempt/marks/counted.ts';
import { mark } from '../../src/attempt/marks/mark.ts';
import { scenarioIds, scenarioNamed } from '../helpers/scenarios.ts';
import { attemptBySkill, SKILLS } from '../helpers/skills.ts';
import { STRATEGIES } from '../helpers/strategies.ts';

const SEEDS = [1, 2, 3];
/** What the best of them earns everywhere, of 100. */
const EXCELLENT = 90;

type Marked = Pick<ReturnType<typeof mark>, 'total' | 'passed'>;
const cell = ({ total, passed }: Marked): string =>
  `${total.toFixed(0)}${passed === true ? 'P' : ' '}`.padStart(5);

/** Each table with a bound: no strategy passes anywhere, and the trainees are told apart everywhere. */
export function printMarks(hold: (what: string, kept: boolean) => void): void {
  console.log(`total on each scenario (P: passed): ${scenarioIds.join(', ')}`);
  let passes = 0;
  for (const { name, attempt } of STRATEGIES) {
    const row = scenarioIds.map((id): Marked => {
      const { scenario, file } = scenarioNamed(id);
      return mark(scenario, attempt(scenario, file));
    });
    passes += row.filter(({ passed }) => passed === true).length;
    console.log(`${row.map(cell).join('')}  ${name}`);
  }
  hold(
    `${STRATEGIES.length} ways of earning marks without knowing pass ${passes} times, never`,
    passes === 0,
  );
  for (const seed of SEEDS) {
    const rows = SKILLS.map((skill) =>
      scenarioIds.map((id): Marked => {
        const { scenario, file } = scenarioNamed(id);
        return mark(scenario, attemptBySkill(scenario, file, skill, seed));
      }),
    );
    for (const [i, row] of rows.entries())
      console.log(`${row.map(cell).join('')}  ${SKILLS[i]?.name}, day ${seed}`);
    const isFind = (id: string): boolean => scenarioNamed(id).scenario.task === 'find';
    const isToldApart = scenarioIds.every((id, i) => {
      const [weak, middling, excellent] = rows.map((row) => row[i]);
      return (
        isFind(id) ||
        (weak !== undefined &&
          middling !== undefined &&
          excellent !== undefined &&
          weak.passed !== true &&
          weak.total < middling.total &&
          middling.total < excellent.total &&
          excellent.total >= EXCELLENT &&
          excellent.passed === true)
      );
    });
    hold(
      `told apart on every scenario, excellent at least ${EXCELLENT} and passed, weak not passed`,
      isToldApart,
    );
    // With most of the mark on one answer a single one of them says little.
    const finds = rows.map((row) =>
      mean(row.filter((_, i) => isFind(scenarioIds[i] ?? '')).map(({ total }) => total)),
    );
    const [weak = 0, middling = 0, excellent = 0] = finds;
    hold(
      `of the jobs with a symptom in the mean: ${finds.map((total) => total.toFixed(0)).join(', ')}, the last at least ${EXCELLENT}`,
      weak < middling && middling < excellent && excellent >= EXCELLENT,
    );
  }
}
