/** What else can be done at the bench while a test is open: one act at a time, chosen by name. */
import type { OperationInput } from '../../../bench/operation.ts';
import { LINES } from '../../../laws/conductors.ts';
import { CABLE_CODINGS } from '../../../laws/proximity.ts';
import type { Site } from '../../../site/site.ts';
import { linesOf } from '../../../site/site.ts';
import { disturb, restore } from '../../../verification/actions/openPen.ts';
import type { Papers } from '../../../verification/testAction.ts';
import { useKept } from '../../flow/useKept.ts';
import { Choice } from '../../parts/Choice.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { typedNumber } from '../../words/figures.ts';
import { STATE_WORDS } from '../../words/trade.ts';

type Act = readonly [name: string, text: string, operation: OperationInput];

const ACTS: readonly Act[] = [
  ['plug in', 'stand-in: plug in', { op: 'vehicle', plugged: true }],
  ['unplug', 'stand-in: unplug', { op: 'vehicle', plugged: false }],
  ...(['A', 'B', 'C', 'D'] as const).map(
    (state): Act => [`state ${state}`, `stand-in: state ${STATE_WORDS[state]}`, { op: 'vehicle', state }],
  ),
  ['pilot sound', 'stand-in: pilot (CP) sound', { op: 'vehicle', pilot: 'sound' }],
  ['pilot shorted', 'stand-in: pilot (CP) shorted to PE', { op: 'vehicle', pilot: 'shorted-to-earth' }],
  ['pilot open', 'stand-in: pilot (CP) open', { op: 'vehicle', pilot: 'open' }],
  ['diode sound', 'stand-in: diode sound', { op: 'vehicle', diode: 'sound' }],
  ['diode shorted', 'stand-in: diode shorted', { op: 'vehicle', diode: 'shorted' }],
  ['earth sound', 'stand-in: PE sound', { op: 'vehicle', earth: 'sound' }],
  ['earth open', 'stand-in: PE open', { op: 'vehicle', earth: 'open' }],
  ['authorise', 'press: authorise', { op: 'press', button: 'authorise' }],
  ['override', 'press: override the delay', { op: 'press', button: 'override-delay' }],
  ['stop', 'press: stop', { op: 'press', button: 'stop' }],
  ['emergency', 'press: emergency stop', { op: 'press', button: 'emergency' }],
  ['test button', 'press: test button of the residual device', { op: 'press', button: 'residual-test' }],
  ['reset unit', 'reset the unit, as its sheet says', { op: 'reset', what: 'unit' }],
  ['reset supply', 'supply off 10 s and on', { op: 'reset', what: 'supply' }],
  ['reset upstream', 'reset the device at the origin', { op: 'reset', what: 'upstream' }],
  ['check', 'check the instruments', { op: 'check-instruments' }],
  ['null', 'null the leads', { op: 'null-leads' }],
  ['dead origin', 'prove dead at the origin', { op: 'prove-dead', at: 'origin' }],
  ['dead supply', 'prove dead at the unit’s supply terminals', { op: 'prove-dead', at: 'supply' }],
  ['dead outlet', 'prove dead at the outlet', { op: 'prove-dead', at: 'outlet' }],
  ['isolate', 'isolate at the origin: all poles, locked', { op: 'isolate' }],
  ['isolate line', 'isolate at the origin: line poles only, locked', { op: 'isolate', poles: 'line' }],
  ['energise', 'energise', { op: 'energise' }],
  ['open cover', 'open the cover', { op: 'open-cover' }],
  ['close cover', 'close the cover', { op: 'close-cover' }],
  ['discharge', 'wait for stored energy to go', { op: 'discharge' }],
  ['take off', 'take the unit’s conductors off', { op: 'disconnect', what: 'unit' }],
  ['connect', 'connect the unit’s conductors', { op: 'reconnect', what: 'unit' }],
  ['pull', 'pull at the plug', { op: 'pull-plug' }],
  ['flex', 'bend the cable', { op: 'flex-cable' }],
  ['rest', 'let the cable rest', { op: 'flex-cable', on: false }],
  ['look', 'look it over', { op: 'inspect' }],
  ['guard', 'guard the area', { op: 'guard' }],
  ...[4, 6, 10].map(
    (amps): Act => [`limit ${amps}`, `disturbance: load limit ${amps} A`, { op: 'supply', loadLimit: amps }],
  ),
  ['no limit', 'disturbance: no load limit', { op: 'supply', loadLimit: null }],
];

