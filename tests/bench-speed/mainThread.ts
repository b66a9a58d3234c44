/*
 * What a page's main thread did, by the browser's own trace, in the thread's own CPU time: while it waits for a core
 * that somebody else has, that clock stands still. On a thread that is slowed down it counts what the slowing takes too.
 */

export const CATEGORIES = ['-*', 'toplevel', 'devtools.timeline', 'v8'];

/** As a trace has them: complete events have a duration of the wall clock and one of the thread's own, in µs. */
interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: {
    readonly data?: { readonly type?: string; readonly url?: string };
    readonly chrome_mojo_event_info?: { readonly mojo_interface_tag?: string };
  };
}

interface Task {
  readonly ends: number;
  /** ms. */
  readonly took: number;
  readonly within: readonly Required<TraceEvent>[];
}

export interface Worked {
  /** ms of the longest task. */
  readonly task: number;
  /** What it was spent on. */
  readonly by: string;
  /** ms from an input to the next picture, the most of all inputs. */
  readonly picture: number;
  /** Which input that was. */
  readonly input: string;
}

/** What a person does, of all events that are dispatched. */
const INPUTS = new Set(['pointerdown', 'pointerup', 'click', 'keydown', 'keyup', 'input', 'change']);
const SCRIPT = /^(FunctionCall|EventDispatch|RunMicrotasks|TimerFire|FireAnimationFrame|v8\.|EvaluateScript)/;
const KINDS: readonly (readonly [kind: string, names: RegExp])[] = [
  ['script', SCRIPT],
  ['garbage', /GC/],
  ['style', /^UpdateLayoutTree/],
  ['layout', /^Layout$/],
  ['painting', /^(PrePaint|Paint|Layerize|Commit)$/],
];

export function workedIn(trace: Buffer): Worked {
  const { traceEvents } = JSON.parse(trace.toString()) as { traceEvents: readonly TraceEvent[] };
  // The driver's own work in the page is none of the page's.
  const tasks = tasksOf(mainThread(traceEvents)).filter((task) => !isDriver(task));
  const longest = tasks.reduce<Task | null>((x, y) => (x !== null && x.took >= y.took ? x : y), null);
  let slowest = { picture: 0, input: '' };
  for (const [i, task] of tasks.entries()) {
    const input = task.within.find(isInput)?.args.data?.type;
    if (input === undefined) continue;
    const drawn = tasks.findIndex((later, j) => j >= i && later.within.some(({ name }) => name === 'Commit'));
    const picture = tasks.slice(i, drawn < 0 ? i + 1 : drawn + 1).reduce((sum, { took }) => sum + took, 0);
    if (picture > slowest.picture) slowest = { picture, input };
  }
  return { task: longest?.took ?? 0, by: longest === null ? '' : spentOn(longest), ...slowest };
}

const isInput = ({ name, args }: TraceEvent): boolean =>
  name === 'EventDispatch' && INPUTS.has(args?.data?.type ?? '');

/** What is called from no address, or asked for by the browser’s driving protocol: to look for words on a long page takes 100 ms. */
const isDriver = ({ within }: Task): boolean =>
  within.some(
    ({ name, args }) =>
      (name === 'FunctionCall' && args.data?.url === '') ||
      args.chrome_mojo_event_info?.mojo_interface_tag === 'blink.mojom.DevToolsSession',
  ) && !within.some(isInput);

/** Everything of the thread that worked most in a page. */
function mainThread(events: readonly TraceEvent[]): readonly Required<TraceEvent>[] {
  const complete = events.filter((event): event is Required<TraceEvent> => event.tdur !== undefined);
  const busy = new Map<string, number>();
  const threadOf = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  for (const event of complete)
    if (event.name === 'UpdateLayoutTree' || event.name === 'FunctionCall')
      busy.set(threadOf(event), (busy.get(threadOf(event)) ?? 0) + event.tdur);
  const [main] = [...busy].sort(([, x], [, y]) => y - x);
  return complete
    .filter((event) => threadOf(event) === main?.[0])
    .sort((x, y) => x.ts - y.ts || y.dur - x.dur);
}

function tasksOf(events: readonly Required<TraceEvent>[]): readonly Task[] {
  const tasks: (Task & { within: Required<TraceEvent>[] })[] = [];
  for (const event of events) {
    const last = tasks.at(-1);
    if (last !== undefined && event.ts < last.ends) last.within.push(event);
    else if (event.name.endsWith('RunTask'))
      tasks.push({ ends: event.ts + event.dur, took: event.tdur / 1000, within: [] });
  }
  return tasks;
}

/** The kinds of work in a task, the most first, without what each of them waits for in it. */
function spentOn({ within }: Task): string {
  const spent = new Map<string, number>();
  const open: Required<TraceEvent>[] = [];
  const add = ({ name }: TraceEvent, time: number) => {
    const kind = KINDS.find(([, names]) => names.test(name))?.[0] ?? 'else';
    spent.set(kind, (spent.get(kind) ?? 0) + time / 1000);
  };
  for (const event of within) {
    while (open.length > 0 && event.ts >= (open.at(-1)?.ts ?? 0) + (open.at(-1)?.dur ?? 0)) open.pop();
    const outer = open.at(-1);
    if (outer !== undefined) add(outer, -event.tdur);
    add(event, event.tdur);
    open.push(event);
  }
  return [...spent]
    .filter(([, time]) => time >= 1)
    .sort(([, x], [, y]) => y - x)
    .map(([kind, time]) => `${kind} ${time.toFixed(0)}`)
    .join(', ');
}
