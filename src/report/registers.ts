// The registers of the page, in their order.
import { budgets } from './registers/budgets.ts';
import { functions } from './registers/functions.ts';
import { history } from './registers/history.ts';
import { assumptions, inputs, instruments } from './registers/inputs.ts';
import type { Register } from './registers/register.ts';
import { requirements } from './registers/requirements.ts';
import { actions, sources, usedSheets } from './registers/sources.ts';
import { tables } from './registers/tables.ts';

export const REGISTERS: readonly Register[] = [
  requirements,
  actions,
  inputs,
  assumptions,
  instruments,
  budgets,
  functions,
  tables,
  usedSheets,
  sources,
  history,
];
