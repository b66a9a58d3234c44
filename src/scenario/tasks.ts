/** What a job may ask, and what each part of its mark weighs. */

/** What is asked: the whole verdict on a unit, what one aim asks and nothing beyond it, or what is behind a symptom. */
export const TASKS = ['verify', 'aim', 'find'] as const;
export type Task = (typeof TASKS)[number];

/** Parts of a mark, with the points each has unless the scenario reweighs; together 100. */
export const PARTS = {
  prediction: 15,
  observation: 10,
  judgement: 30,
  record: 10,
  diagnosis: 20,
  reasons: 15,
} as const;
export type PartName = keyof typeof PARTS;

/** Where a symptom is told, what is behind it weighs most. */
export const PARTS_OF_FIND: Readonly<Record<PartName, number>> = {
  prediction: 10,
  observation: 10,
  judgement: 20,
  record: 5,
  diagnosis: 40,
  reasons: 15,
};

/** The points of each part, with the usual ones of the task for those that the scenario leaves out. */
export const weightsOf = (
  task: Task,
  given: Readonly<Partial<Record<PartName, number | undefined>>> = {},
): Readonly<Record<PartName, number>> => {
  const usual = task === 'find' ? PARTS_OF_FIND : PARTS;
  const parts = Object.keys(usual) as PartName[];
  return Object.fromEntries(parts.map((part) => [part, given[part] ?? usual[part]])) as Record<
    PartName,
    number
  >;
};
