// The compiler's one switch: a checked expression becomes a closure over numbers in SI.
import type { Checked, CheckedIf, CheckedJunction } from '../checked.ts';
import { compileNegate, compilePower, compileProduct, compileSquareRoot, compileSum } from './arithmetic.ts';
import { compileBuiltin, compileCall } from './calls.ts';
import { compileChoice } from './choices.ts';
import { compileComparison } from './comparisons.ts';
import { type Compiler, compileYesNo } from './compiler.ts';
import type { Evaluate, Run } from './frame.ts';
import { compileLookUp } from './look-ups.ts';
import { compileRoot } from './roots.ts';
import * as values from './values.ts';

/** A compiler for the expressions of one frame. */
export function compilerOf(inFunction = false): Compiler {
  const k: Compiler = { compile: (node) => folded(node, compile(k, node)), lets: [], inFunction, forBody: () => compilerOf(true) };
  return k;
}

/** What is made of constants alone is worked out once; what has no value is left to say so where it runs. */
function folded(node: Checked, code: Evaluate): Evaluate {
  if (node.kind === 'constant' || !isConstant(node)) return code;
  try {
    const value = code({ locals: [], run: NO_RUN });
    return () => value;
  } catch {
    return code;
  }
}

const NO_RUN: Run = {
  get item(): never {
    throw new Error('constants have no item');
  },
  notes: [],
  met: 0,
  shifting: true,
  choice: null,
  spread: () => {
    throw new Error('constants are exact');
  },
};

function isConstant(node: Checked): boolean {
  switch (node.kind) {
    case 'constant':
      return true;
    case 'negate':
    case 'squareRoot':
      return isConstant(node.operand);
    case 'sum':
      return node.terms.every((t) => isConstant(t.operand));
    case 'product':
      return node.factors.every((f) => isConstant(f.operand));
    case 'power':
      return isConstant(node.base) && isConstant(node.exponent);
    case 'builtin':
      return node.builtin.run.kind === 'scalar' && node.args.every(isConstant);
    default:
      return false;
  }
}

function compile(k: Compiler, node: Checked): Evaluate {
  switch (node.kind) {
    case 'constant':
      return values.compileConstant(node);
    case 'input':
      return values.compileInput(node);
    case 'reading':
      return values.compileReading(k, node);
    case 'readings':
      return values.compileReadings(k, node);
    case 'entry':
      return values.compileEntry(node);
    case 'local':
      return values.compileLocal(k, node);
    case 'lets':
      return values.compileLets(k, node);
    case 'column':
      return values.compileColumn(node);
    case 'cell':
      return values.compileCell(k, node);
    case 'cells':
      return values.compileCells(k, node);
    case 'table':
      return values.compileTable(node);
    case 'list':
      return values.compileList(k, node);
    case 'negate':
      return compileNegate(k, node);
    case 'sum':
      return compileSum(k, node);
    case 'product':
      return compileProduct(k, node);
    case 'power':
      return compilePower(k, node);
    case 'squareRoot':
      return compileSquareRoot(k, node);
    case 'comparison':
      return compileComparison(k, node);
    case 'and':
    case 'or':
      return compileJunction(k, node);
    case 'not': {
      const operand = compileYesNo(k, node.operand);
      return (f) => !operand(f);
    }
    case 'if':
      return compileIf(k, node);
    case 'builtin':
      return compileBuiltin(k, node);
    case 'call':
      return compileCall(k, node);
    case 'choice':
      return compileChoice(k, node);
    case 'lookUp':
      return compileLookUp(k, node);
    case 'root':
      return compileRoot(k, node);
    default:
      return node satisfies never;
  }
}

/** Left to right, stopping early (P6). */
function compileJunction(k: Compiler, node: CheckedJunction): Evaluate<boolean> {
  const operands = node.operands.map((o) => compileYesNo(k, o));
  return node.kind === 'and' ? (f) => operands.every((o) => o(f)) : (f) => operands.some((o) => o(f));
}

/** Evaluates the chosen branch alone (P6). */
function compileIf(k: Compiler, node: CheckedIf): Evaluate {
  const condition = compileYesNo(k, node.condition);
  const then = k.compile(node.then);
  const otherwise = k.compile(node.otherwise);
  return (f) => (condition(f) ? then(f) : otherwise(f));
}
