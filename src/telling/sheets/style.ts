/**
 * How sheets look: black on white, 12-point text, thin rules, hatching and letters, never a
 * colour. These are the only words of Typst that are not made from data.
 */
export const STYLE = String.raw`
#let rule = 0.6pt + black
#let face = ("Source Sans 3", "Liberation Sans", "DejaVu Sans", "Libertinus Serif")

#let printing(paper: "a4", lang: "en", title: "", body) = {
  set document(title: title, date: none)
  set page(paper: paper, margin: (x: 17mm, top: 27mm, bottom: 22mm))
  set text(font: face, size: 12pt, lang: lang, number-type: "lining", hyphenate: true)
  set par(leading: 0.5em, spacing: 0.75em)
  set table(stroke: rule, inset: (x: 2mm, y: 1.6mm))
  show heading.where(level: 1): it => block(below: 4mm, text(17pt, weight: "bold", it.body))
  show heading.where(level: 2): it => block(above: 6mm, below: 2.5mm, sticky: true, text(13pt, weight: "bold", it.body))
  body
}

#let sheet(title, train, mark, number, wide, body) = page(
  flipped: wide,
  header: {
    set par(leading: 0.35em)
    grid(columns: (1fr, auto), column-gutter: 8mm, align: (left + bottom, right + bottom),
      text(weight: "bold", train), title)
    v(-2.5mm)
    line(length: 100%, stroke: rule)
  },
  footer: context {
    line(length: 100%, stroke: rule)
    v(-2.5mm)
    grid(columns: (1fr, auto), text(10pt, mark),
      text(10pt, number(counter(page).get().first(), counter(page).final().first())))
  },
  { heading(level: 1, title); body },
)

#let sign(size) = box(width: size, height: size * 0.9, baseline: 12%, {
  place(polygon(stroke: (paint: black, thickness: size * 0.09, join: "round"), (50%, 0%), (100%, 100%), (0%, 100%)))
  place(center + bottom, dy: -size * 0.1, rect(width: size * 0.1, height: size * 0.1, fill: black))
  place(center + bottom, dy: -size * 0.27, rect(width: size * 0.1, height: size * 0.3, fill: black))
})

#let caution(title, lines) = block(width: 100%, stroke: 1.6pt + black, inset: 4mm, above: 4mm, below: 5mm, {
  grid(columns: (14mm, 1fr), column-gutter: 4mm,
    sign(14mm),
    {
      text(13pt, weight: "bold", title)
      list(marker: [–], indent: 0mm, body-indent: 2mm, spacing: 0.6em, ..lines.map(line => text(weight: "semibold", line)))
    })
})

#let said(words, look: "plain") = if look == "strong" { text(weight: "bold", words) } else if look == "quiet" { text(10.5pt, words) } else { text(words) }
#let told(words, look: "plain") = par(said(words, look: look))

#let upright(words) = context rotate(-90deg, reflow: true, box(
  width: calc.min(46mm, measure(words).width + 0.5mm), align(left + horizon, par(leading: 0.25em, words))))
#let tick = box(width: 3.6mm, height: 3.6mm, stroke: 0.8pt + black, baseline: 12%)
#let ticks(lines) = for line in lines {
  block(above: 1.8mm, below: 1.8mm, grid(columns: (auto, 1fr), column-gutter: 2.5mm, tick, line))
}
#let fields(given) = block(above: 5mm, below: 4mm, grid(
  columns: given.map(it => 1fr), column-gutter: 6mm,
  ..given.map(((label, value)) => grid(columns: (auto, 1fr), column-gutter: 2mm, row-gutter: 0mm,
    align: bottom, label, box(width: 100%, height: 7mm, stroke: (bottom: rule), inset: (bottom: 1mm), align(bottom, value))))
))
#let together(..blocks) = block(breakable: false, blocks.pos().join())
#let drawing(svg, alt, caption) = figure(image(bytes(svg), format: "svg", alt: alt, width: 100%, height: 105mm, fit: "contain"), caption: caption, supplement: none, numbering: none)
`.trim();
