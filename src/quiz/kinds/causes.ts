/**
 * Questions on causes: which one fits what was found, which one a finding rules out, which test parts those that are left
 * best, which read the same. By what each cause breaks in each test (causes.json), acted out on the bench.
 */
import type { AimId, SiteId } from '../../scenario/aims.ts';
import { AIMS, aimOf, SITES } from '../../scenario/aims.ts';
import { CIRCUIT } from '../../verification/sources.ts';
import { inOrder } from '../asking.ts';
import CAUSES from '../causes.json' with { type: 'json' };
import type { Dice, Kind } from '../question.ts';
import type { Broken, Causes } from '../workOutCauses.ts';
import type { Stated } from './stated.ts';
import { about, statedOn } from './stated.ts';

/** By cause: what it breaks in which test on this kind of site. */
export const causesOn = (site: SiteId): Readonly<Record<string, Broken>> =>
  (CAUSES as unknown as Causes)[site];

/** Some cause breaks a line in a test of each of them. */
const WITH_CAUSES: readonly AimId[] = AIMS.map(({ id }) => id);

/** What a test breaks of a cause, as one text: causes with the same read the same in it. */
const brokenIn = (site: SiteId, cause: string, test: string): string =>
  (causesOn(site)[cause]?.[test] ?? []).join(' ');

/** What it gives is worked out once for each: all of it follows from the table. */
function keeping<Of extends readonly string[], Given>(give: (...of: Of) => Given): (...of: Of) => Given {
  const given = new Map<string, { readonly once: Given }>();
  return (...of) => {
    const key = of.join(' ');
    const kept = given.get(key) ?? { once: give(...of) };
    given.set(key, kept);
    return kept.once;
  };
}

interface Found {
  readonly stated: Stated;
  readonly breaking: readonly string[];
  readonly sparing: readonly string[];
}

/** Lines of tests of this topic that some causes break and that leave others of the same aim alone. */
const foundOn = keeping((site: SiteId, topic: AimId): readonly Found[] => {
  const causes = Object.keys(causesOn(site));
  return statedOn(site)
    .filter(({ action, line }) => aimOf(action.id) === topic && line.right !== 'cant-tell')
    .flatMap((stated): readonly Found[] => {
      const { action, line } = stated;
      const breaking = causes.filter(
        (cause) => causesOn(site)[cause]?.[action.id]?.includes(line.id) === true,
      );
      const sparing = causes.filter((cause) => brokenIn(site, cause, action.id) === '');
      return breaking.length > 0 && sparing.length >= LEAST_WRONG ? [{ stated, breaking, sparing }] : [];
    });
});

const LEAST_WRONG = 3;

function drawFound(dice: Dice, topic: AimId): Found & { readonly site: SiteId } {
  for (const site of dice.shuffle('site', SITES)) {
    const [one] = dice.shuffle('line', foundOn(site, topic));
    if (one !== undefined) return { ...one, site };
  }
  throw new Error('no line that a cause breaks');
}

const choose = (dice: Dice, name: string, ids: readonly string[], count: number): readonly string[] =>
  dice.shuffle(name, ids).slice(0, count);

/** Wrong ones that break something near: of the same aim's other tests before all others. */
function nearFirst(dice: Dice, site: SiteId, topic: AimId, causes: readonly string[]): readonly string[] {
  const isNear = (cause: string): boolean =>
    Object.keys(causesOn(site)[cause] ?? {}).some((test) => aimOf(test) === topic);
  const drawn = dice.shuffle('wrong', causes);
  return [...drawn.filter(isNear), ...drawn.filter((cause) => !isNear(cause))].slice(0, LEAST_WRONG);
}

/** One cause that breaks the line, among causes that spare it: which fits the line broken, and which is ruled out by it kept. */
const breaksIt = (id: string): Kind => ({
  id,
  topics: WITH_CAUSES,
  ask: (dice, topic) => {
    const { stated, breaking, sparing, site } = drawFound(dice, topic);
    const [answer = ''] = choose(dice, 'right', breaking, 1);
    const wrong = nearFirst(dice, site, topic, sparing);
    return inOrder({
      values: { site, test: stated.action.id, subject: stated.line.subject, right: stated.line.right },
      about: about(stated),
      source: CIRCUIT,
      answer,
      choices: dice.shuffle('choices', [answer, ...wrong]).map((cause) => ({ id: cause })),
    });
  },
});
const whichCause = breaksIt('which-cause');
const ruledOut = breaksIt('ruled-out');

