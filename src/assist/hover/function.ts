// A function: its form, what it gives, its formula, source, needs and an example.

import { describeReferent } from '../describe-function.ts';
import { type Referent, textOfModule } from '../referent.ts';
import { code, fact, type HoverPart, shortened, text } from './part.ts';

export function functionParts(referent: Referent): readonly HoverPart[] {
  if (referent.name === 'absolute_zero')
    return [code('absolute_zero'), text('the point −273.15 °C; `T - absolute_zero` is in kelvins above zero')];
  const described = describeReferent(referent);
  if (!described) return [];
  const { form, description, formula, source, needs, example, library } = described;
  return [
    code(form),
    ...(description === null ? [] : [text(description)]),
    ...fact('formula', shortened(formula)),
    ...fact('from', source),
    ...needs.flatMap(({ condition, because }) => fact('needs', because === null ? condition : `${condition}, because ${because}`)),
    ...fact('example', example),
    ...fact('library', library),
    ...inReference(referent),
  ];
}

/** Functions of the mathematics and of the library are in the reference; those of a sheet are not. */
function inReference(referent: Referent): readonly HoverPart[] {
  const text = referent.kind === 'function' ? textOfModule(referent.item.module) : null;
  const page = text === null ? 'mathematics' : text.kind === 'library' ? text.name : null;
  return page === null ? [] : [{ kind: 'reference', page, of: 'function', name: referent.name ?? '' }];
}
