// What every sheet says: how decisions are made, what a signature is worth, and what to mind before anyone touches the starter.
import { type ElementNode, element } from '../view/node.ts';

const DECISIONS = [
  'A requirement (shall) is a criterion of acceptance; a recommendation (should) is reported and decides nothing.',
  'Each is decided on the difference between its sides, with guarded acceptance after JCGM 106:2012: it holds where it holds with the expanded uncertainty U of the difference against it, it fails where it fails with U in its favour, and it is undecided between. The guard band is U.',
  'U is the combined standard uncertainty times a coverage factor k for 95.45 % (k = 2 where the degrees of freedom are many, else as stated), after JCGM 100:2008. A width given as limits is taken as rectangular; where only limits contribute, U is never larger than their sum, and no k is stated.',
  'Percent in hand is the margin in percent of the limit. A concession stands beside a status and never changes it.',
] as const;

const CAUTIONS = [
  'Before work on a starter: isolate, lock out, prove the tester, prove dead, prove the tester again.',
  'A live reading needs a permit, an arc-flash boundary, protective equipment and a meter of the right category. A survey says of each reading whether it was taken dead or live.',
  'Never work a contactor by hand on a live circuit. A welded pole leaves the motor live with the control off.',
  'Foreign control voltages stay live behind an open isolator. Discharge capacitors. Disconnect electronics before an insulation test.',
  'Check this sheet against the code that applies where the machine stands. The decision is a competent, where required a licensed, person’s.',
] as const;

const SIGNATURES =
  'The digest and the signatures record who looked at what; version control keeps them honest. They are no electronic signature in law and no professional engineer’s seal.';

/** Cautions where the work can hurt. */
export function cautions(): ElementNode {
  return element('ul', { class: 'aw-cautions' }, ...CAUTIONS.map((c) => element('li', {}, c)));
}

/** The decision rule. */
export function decisionRule(): ElementNode {
  return element('div', {}, ...DECISIONS.map((d) => element('p', {}, d)));
}

/** What digest and signatures are, and are not. */
export function signatureWords(): ElementNode {
  return element('p', {}, SIGNATURES);
}