const ARRESTER: readonly Act[] = [
  ['take off arrester', 'take the surge arrester off', { op: 'disconnect', what: 'arrester' }],
  ['connect arrester', 'connect the surge arrester', { op: 'reconnect', what: 'arrester' }],
];

/** Dead work at the origin: what can be taken off, and the links for R1 + R2. */
const originActs = (site: Site): readonly Act[] => {
  const what = site.earthing === 'TT' ? 'electrode' : 'earthing-conductor';
  const words = site.earthing === 'TT' ? 'earth electrode' : 'earthing conductor';
  return [
    ['earth off', `take the ${words} off`, { op: 'disconnect', what }],
    ['earth on', `connect the ${words}`, { op: 'reconnect', what }],
    ...linesOf(site).flatMap((x): Act[] => [
      [`link ${x}`, `link ${x} to PE at the origin`, { op: 'link', between: [`origin.${x}`, 'origin.PE'] }],
      [`unlink ${x}`, `take the ${x} link out`, { op: 'unlink', between: [`origin.${x}`, 'origin.PE'] }],
    ]),
  ];
};

/** What the tutor, or the maker's test function, can do to the supply. */
const disturbances = (papers: Papers): readonly Act[] => [
  ...(papers.sheet.openPen === 'none'
    ? []
    : ([['pen hazard', 'disturbance: what the open-PEN measure watches for', disturb(papers)]] as const)),
  ['high volts', 'disturbance: supply at 260 V', { op: 'supply', voltage: 260 }],
  ...(papers.site.phases === 3
    ? LINES.map((line): Act => [`lose ${line}`, `disturbance: ${line} lost`, { op: 'supply', missing: line }])
    : []),
  ['all back', 'disturbance: every conductor back', { op: 'supply', missing: null }],
  ['as it was', 'disturbance over: supply as it was', restore(papers)],
];

const CODING: readonly Act[] = [
  ...CABLE_CODINGS.map(
    (coding): Act => [`coding ${coding}`, `coding in the plug: ${coding} A`, { op: 'vehicle', coding }],
  ),
  ['coding none', 'coding in the plug: none', { op: 'vehicle', coding: null }],
];

interface Props {
  readonly papers: Papers;
  readonly onDo: (operation: OperationInput) => void;
}

export function Do({ papers, onDo }: Props) {
  const { site, sheet } = papers;
  const [name, setName] = useKept('act', '');
  const [seconds, setSeconds] = useKept('act seconds', '3');
  const acts = [
    ...ACTS,
    ...originActs(site),
    ...disturbances(papers),
    ...(sheet.loadLimit === null
      ? []
      : ([
          [
            'own limit',
            `disturbance: load limit ${sheet.loadLimit} A as on the sheet`,
            { op: 'supply', loadLimit: sheet.loadLimit },
          ],
        ] as const)),
    ...(sheet.surgeArrester ? ARRESTER : []),
    ...(sheet.outlet === 'socket' ? CODING : []),
  ];
  const typed = typedNumber(seconds);
  const chosen: OperationInput | null =
    name === 'wait'
      ? typed === null || typed <= 0 || typed > 3600
        ? null
        : { op: 'wait', seconds: typed }
      : (acts.find(([other]) => other === name)?.[2] ?? null);
  return (
    <section className="stack" aria-labelledby="do-heading">
      <h3 id="do-heading">Do</h3>
      <Choice
        label="act"
        none="choose"
        options={[['wait', 'wait'], ...acts.map(([act, text]): [string, string] => [act, text])]}
        value={name}
        onChange={setName}
      />
      {name === 'wait' ? (
        <TextField
          label="seconds"
          numeric
          value={seconds}
          onChange={setSeconds}
          error={chosen === null ? 'Seconds up to 3600 are expected.' : null}
        />
      ) : null}
      <button type="button" disabled={chosen === null} onClick={() => chosen !== null && onDo(chosen)}>
        Do it
      </button>
    </section>
  );
}
