// What commands of the editor need of git and the typesetter: loaded with the first command that asks for it.
export { changeHistory } from './change-history.ts';
export { compareSince } from './compare.ts';
export { coveredIn } from './git-covered.ts';
export { pdfOf } from './pdf.ts';
export { revisionChoices } from './revision-choices.ts';
