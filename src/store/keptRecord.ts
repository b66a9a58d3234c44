/** Everything on this device as one record, and the goal that belongs to no attempt. */
import { attemptIn } from './about.ts';
import { inOne } from './database.ts';
import { questionsIn } from './questions.ts';
import type { RecordItem } from './recordItem.ts';
import { recordItem } from './recordItem.ts';
import type { Goal, KeptRecord, Unreadable } from './recordText.ts';

export const keptGoal = (): Promise<Goal | null> =>
  inOne(
    'readonly',
    async (all) => ((await all.objectStore('other').get('goal')) as Goal | undefined) ?? null,
  );

/** Null puts the goal away. */
export const keepGoal = (goal: Goal | null): Promise<void> =>
  inOne('readwrite', async (all) => {
    if (goal === null) await all.objectStore('other').delete('goal');
    else await all.objectStore('other').put(goal, 'goal');
  });

export const keptRecord = (): Promise<KeptRecord> =>
  inOne('readonly', async (all) => {
    const items: RecordItem[] = [];
    const unreadable: Unreadable[] = [];
    for (const id of await all.objectStore('attempts').getAllKeys()) {
      const text = (await all.objectStore('attempts').get(id)) ?? '';
      const about = await all.objectStore('about').get(id);
      const draft: unknown = await all.objectStore('drafts').get(id);
      const attempt = attemptIn(text);
      // What would not come out as it was kept goes out as its text.
      if (about === undefined || attempt === null || JSON.stringify(attempt) !== text)
        unreadable.push({ id, text });
      else items.push(recordItem(about, attempt, draft ?? null));
    }
    const goal = (await all.objectStore('other').get('goal')) as Goal | undefined;
    const further = (await all.objectStore('other').get('further')) as KeptRecord['further'] | undefined;
    const questions = await questionsIn(all);
    return { items, unreadable, goal: goal ?? null, questions, further: further ?? {} };
  });
