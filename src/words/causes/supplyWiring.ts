/** What each cause of this kind is, where it sits, how it comes about, who is at risk and which test tells it. */
import type { CauseWords } from '../causeWords.ts';

export const supplyWiring: Readonly<Record<string, CauseWords>> = {
  'line-neutral-crossed': {
    where: 'the unit’s supply terminals',
    cause:
      'The installer put the line core into the neutral terminal, and the neutral core into the line terminal.',
    hazard:
      'A device that opens only the line now opens the neutral. Whoever works behind it finds live parts that seem to be off.',
    tells:
      'With line and PE linked at the origin, the unit’s line terminal reads open and its neutral terminal reads R1 + R2. A broken line also reads open, but then the neutral terminal reads open too.',
  },
  'lines-crossed': {
    where: 'the unit’s supply terminals, L2 and L3',
    cause: 'The installer landed the cores in the order in which they came.',
    hazard:
      'A three-phase motor would run backwards. Load sharing counts the current on the wrong line, and another line may be overloaded.',
    tells:
      'With L2 and PE linked at the origin, the unit’s L3 terminal reads R1 + R2 and L2 reads open. With power, the outlet shows the reverse rotation; a missing line shows none.',
  },
  'line-missing': {
    where: 'the line core between board and unit',
    cause: 'A link at the board is loose, or the core is broken in the run.',
    hazard:
      'Nobody is shocked by the break itself, but the core stays live up to it. The unit stays dark, or the vehicle gets fewer lines than it should.',
    tells:
      'R1 + R2 reads over-range for this line alone, and no other terminal reads to PE in its place, as crossed lines would. A contactor pole that never closes lies behind the supply terminals, so R1 + R2 reads right there.',
  },
  'line-loss-unnoticed': {
    where: 'the unit’s sensing of L2 and L3',
    cause: 'The sensing wires of L2 and L3 are off.',
    hazard:
      'The vehicle goes on charging on fewer lines than it counts on. Its charger may overload the lines that are left, or fail.',
    tells:
      'Every reading is right while three lines arrive. Switch off a line other than the one that feeds the electronics: the lines that are left stay live at the outlet, though the unit’s sheet says that it stops.',
  },
  'neutral-missing': {
    where: 'the neutral core between board and unit',
    cause: 'The core is broken, or was not put into its terminal.',
    hazard: 'The unit seems dead, but its line terminals are live. Whoever opens it may touch them.',
    tells:
      'The electronics get no current without a neutral, so the display stays dark at switch-on. The supply at the origin is right, and R1 + R2 reads right, as only lines are linked there; with the line broken the display is dark too, but R1 + R2 reads over-range.',
  },
  'neutral-joint': {
    where: 'the neutral core between board and unit',
    cause: 'A terminal was not tightened.',
    hazard:
      'The charging current heats the joint for hours. Its insulation chars, and it may set the board or the unit on fire.',
    tells:
      'The joint lies in the neutral alone, so a loop test at the outlet reads high from line to neutral and right from line to PE. A worn line pole raises both readings, and a poor PE joint raises line to PE only.',
  },
  'terminal-warms': {
    where: 'the unit’s line terminal; the setting is what the joint adds at 32 A',
    cause: 'The joint has oxidised. The warmer the load makes it, the more ohms it has.',
    hazard:
      'The joint turns the charging current into heat for hours. Its plastic chars, and it may set the unit on fire.',
    tells:
      'Cold, the joint adds almost nothing, so R1 + R2 and the loop read right. Under the full load far more volts are lost than the conductors explain, and the inspection finds the terminal browned; a worn pole raises the loop when cold as well.',
  },
  'neutral-earth-joined': {
    where: 'a link between N and PE at the unit’s supply terminals',
    cause: 'Somebody misread the earthing of the site and fitted a link that is not wanted.',
    hazard:
      'Load current flows in the protective conductor and in everything joined to it. Residual devices trip without a fault, or miss one.',
    tells:
      'Insulation of the circuit, unit taken off, reads 0.00 MΩ from neutral to PE. A continuity tester then reads nearly 0 Ω between the two, where damaged insulation reads from some tens of ohms upwards.',
  },
  'neutral-borrowed': {
    where: 'the board: this circuit’s neutral core is in the neutral terminal of another circuit',
    cause: 'The core was too short for its own terminal, or the installer took the nearest free one.',
    hazard:
      'The neutral stays joined when this circuit is isolated. If the other circuit’s neutral is lifted, this one rises to mains voltage through whatever is switched on.',
    tells:
      'With every pole open at the origin the neutral should lead nowhere, yet it reads to PE in the test of R1 + R2, and 0.00 MΩ in that of the insulation. A link of neutral and PE at the unit reads the same; take the core off at the board, and only the link is left.',
  },
  'circuit-shared': {
    where: 'a spur on the circuit’s cable; the setting is the power of what hangs on it',
    cause: 'Somebody needed a socket and took the supply from the nearest cable.',
    hazard:
      'The other load adds to the charging current, so the cable overheats or the breaker trips. Whoever isolates the unit also cuts off the other load, and whoever isolates that load leaves it live.',
    tells:
      'The other load joins line and neutral, so with line and PE linked at the origin the neutral reads tens of ohms too. Insulation of the circuit, unit taken off, reads 0.00 MΩ from line to neutral; crushed cable seldom reads so low. Find the load and take it off.',
  },
  'schedule-names-other-way': {
    where: 'the board’s schedule: it names another way than the one that feeds the unit',
    cause: 'Circuits were moved when the board was changed, and nobody corrected the schedule.',
    hazard:
      'Somebody switches off and locks the way that the schedule names, and opens the unit. Its terminals are live.',
    tells:
      'Isolate the way in the schedule: the display stays lit. The outgoing terminals of that way prove dead at the board, but the unit’s supply terminals prove live. Stop there, and find the right way; the main switch makes everything dead meanwhile.',
  },
  'breaker-too-slow': {
    where: 'the circuit’s breaker at the board',
    cause: 'The installer fitted the breaker that was to hand.',
    hazard:
      'The breaker needs more current to open at once. An earth fault may stay on for seconds, and the case stays live meanwhile.',
    tells:
      'No reading changes, as a breaker’s type has no ohms. The inspection finds the marking; the loop at the outlet may then lie above the limit for the marked type, though within the limit for the type in the papers.',
  },
  'breaker-rated-too-high': {
    where: 'the circuit’s breaker at the board',
    cause: 'The breaker tripped, and somebody fitted the next size that was to hand.',
    hazard:
      'An overload that the cable does not carry flows for hours, and the breaker stays closed. The cable’s insulation fails, and it can start a fire.',
    tells:
      'No reading changes, as a breaker’s rating has no ohms. The inspection finds the marking: its rating is above the one in the papers, and above what the cable carries. In a wrong design the papers and the marking agree.',
  },
  'breaker-rated-too-low': {
    where: 'the circuit’s breaker at the board',
    cause: 'The installer fitted the breaker that was in the van, or kept the one of an older circuit.',
    hazard:
      'None to people: the breaker warms under the charging current and trips in the middle of a charge. Somebody may then fit one that is too large.',
    tells:
      'The inspection finds the marking: its rating is below the one in the papers. A short load does not trip it; hours at the set current do. A residual device that trips would leave this breaker closed.',
  },
  'supply-loop-high': {
    where: 'the supply’s return conductor, before the origin',
    cause: 'The service is long, or a joint in the distributor’s cable is poor.',
    hazard:
      'Too little fault current flows, so a breaker may open too late. Until then every earthed case stands at a voltage.',
    tells:
      'Ze reads above its papers before anything of the site is in the loop, and every loop behind the origin is higher by the same ohms. A loose main earthing conductor leaves Ze right; with the PEN open, Ze gives no reading.',
  },
  'tails-crossed': {
    where: 'line and neutral of the supply, between the meter and the board',
    cause: 'The tails were put back the wrong way round when the meter or the board was changed.',
    hazard:
      'Every single-pole switch and breaker of the house opens the neutral. What is switched off stays live, and touching it gives a shock.',
    tells:
      'With power on the board, neutral to earth reads 230 V and line to earth reads 0 V, so Ze gives no reading from the line. Every dead test is right, as no core of the circuit is crossed; one crossed at the unit would show in R1 + R2.',
  },
  'supply-crossed': {
    where: 'line and neutral of the supply, ahead of the point where the earth is taken from the neutral',
    cause: 'A joint of the service cable was made the wrong way round.',
    hazard:
      'The main earthing terminal is joined to the line. Every earthed case, the pipes and the vehicle’s body stand at mains voltage to the ground, and nothing trips.',
    tells:
      'Line to neutral and line to earth read 230 V and Ze is right, because the earth is crossed together with the neutral. Only the voltage from the earthing terminal to a remote rod shows it: about 230 V. With an open PEN, Ze gives no reading.',
  },
  'voltage-high': {
    where: 'the distributor’s supply',
    cause: 'Generators nearby lift the voltage, or the transformer is set too high.',
    hazard: 'Equipment wears out early or fails. The unit may lock out, and it is right to do so.',
    tells:
      'Line to neutral at the origin reads above 253 V and hardly moves as a load comes on. With an open PEN it moves by tens of volts, and the earthing terminal rises from true earth.',
  },
  'voltage-low': {
    where: 'the distributor’s supply',
    cause: 'The network is weak, or many houses share a long service.',
    hazard:
      'Motors draw more current and overheat, and electronics switch off. The unit may lock out, and it is right to do so.',
    tells:
      'Line to neutral at the origin reads below 216 V even at rest. A poor joint in the circuit drops volts only under load, and between origin and outlet; an open PEN lifts the earthing terminal from true earth.',
  },
};
