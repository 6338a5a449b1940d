// Signature help: which function, and which of its arguments.
import { type SignatureHelp, signatureHelp } from '../../src/assist/signature-help.ts';
import { opened, same } from './support.ts';

/** The form with the parameter in question marked below, and what is said of it. */
function check(marked: string, expected: string): void {
  const { open, spot } = opened(marked);
  same(shown(signatureHelp(open, spot)), expected);
}

function shown(help: SignatureHelp | null): string {
  if (help === null) return 'nothing';
  const active = help.active === null ? null : help.parameters[help.active]!;
  const mark = active ? [`${' '.repeat(active.at.start)}${'^'.repeat(active.at.end - active.at.start)} ${active.documentation}`] : [];
  return [help.label, ...mark].join('\n');
}

describe('signature help', () => {
  it('counts the arguments before the cursor', () => {
    check('x = fla_dc(|', 'fla_dc(P: kW, U: V, eta): A\n       ^^^^^ kW; the rated shaft power is above zero');
    check(
      'x = fla_dc(1 kW, |',
      'fla_dc(P: kW, U: V, eta): A\n              ^^^^ V; the rated voltage is above zero: take it from the plate',
    );
    check(
      'x = fla_dc(1 kW, 2 V, 9|0 %)',
      'fla_dc(P: kW, U: V, eta): A\n                    ^^^ a plain number; an efficiency is above 0 and at most 100 %: for 85 percent write 85 % or 0.85',
    );
    check('x = fla_dc(1 kW, 2 V, 90 %, |', 'fla_dc(P: kW, U: V, eta): A');
  });

  it('knows named arguments', () => {
    check(
      'x = fla_dc(eta = |',
      'fla_dc(P: kW, U: V, eta): A\n                    ^^^ a plain number; an efficiency is above 0 and at most 100 %: for 85 percent write 85 % or 0.85',
    );
    check(
      'x = fla_dc(P = 1 kW, U = max(1 V, 2 V) + |, eta = 90 %)',
      'fla_dc(P: kW, U: V, eta): A\n              ^^^^ V; the rated voltage is above zero: take it from the plate',
    );
  });

  it('is of the innermost call, past brackets that are closed', () => {
    check('f(a, b) = a + b\nx = f(f(1, 2), (3 + |', 'nothing');
    check('f(a, b) = a + b\nx = f(f(1, 2), |', 'f(a, b)\n     ^ a plain number');
    check('f(a: [V], b) = b\nx = f([1 V, 2 V], |', 'f(a: [V], b)\n          ^ a plain number');
    check('f(a) = a\nx = f(|sqrt(2))', 'f(a)\n  ^ a plain number');
    check('x = sqrt(|2)', 'sqrt(x)\n     ^ a quantity that is not negative');
  });

  it('stays with the last parameter where there may be more', () => {
    check('x = min(1, 2, |', 'min(xs) or min(a, b, …)\n    ^^ a list, or several values of one kind');
  });

  it('goes on over lines', () => {
    check(
      'x = fla_dc(1 kW,\n  |2 V)',
      'fla_dc(P: kW, U: V, eta): A\n              ^^^^ V; the rated voltage is above zero: take it from the plate',
    );
  });

  it('is silent outside of calls and for what is no function', () => {
    check('x = fla_dc(1 kW, 2 V, 90 %)|', 'nothing');
    check('x = fla_dc|(1 kW, 2 V, 90 %)', 'nothing');
    check('x = (|', 'nothing');
    check('x = unknown(|', 'nothing');
    check('f(a|, b) = a', 'nothing');
    check('|', 'nothing');
  });
});
