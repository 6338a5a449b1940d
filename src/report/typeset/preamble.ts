// The look of the document, and the functions that its content calls. Nothing of a sheet stands here.
import { PAPER } from '../../view/style/colours.ts';
import { MATHS, MONO, OTHER_WRITING, SANS } from './faces.ts';

const FAMILIES = [SANS, ...OTHER_WRITING.map(({ family }) => family), MATHS, MONO].map((family) => `"${family}"`).join(', ');

const COLOURS = Object.entries(PAPER)
  .filter(([name]) => !name.startsWith('trace'))
  .map(([name, colour]) => `#let ${name}-colour = rgb("${colour}")`)
  .join('\n');

export const PREAMBLE = `
${COLOURS}
#let hair = 0.4pt + rule-colour
#let heavy = 1pt + heavy-colour
#let quiet(body) = text(fill: quiet-colour, body)
#let holds(body) = text(fill: holds-colour, body)
#let fails(body) = text(fill: fails-colour, body)
#let undecided(body) = text(fill: undecided-colour, body)
#let aside(body) = text(size: 0.92em, quiet(body))
#let label-of(body) = text(size: 0.86em, weight: "bold", quiet(body))
#let whole(body) = box(body)
#let mono(body) = text(font: ("${MONO}", ${FAMILIES}), size: 0.88em, body)

// A place where a line may break; one of no width at all would be dropped.
#let gap = h(0.01pt)
#let run(..pieces) = pieces.pos().join(gap)
#let sign(text) = if text.clusters().len() == 1 { symbol(text) } else { text }
#let eq(alt, body) = math.equation(alt: alt, body)
// Typst lets a formula reach into the leading above and below its line; with little leading it stays clear of its neighbours.
#let formula(body) = block(above: 4pt, below: 4pt, {
  set par(leading: 1.5pt)
  set text(top-edge: 0.78em, bottom-edge: -0.24em)
  body
})
// One line where it fits, broken between parts, then smaller; what would be too small is spelled out as text.
#let fit(..parts) = layout(room => {
  let widest = calc.max(..parts.pos().map(part => measure(part).width))
  if widest <= room.width { parts.pos().join() }
  else if widest * 0.62 <= room.width { text(size: 0.98em * (room.width / widest), parts.pos().join()) }
  else {
    show math.equation: it => mono(it.alt.clusters().join(gap))
    parts.pos().join()
  }
})

#let place-of(id) = [#metadata(none)#label(id)]
#let to(id, body) = if id in places { link(label(id), body) } else { body }

#let caption(body) = block(sticky: true, above: 1.1em, below: 0.5em, text(size: 8pt, weight: "bold", body))
#let summary(body) = block(width: 100%, inset: (left: 9pt, rest: 7pt), fill: tint-colour, stroke: (left: 3pt + heavy-colour), body)
#let lead(body) = block(sticky: true, body)
#let quotation(body) = block(inset: (left: 9pt), stroke: (left: 2pt + rule-colour), quiet(body))
#let listing(..lines) = block(width: 100%, inset: 7pt, stroke: hair, mono(lines.pos().join(linebreak())))
#let put-in(body) = block(width: 100%, above: 3.5pt, inset: (top: 3.5pt), stroke: (top: 0.3pt + rule-colour), body)
#let figures(..items) = par(items.pos().map(box).join(h(1.1em)))
#let problem(mark, body) = block(grid(columns: (16pt, 1fr), mark, body))

#let compact(size, body) = {
  set text(size: size)
  set par(spacing: 0.62em, leading: 0.5em)
  set block(spacing: 0.62em)
  set list(spacing: 0.5em, indent: 0pt, body-indent: 0.4em)
  set enum(spacing: 0.5em)
  body
}
#let head-row(body) = text(size: 0.92em, weight: "bold", quiet(body))
#let ruled-table(size, kept: false, whole: false, width: 100%, ..args) = compact(size, {
  show table.cell.where(y: 0): head-row
  set table.cell(breakable: not kept)
  block(width: width, above: 7pt, below: 9pt, breakable: not whole, outset: (bottom: 0.6pt), stroke: (bottom: heavy), table(
    stroke: (x, y) => (left: if x > 0 { hair }, top: if y == 0 { heavy } else if y == 1 { 0.6pt + heavy-colour } else { hair }),
    inset: (x: 5pt, y: 3.6pt),
    ..args,
  ))
})
#let register(size: 1, ..args) = ruled-table(8pt * size, ..args)
#let slim(size: 1, kept: false, width: 100%, ..args) = compact(7.6pt * size, {
  show table.cell.where(y: 0): head-row
  table(stroke: (x, y) => if y > 0 { (top: hair) }, inset: (x: 4pt, y: 2.6pt), ..args)
})
#let ledger(..args) = ruled-table(8pt, columns: (21fr, 37fr, 22fr, 20fr), ..args)
#let bar-holds = 2.6pt + holds-colour
#let bar-fails = 2.6pt + fails-colour
#let bar-undecided = stroke(paint: undecided-colour, thickness: 2.6pt, dash: (6pt, 2pt))
#let bar-not-calculated = stroke(paint: quiet-colour, thickness: 2.6pt, dash: (1pt, 2pt))
#let decision(bar, ..args, body) = table.cell(
  ..args, fill: tint-colour, stroke: if bar == none { (:) } else { (left: bar) }, body,
)

#let field(name, value) = { text(size: 6.6pt, quiet(name)); linebreak(); value }
#let sheet-count() = context [1 of #counter(page).final().first()]
#let symbol-of(body) = text(size: 1.1em, body)
#let title-block(type: [], title: [], follows: [], code: [], fields: (), signatures: [], digest: [], version: []) = block(
  width: 100%, stroke: 1.4pt + heavy-colour, breakable: true, {
    set block(spacing: 0pt)
    set text(size: 8.5pt)
    grid(columns: (1fr, auto), align: (left + horizon, right + horizon), inset: (x: 10pt, y: 8pt),
      {
        set par(leading: 0.45em)
        quiet(type)
        block(above: 5pt, below: 6pt, heading(level: 1, title))
        quiet(follows)
      },
      code)
    let wide = calc.rem(-fields.len(), 4) + if calc.rem(fields.len(), 4) == 0 { 1 } else { 5 }
    grid(columns: (1fr,) * 4, inset: (x: 10pt, y: 4.5pt), stroke: (x, y) => (top: if y == 0 { 0.7pt + heavy-colour } else { hair }, left: if x > 0 { hair }),
      grid.cell(colspan: wide, fields.first()), ..fields.slice(1))
    block(width: 100%, inset: (x: 10pt, y: 6pt), stroke: (top: 0.7pt + heavy-colour), signatures)
    grid(columns: (1fr, auto), inset: (x: 10pt, y: 4.5pt), stroke: (x, y) => (top: 0.7pt + heavy-colour, left: if x > 0 { hair }), digest, version)
  })
#let page-head(running) = context if counter(page).get().first() > 1 {
  block(width: 100%, inset: (bottom: 3.5pt), stroke: (bottom: 0.6pt + heavy-colour), text(size: 7.2pt, quiet(running)))
}
#let page-foot(mark) = context {
  set text(size: 7.2pt, fill: quiet-colour)
  grid(columns: (1fr, auto), mark, [page #counter(page).display("1 of 1", both: true)])
}
#let part(title) = {
  show heading: set block(above: 3em, below: 1em, width: 100%, inset: (top: 7pt), stroke: (top: 1.4pt + heavy-colour))
  show heading: set text(size: 13pt)
  heading(level: 2, title)
}
#let closing(body) = block(width: 100%, above: 2em, inset: (top: 6pt), stroke: (top: 0.6pt + heavy-colour), text(size: 8pt, quiet(body)))
#let contents(..places) = {
  let lines = places.pos().map(((id, title)) => par(link(label(id), {
    title; h(3pt); box(width: 1fr, repeat(gap: 2pt, quiet[.])); h(3pt)
    context counter(page).at(label(id)).first()
  })))
  let half = calc.ceil(lines.len() / 2)
  block(above: 1.2em, below: 1.6em, {
    set par(spacing: 0.6em)
    grid(columns: (1fr, 1fr), column-gutter: 8mm, lines.slice(0, half).join(parbreak()), lines.slice(half).join(parbreak()))
  })
}

#set text(font: (${FAMILIES}), size: 9pt, fallback: false, hyphenate: false, dir: ltr)
#set par(leading: 0.58em, spacing: 0.95em)
#set block(spacing: 0.95em)
#set list(indent: 4pt, spacing: 0.6em)
#set enum(indent: 4pt, spacing: 0.6em)
#show heading: set block(above: 1.5em, below: 0.75em)
#show heading: set text(weight: "bold")
#show heading.where(level: 1): set text(size: 15pt)
#show heading.where(level: 2): set text(size: 12pt)
#show heading.where(level: 3): set text(size: 10pt)
#show heading.where(level: 4): set text(size: 9pt)
#show heading.where(level: 5): set text(size: 9pt)
#show heading.where(level: 6): set text(size: 9pt)
#show math.equation: set text(font: ("${MATHS}", ${FAMILIES}), size: 1.08em)
#set math.equation(block: false)
#show link: set text(fill: link-colour)
`;
