// All targets, in the order of the way through.
import type { Target } from './target.ts';
import { checker } from './targets/checker.ts';
import { csv } from './targets/csv.ts';
import { evaluate } from './targets/evaluate.ts';
import { exports } from './targets/exports.ts';
import { frontMatter } from './targets/front-matter.ts';
import { lexer } from './targets/lexer.ts';
import { parser } from './targets/parser.ts';
import { sheetReader } from './targets/sheet-reader.ts';
import { tables } from './targets/tables.ts';
import { writingHelp } from './targets/writing-help.ts';

export const TARGETS: readonly Target[] = [lexer, parser, checker, sheetReader, frontMatter, tables, csv, evaluate, writingHelp, exports];
