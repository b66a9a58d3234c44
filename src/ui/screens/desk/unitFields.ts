/** The unit of a job and what its sheet says, field by field: current and cable, what protects, and what controls it. */
import { CABLE_CODINGS } from '../../../laws/proximity.ts';
import { DEVICE_TYPES } from '../../../laws/residualLimits.ts';
import { USUAL_CLEARING } from '../../../scenario/scenario.ts';
import { UNIT } from '../../../scenario/usual.ts';
import { CLEARINGS, LATCH_REASONS, OVER_CODE } from '../../../unit/design.ts';
import { CLEARING_WORDS, OPEN_PEN_WORDS, REASON_WORDS } from '../../../words/papers.ts';
import type { Field, FieldGroup } from './fields.ts';
import { each, figure, oneOf, placed, scaled, worded, yesOrNo } from './fields.ts';
import type { JobFile } from './jobFile.ts';
import { withField } from './jobFile.ts';
import { AREAS, RESIDUAL_SIZES } from './siteFields.ts';

export function unitFields(file: JobFile): readonly FieldGroup[] {
  return [
    { title: 'Current and cable', fields: current(file) },
    { title: 'What protects', fields: protection(file) },
    { title: 'Starting, and giving way', fields: control(file) },
    { title: 'What it waits for after a stop', fields: clearing(file) },
  ];
}

function current({ unit }: JobFile): readonly Field[] {
  const isTethered = unit.outlet === 'tethered';
  const cable = isTethered ? 'unit.cable' : 'unit.customerCable';
  const whose = isTethered ? 'tether' : 'customer’s cable';
  return [
    figure(placed('unit.ratedCurrent'), 'rated current', 'A', [6, 80]),
    figure(placed('unit.setCurrent', unit.ratedCurrent), 'set to', 'A', [6, unit.ratedCurrent]),
    figure(placed(`${cable}.length`), `${whose}, length`, 'm', [0.5, 50]),
    oneOf(placed(`${cable}.area`), `${whose}, area`, AREAS),
    oneOf(placed(`${cable}.coding`), `${whose}, coded for`, each(CABLE_CODINGS, 'A')),
    ...(isTethered ? [] : socket),
    oneOf(
      placed('unit.ventilation', UNIT.ventilation),
      'ventilation',
      yesOrNo('can be switched on', 'none: state D is refused'),
    ),
    figure(placed('unit.leastVoltage'), 'declared for a supply from', 'V', [150, 230], 'nothing is declared'),
    figure(
      scaled(placed('unit.poleBleed'), 0.001),
      'path across each open pole',
      'kΩ',
      [1, 10_000],
      'no path',
    ),
  ];
}

const socket: readonly Field[] = [
  oneOf(
    placed('unit.holdInB', UNIT.holdInB),
    'plug is held',
    yesOrNo('from the moment a vehicle is connected', 'before the contactor closes'),
  ),
  figure(
    scaled(placed('unit.overCode.margin', OVER_CODE.margin), 100),
    'cut off above the cable’s coding by more than',
    '%',
    [10, 50],
  ),
  figure(placed('unit.overCode.seconds', OVER_CODE.seconds), 'after', 's', [0.1, 60]),
];

