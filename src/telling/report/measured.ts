import type { Length } from '../../shop/length/index.ts';
import type { Selection } from '../../shop/limits/index.ts';
import { keyOf, type Remark } from '../narrative/index.ts';
import { type Page, paragraph, section } from '../text/index.ts';
import { choiceLines, remarkLines } from './choice.ts';

/** All that was measured of one kind of thing. */
interface MeasuredKind {
  readonly title: string;
  /** What hands are warned of, as `plan.caution.of` words it; the maker's word comes last. */
  readonly cautions: readonly string[];
  /** The lines of what was measured, each part of them after an empty line. */
  readonly body: readonly string[];
  readonly legend: string;
}

/** The title, the cautions before everything else, what was measured, and how it is to be read. */
export function measuredText({ title, cautions, body, legend }: MeasuredKind, page: Page): string {
  const { voice } = page;
  const warned = [...cautions, 'maker'].flatMap((what) => {
    return paragraph(`! ${voice.say('plan.caution.of', { what })}`, page, '  ');
  });
  return [
    ...paragraph(title, page).map(page.ink.strong),
    ...section(voice.say('plan.caution'), warned, page),
    ...body,
    '',
    ...paragraph(legend, page).map(page.ink.faint),
  ].join('\n');
}

/** One thing that was measured. */
interface MeasuredThing {
  /** What it is called, and below it what it is. */
  readonly head: readonly string[];
  readonly remarks: readonly Remark[];
  /** The lines of its verdict. */
  readonly answer: readonly string[];
  /** Lines of its own, after what is looked at first. */
  readonly own?: readonly string[];
  readonly shelf?: {
    readonly part: string | undefined;
    readonly selection: Selection | undefined;
    readonly tool: Length | undefined;
  };
}

/** What speaks against believing its numbers, its verdict, what else to look at, the part to fit. */
export function thingLines(thing: MeasuredThing, page: Page): string[] {
  const { head, remarks, answer, own = [], shelf } = thing;
  const { voice } = page;
  const [name = '', ...below] = head;
  const { against, besides } = remarkLines(remarks, page);
  const { part = '', selection, tool } = shelf ?? {};
  return [
    ...paragraph(name, page).map(page.ink.strong),
    ...below.flatMap((text) => paragraph(text, page)),
    ...against,
    ...answer,
    ...section(voice.say('pack.first'), besides, page),
    ...own,
    ...section(
      voice.say('pack.shelf', { part: keyOf(part) }),
      selection && tool ? choiceLines(selection, part, tool, page) : [],
      page,
    ),
  ];
}
