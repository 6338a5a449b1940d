// The checker's one switch over all kinds of expression.
import type * as ast from '../ast.ts';
import type { Checked } from '../checked.ts';
import { checkNegation, checkPower, checkProduct, checkSquareRoot, checkSum } from './arithmetic.ts';
import { checkCall } from './calls.ts';
import { type Context, unknown } from './context.ts';
import { checkList } from './lists.ts';
import { checkDate, checkQuantity, checkReadings, checkText, checkYesNo } from './literals.ts';
import { checkComparison, checkIf, checkJunction, checkNot } from './logic.ts';
import { checkMember, checkName, checkRow } from './names.ts';
import { checkRoot } from './roots.ts';
import { checkChoice, checkLookUp } from './selections.ts';

/** The checked form of an expression: type, dimension and meaning of every name; problems go to the context. */
export function dispatch(c: Context, node: ast.Expression): Checked {
  switch (node.kind) {
    case 'quantity':
      return checkQuantity(c, node, c.item.label);
    case 'readings':
      return checkReadings(c, node, c.item.label);
    case 'date':
      return checkDate(node);
    case 'text':
      return checkText(node);
    case 'yesno':
      return checkYesNo(node);
    case 'name':
      return checkName(c, node);
    case 'row':
      return checkRow(c, node);
    case 'call':
      return checkCall(c, node);
    case 'member':
      return checkMember(c, node);
    case 'list':
      return checkList(c, node);
    case 'negate':
      return checkNegation(c, node);
    case 'sum':
      return checkSum(c, node);
    case 'product':
      return checkProduct(c, node);
    case 'power':
      return checkPower(c, node);
    case 'squareRoot':
      return checkSquareRoot(c, node);
    case 'comparison':
      return checkComparison(c, node);
    case 'and':
    case 'or':
      return checkJunction(c, node);
    case 'not':
      return checkNot(c, node);
    case 'if':
      return checkIf(c, node);
    case 'choice':
      return checkChoice(c, node);
    case 'lookUp':
      return checkLookUp(c, node);
    case 'rootOf':
      return checkRoot(c, node);
    case 'group':
      return dispatch(c, node.inner);
    case 'hole':
      return unknown(node.at);
    default:
      return node satisfies never;
  }
}