function protection(file: JobFile): readonly Field[] {
  const { residual, openPen = UNIT.openPen } = file.unit;
  return [
    oneOf(deviceType, 'residual device in the unit', [
      ['none: it belongs upstream', null],
      ...DEVICE_TYPES.map((type) => [`type ${type}`, type] as const),
    ]),
    ...(residual.type === null
      ? []
      : [
          oneOf(placed('unit.residual.rated'), 'unit’s residual device, rated', RESIDUAL_SIZES),
          oneOf(
            placed('unit.residual.by'),
            'unit’s residual device opens',
            worded({ contactor: 'the contactor', breaker: 'its own breaker' }),
          ),
        ]),
    oneOf(placed('unit.residual.direct', null), 'd.c. detection', [
      ['none', null],
      ['trips (protective)', 'protective'],
      ['opens the contactor (monitoring)', 'monitoring'],
    ]),
    oneOf(placed('unit.openPen', UNIT.openPen), 'open-PEN measure', worded(OPEN_PEN_WORDS)),
    ...(openPen === 'none'
      ? []
      : [
          oneOf(
            placed('unit.openPenRidesOut', UNIT.openPenRidesOut),
            'open-PEN time',
            yesOrNo('opens within 5 s, rides out 4 s', 'opens within 1 s, rides out nothing'),
          ),
          oneOf(
            placed('unit.openPenUnpowered', UNIT.openPenUnpowered),
            'its PE pole without power',
            worded({ closed: 'stays closed', open: 'stands open' }),
          ),
        ]),
    oneOf(
      placed('unit.diodeCheck', UNIT.diodeCheck),
      'vehicle’s diode is checked',
      worded({ 'before-closing': 'before the contactor closes only', always: 'all the time' }),
    ),
    oneOf(placed('unit.surgeArrester', UNIT.surgeArrester), 'surge arrester', yesOrNo('fitted', 'none')),
    oneOf(
      placed('unit.insulationTestVoltageMax', UNIT.insulationTestVoltageMax),
      'insulation tests, at most',
      each([50, 100, 250, 500], 'V d.c.'),
    ),
  ];
}

/** Without a device there is nothing that is rated or opens. */
const deviceType = {
  ...placed('unit.residual.type'),
  read: (file: JobFile) => file.unit.residual.type,
  write: (file: JobFile, type: unknown) => {
    const { rated = 0.03, by = 'contactor', direct } = file.unit.residual;
    const whole = type === null ? { type, direct } : { type, rated, by, direct };
    return withField(file, ['unit', 'residual'], whole);
  },
};

function control(file: JobFile): readonly Field[] {
  const { phases } = file.site;
  const { permission, schedule } = file.unit;
  return [
    figure(placed('unit.startUp', UNIT.startUp), 'start-up', 's', [0.1, 50]),
    figure(placed('unit.startDelay', UNIT.startDelay), 'longest random start delay', 's', [0, 1800]),
    oneOf(
      placed('unit.permission', UNIT.permission),
      'permission to charge',
      worded({
        open: 'none needed',
        authorise: 'has to be authorised',
        held: 'held back by the site’s load management',
      }),
    ),
    ...(permission === 'authorise'
      ? [
          oneOf(
            placed('unit.authoriseBefore', UNIT.authoriseBefore),
            'authorised',
            yesOrNo('before plugging in too', 'only once a vehicle is connected'),
          ),
        ]
      : []),
    oneOf(placed('unit.schedule', null), 'charging hours', [
      ['none', null],
      ['not at weekday peaks: 08:00 to 11:00, 16:00 to 22:00', 'default-hours'],
    ]),
    ...(schedule == null
      ? []
      : [
          oneOf(
            placed('unit.hoursEnd', UNIT.hoursEnd),
            'when the hours end, a charge stops',
            worded({ 'at-once': 'at once', delayed: 'after a random delay' }),
          ),
        ]),
    figure(placed('unit.loadLimit'), 'load limit from the site', 'A', [0, 80], 'none'),
    figure(
      placed('unit.serviceLimit'),
      'service sensor: offers what is left of, each line',
      'A',
      [10, 200],
      'no sensor',
    ),
    ...(phases === 1
      ? []
      : [
          oneOf(
            placed('unit.lostLine', UNIT.lostLine),
            'without a line that does not feed it',
            worded({ stops: 'it stops', 'goes-on': 'it goes on with those left' }),
          ),
        ]),
  ];
}

/** After a trip no unit may close by itself, so that is not to be chosen there. */
function clearing({ unit }: JobFile): readonly Field[] {
  const { openPen = UNIT.openPen } = unit;
  return LATCH_REASONS.filter((reason) => reason !== 'openPen' || openPen !== 'none').map((reason) => {
    const isTrip = reason === 'residual' || reason === 'direct';
    const after = CLEARINGS.filter((one) => !isTrip || one === 'reset' || one === 'supply');
    const place = placed(`unit.clearsBy.${reason}`, USUAL_CLEARING[reason]);
    return oneOf(
      // A file may call the same by another word.
      { ...place, read: (job) => (place.read(job) === 'restored' ? 'self' : place.read(job)) },
      REASON_WORDS[reason],
      after.map((one) => [CLEARING_WORDS[one], one]),
    );
  });
}
