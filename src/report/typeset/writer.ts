// What the writers of the parts of a document ask of each other.
import type { ViewNode } from '../../view/node.ts';
import type { Code } from './code.ts';

export interface Writer {
  /** Nodes one after the other: lines, paragraphs and blocks. */
  readonly content: (nodes: readonly ViewNode[]) => Code;
  /** Makes a place that links lead to; nothing where there is one of that name already. */
  readonly place: (id: string) => Code;
}
