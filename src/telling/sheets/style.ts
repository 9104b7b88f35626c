/**
 * How sheets look: black on white, 12-point text, thin rules, letters and hatching, never a
 * colour. These are the only words of Typst that are not made from data.
 */
// Not String.raw: a bundle writes what is not ASCII as an escape.
export const STYLE = `
#let rule = 0.6pt + black
#let face = ("Source Sans 3", "Liberation Sans", "DejaVu Sans", "Libertinus Serif")

#let printing(paper: "a4", lang: "en", title: "", body) = {
  set document(title: title, date: none)
  set page(paper: paper, margin: (x: 17mm, top: 27mm, bottom: 22mm))
  set text(font: face, size: 12pt, lang: lang, number-type: "lining", hyphenate: false)
  set par(leading: 0.5em, spacing: 0.75em)
  set table(stroke: rule, inset: (x: 2mm, y: 1.6mm))
  set table.cell(breakable: false)
  show heading: set text(weight: "bold")
  show heading.where(level: 1): it => block(below: 4mm, text(17pt, it.body))
  show heading.where(level: 2): it => {
    block(above: 6mm, below: 2.5mm, sticky: true, text(13pt, it.body))
  }
  body
}

#let sheet(title, train, mark, number, wide, body) = page(
  flipped: wide,
  header: {
    set par(leading: 0.35em)
    grid(columns: (1fr, auto), column-gutter: 8mm, align: (left + bottom, right + bottom),
      text(weight: "bold", train), title)
    v(-1.9mm)
    line(length: 100%, stroke: rule)
  },
  footer: context {
    let page = counter(page)
    line(length: 100%, stroke: rule)
    v(-1.6mm)
    set text(10pt)
    grid(columns: (1fr, auto), mark, number(page.get().first(), page.final().first()))
  },
  { heading(level: 1, title); body },
)

#let sign(size) = box(width: size, height: size * 0.9, {
  let edge = (paint: black, thickness: size * 0.09, join: "round")
  let ink = rect.with(width: size * 0.1, fill: black)
  place(polygon(stroke: edge, (50%, 0%), (100%, 100%), (0%, 100%)))
  place(center + bottom, dy: -size * 0.1, ink(height: size * 0.1))
  place(center + bottom, dy: -size * 0.27, ink(height: size * 0.3))
})

#let caution(title, lines) = block(
  width: 100%, stroke: 1.6pt + black, inset: 4mm, above: 4mm, below: 5mm,
  grid(columns: (14mm, 1fr), column-gutter: 4mm, sign(14mm), {
    text(13pt, weight: "bold", title)
    // A long list keeps to one page, with its last line on it.
    set text(9.6pt) if lines.len() > 12
    list(marker: [–], body-indent: 2mm, spacing: 0.6em,
      ..lines.map(line => text(weight: "semibold", line)))
  }),
)

#let said(words, look: "plain") = {
  if look == "strong" { text(weight: "bold", words) }
  else if look == "quiet" { text(10.5pt, words) }
  else if look == "struck" { strike(words) }
  else if look == "warning" { sign(4mm); h(1.6mm); text(weight: "bold", words) }
  else if look == "stop" {
    block(width: 100%, stroke: 1.2pt + black, inset: 2mm, text(weight: "bold", words))
  }
  else { text(words) }
}
#let told(words, look: "plain") = {
  if look == "stop" { said(words, look: look) } else { par(said(words, look: look)) }
}

// On one line, or on two: a column has no room for a third.
#let upright(words) = table.cell(inset: (x: 0.8mm), align: center + bottom, context {
  let whole = measure(words).width
  let width = if whole < 46mm { whole + 0.5mm } else { calc.max(46mm, whole * 0.64) }
  let lines = box(width: width, align(left + horizon, par(leading: 0.4em, words)))
  rotate(-90deg, reflow: true, lines)
})
// Three quarters round, with a point at the end; the other way it is seen in a mirror.
#let arrow = box(width: 5.4mm, height: 5.4mm, {
  let at(turn) = (2.7mm + 2.3mm * calc.cos(turn), 2.7mm + 2.3mm * calc.sin(turn))
  let turns = range(0, 37).map(i => -200deg + i * 7deg)
  let start = curve.move(at(turns.first()))
  place(curve(stroke: 1pt + black, start, ..turns.slice(1).map(it => curve.line(at(it)))))
  let (x, y) = at(turns.last())
  place(polygon(fill: black, (x - 1mm, y - 0.3mm), (x + 1mm, y - 0.5mm), (x + 0.2mm, y + 1.3mm)))
})
#let turning(clockwise, words) = grid(
  columns: (auto, 1fr), column-gutter: 2mm, align: left + horizon,
  if clockwise { arrow } else { scale(x: -100%, arrow) }, words,
)
#let room(height) = box(width: 1mm, height: height - 3.2mm)
#let tick = box(width: 3.6mm, height: 3.6mm, stroke: 0.8pt + black, baseline: 12%)
#let ticks(lines) = for line in lines {
  if line == "" { tick } else {
    block(above: 1.8mm, below: 1.8mm,
      grid(columns: (auto, 1fr), column-gutter: 2.2mm, align: left + top, tick, line))
  }
}

#let field(label, value) = {
  let said = if value == "" { box(height: 6mm) } else { value }
  let place = block(width: 100%, stroke: (bottom: rule), inset: (bottom: 1mm), said)
  grid(columns: (auto, 1fr), column-gutter: 2mm, align: bottom,
    pad(bottom: 1mm, label), place)
}
#let fields(given) = block(above: 5mm, below: 4mm, grid(
  columns: given.map(it => 1fr), column-gutter: 6mm,
  ..given.map(((label, value)) => field(label, value)),
))
#let lines(count) = block(above: 2mm, below: 4mm, for _ in range(count) {
  block(spacing: 0mm, height: 8.5mm, width: 100%, stroke: (bottom: rule))
})

// What is longer than a page must break after all.
#let together(..blocks) = block(above: 5mm, below: 5mm, layout(area => {
  let body = blocks.pos().join()
  block(breakable: measure(width: area.width, body).height > area.height, body)
}))
#let drawing(svg, aspect, alt, caption) = layout(area => {
  let height = calc.min(area.width * aspect, area.height - 34mm)
  let picture = image(bytes(svg), format: "svg", alt: alt, height: height)
  figure(picture, caption: caption, supplement: none, numbering: none)
})
`.trim();
