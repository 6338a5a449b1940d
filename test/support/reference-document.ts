// The notation's reference as what it is: a small sheet under each heading.
import { evaluateSheet } from '../../src/run/evaluate.ts';
import { recordSheet } from '../../src/run/record.ts';
import { filesOf } from './answers.ts';

/** A sheet that the examples use. */
const FILES = { 'standards.ampwright.md': '```ampwright\nshare = 3 %   from specification "invented"\n```\n' };

/** Its sections, each from a heading to the next. */
export function sectionsOf(document: string): readonly string[] {
  return document.split(/^(?=#{1,3} )/m);
}

/** The section with its results as they come out. */
export function recordedSection(section: string): string {
  return recordSheet(evaluateSheet(section, filesOf(FILES)));
}