/** How many of these causes read alike at worst after this test; where nothing breaks they read as a sound unit does. */
function worstLeft(site: SiteId, causes: readonly string[], test: string): number {
  const groups = new Map<string, number>();
  for (const cause of causes) {
    const reads = brokenIn(site, cause, test);
    groups.set(reads, (groups.get(reads) ?? 0) + 1);
  }
  return Math.max(...groups.values());
}

const LEFT = 4;

/** Four causes that one test breaks alike, and four tests of which one parts them best. */
const bestNext: Kind = {
  id: 'best-next-test',
  topics: ['earth', 'wiring', 'supply', 'offer', 'lets-go', 'clears', 'leakage', 'refuses'],
  ask: (dice, topic) => {
    for (const site of dice.shuffle('site', SITES))
      for (const cause of dice.shuffle('cause', Object.keys(causesOn(site)))) {
        const one = dilemmaOf(site, cause);
        if (one === null || aimOf(one.best) !== topic) continue;
        const { causes, best, others } = one;
        const [a = '', b = '', c = '', d = ''] = causes;
        const shown = [best, ...choose(dice, 'others', others, LEAST_WRONG)];
        return inOrder({
          values: {
            site,
            a,
            b,
            c,
            d,
            best,
            ...Object.fromEntries(shown.map((test) => [`left ${test}`, worstLeft(site, causes, test)])),
          },
          source: CIRCUIT,
          answer: best,
          choices: dice.shuffle('choices', shown).map((id) => ({ id })),
        });
      }
    throw new Error('no causes to be parted');
  },
};

interface Dilemma {
  readonly causes: readonly string[];
  readonly best: string;
  readonly others: readonly string[];
}

/** A cause with the three that break most of the same tests; null where no single test parts them best. */
const dilemmaOf = keeping((site: SiteId, cause: string): Dilemma | null => {
  const table = causesOn(site);
  const own = Object.keys(table[cause] ?? {});
  const near = Object.keys(table)
    .filter((other) => other !== cause)
    .map((other) => ({ other, at: own.filter((test) => table[other]?.[test] !== undefined).length }))
    .filter(({ at }) => at > 0)
    .toSorted((x, y) => y.at - x.at)
    .slice(0, LEFT - 1)
    .map(({ other }) => other);
  if (near.length < LEFT - 1) return null;
  const causes = [cause, ...near];
  const ranked = [...new Set(causes.flatMap((one) => Object.keys(table[one] ?? {})))]
    .map((test) => ({ test, left: worstLeft(site, causes, test) }))
    .toSorted((x, y) => x.left - y.left);
  const [first, second] = ranked;
  if (first === undefined || second === undefined || first.left === second.left) return null;
  const others = ranked.slice(1).map(({ test }) => test);
  return others.length < LEFT - 1 ? null : { causes, best: first.test, others };
});

/** Of a cause's companions in one test: one that reads the same there, three that do not. */
const readsTheSame: Kind = {
  id: 'reads-the-same',
  // Of the others too few causes break the same.
  topics: WITH_CAUSES.filter((aim) => aim !== 'dead' && aim !== 'insulation'),
  ask: (dice, topic) => {
    for (const site of dice.shuffle('site', SITES)) {
      const [one] = dice.shuffle('companions', companionsOn(site, topic));
      if (one === undefined) continue;
      const [answer = ''] = choose(dice, 'right', one.alike, 1);
      return inOrder({
        values: { site, test: one.test, cause: one.cause },
        source: CIRCUIT,
        answer,
        choices: dice
          .shuffle('choices', [answer, ...choose(dice, 'wrong', one.unlike, LEAST_WRONG)])
          .map((id) => ({ id })),
      });
    }
    throw new Error('nothing reads the same');
  },
};

interface Companions {
  readonly test: string;
  readonly cause: string;
  readonly alike: readonly string[];
  readonly unlike: readonly string[];
}

const companionsOn = keeping((site: SiteId, topic: AimId): readonly Companions[] => {
  const table = causesOn(site);
  const all = Object.keys(table);
  return all.flatMap((cause) =>
    Object.keys(table[cause] ?? {}).flatMap((test): readonly Companions[] => {
      if (aimOf(test) !== topic) return [];
      const own = brokenIn(site, cause, test);
      const breaking = all.filter((other) => other !== cause && brokenIn(site, other, test) !== '');
      const alike = breaking.filter((other) => brokenIn(site, other, test) === own);
      const unlike = breaking.filter((other) => brokenIn(site, other, test) !== own);
      return alike.length > 0 && unlike.length >= LEAST_WRONG ? [{ test, cause, alike, unlike }] : [];
    }),
  );
});

export const CAUSE_KINDS: readonly Kind[] = [whichCause, ruledOut, bestNext, readsTheSame];
