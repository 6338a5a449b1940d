// Register of requirements: each with its status, both sides, margin, reason and concession.
import { formula } from '../../view/ledger/parts.ts';
import { FORCE, status } from '../../view/ledger/requirement.ts';
import { element } from '../../view/node.ts';
import { sidesText } from '../../view/sentence.ts';
import { blockLink, type Register, rowsOf, table } from './register.ts';

export const requirements: Register = {
  id: 'requirements',
  title: 'Requirements',
  make: ({ view }) => {
    const lines = rowsOf(view).flatMap(({ row, block }) => {
      if (row.kind !== 'requirement') return [];
      const { sides, concession } = row;
      return [
        [
          [element('div', {}, FORCE[row.force]), formula(row.condition.parts, 2), row.description],
          status(row.status),
          [
            sides && element('div', {}, sidesText(sides)),
            sides && element('div', {}, [sides.margin, sides.uncertainty].filter(Boolean).join(', ')),
            row.missing,
            row.throughout,
          ],
          [
            row.because,
            concession && element('div', {}, `Concession: accepted by ${concession.by} until ${concession.until}: ${concession.because}`),
          ],
          blockLink(block),
        ],
      ];
    });
    return lines.length === 0 ? null : table(['Requirement', 'Status', 'Sides and margin', 'Reason', 'Place'], lines);
  },
};
