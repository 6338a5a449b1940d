// The library's sheets in the order in which the reference lists them.
import balance from './balance.ampwright.md';
import coils from './coils.ampwright.md';
import conductors from './conductors.ampwright.md';
import contactors from './contactors.ampwright.md';
import contacts from './contacts.ampwright.md';
import insulation from './insulation.ampwright.md';
import motors from './motors.ampwright.md';
import protection from './protection.ampwright.md';
import safety from './safety.ampwright.md';
import starting from './starting.ampwright.md';

export interface LibrarySheet {
  readonly name: string;
  readonly text: string;
}

export const LIBRARY_SHEETS: readonly LibrarySheet[] = [
  { name: 'motors', text: motors },
  { name: 'starting', text: starting },
  { name: 'balance', text: balance },
  { name: 'contactors', text: contactors },
  { name: 'coils', text: coils },
  { name: 'contacts', text: contacts },
  { name: 'conductors', text: conductors },
  { name: 'protection', text: protection },
  { name: 'insulation', text: insulation },
  { name: 'safety', text: safety },
];
