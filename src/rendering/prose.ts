import type { Element, ElementContent, Properties, Root as HastRoot } from 'hast';
import type {
  Definition,
  Heading,
  Html,
  Image,
  ImageReference,
  Link,
  LinkReference,
  Nodes,
  Paragraph,
  Root,
  RootContent,
  Text,
} from 'mdast';
import { h } from 'hastscript';
import remarkRehype, { type Options } from 'remark-rehype';
import { unified } from 'unified';
import { figure, imageOf, loneImage, type Picture } from './figures.ts';
import { sanitise } from './sanitise.ts';
import { framed } from './frames.ts';

/** What prose needs to know of the site it will stand in. */
export interface ProsePlace {
  /** Where a link leads, relative to the page: undefined where nothing is there, and the text stands alone. */
  readonly addressOf: (written: string) => string | undefined;
  /** The finished text of a link that begins with an amount. */
  readonly amountOf: (link: Link | LinkReference) => FinishedText | undefined;
  /** The picture that the build copied for a file that prose names. Without one, its alternative text stands there. */
  readonly pictureOf: (file: string) => Picture | undefined;
  /** Paper without pictures: a paragraph that is one is left out. */
  readonly withoutFigures?: boolean;
  /** A text as it is printed: a no-break space before a unit, a real multiplication sign. */
  readonly print: (written: string) => string;
  /** How much deeper its headings stand on the page than in the file. */
  readonly deeper: number;
  /** The id of a heading, to link to; the sanitiser puts `text-` before it. No ids where left out. */
  readonly idOf?: (heading: string) => string;
}

/** A text of the plan with its key, by which the browser finds the place to replace. */
export interface FinishedText {
  readonly key: string;
  readonly text: string;
}

/**
 * Markdown as the content of a page. Nothing in it runs: raw HTML stands as text, links lead to where `place` says or
 * to http, https, mailto and tel, pictures are those that the build copied. The sanitiser is the last step.
 *
 * @param nodes        Any stretch of a document.
 * @param definitions  Those of the whole document, so that `[text][name]` works in each stretch.
 */
export function renderProse(
  nodes: readonly RootContent[],
  definitions: readonly Definition[],
  place: ProsePlace,
): ElementContent[] {
  const root: Root = { type: 'root', children: [...nodes, ...definitions] };
  const tree: HastRoot = unified()
    .use(remarkRehype, { handlers: handlersFor(place) })
    .runSync(root);
  return sanitise(framed(tree)).children as ElementContent[];
}

type Handlers = NonNullable<Options['handlers']>;
type State = Parameters<NonNullable<Handlers['link']>>[0];

function handlersFor(place: ProsePlace): Handlers {
  return {
    heading: (state: State, node: Heading) => headingOf(node, state, place),
    html: (_: State, node: Html) => h('code', node.value),
    image: (_: State, node: Image) => inText(node.url, node.alt, place),
    imageReference: (state: State, node: ImageReference) => inText(urlOf(node, state), node.alt, place),
    link: (state: State, node: Link) => linked(node.url, place, wordsOf(state, node, place)),
    linkReference: (state: State, node: LinkReference) =>
      linked(urlOf(node, state), place, wordsOf(state, node, place)),
    text: (_: State, node: Text) => ({ type: 'text', value: place.print(node.value) }),
    paragraph: (state: State, node: Paragraph) => paragraphOf(node, state, place),
  };
}

function urlOf({ identifier }: LinkReference | ImageReference, state: State): string | undefined {
  return state.definitionById.get(identifier.toUpperCase())?.url;
}

function headingOf(node: Heading, state: State, { deeper, idOf }: ProsePlace): Element {
  const id = idOf ? { id: idOf(plainText(node)) } : {};
  return h(`h${Math.min(node.depth + deeper, 6)}`, id, state.all(node));
}

/** The letters of a node and all below it. */
export function plainText(node: Nodes): string {
  if ('value' in node) return node.value;
  return 'children' in node ? node.children.map(plainText).join('') : '';
}

/** A paragraph that holds one picture and nothing else is a figure; its title is the caption. */
function paragraphOf(node: Paragraph, state: State, place: ProsePlace): Element | undefined {
  const image = loneImage(node);
  if (image && place.withoutFigures) return undefined;
  const picture = image && place.pictureOf(image.url);
  return picture ? figure(picture, image.alt ?? '', image.title ?? '') : h('p', state.all(node));
}

/** A picture among words; its alternative text where the build copied none. */
function inText(file: string | undefined, alt: string | null | undefined, place: ProsePlace): ElementContent {
  const picture = file === undefined ? undefined : place.pictureOf(file);
  return picture ? imageOf(picture, alt ?? '') : { type: 'text', value: alt ?? '' };
}

/** The children of a link, or the finished amount in their place. */
function wordsOf(state: State, node: Link | LinkReference, place: ProsePlace): ElementContent[] {
  const amount = place.amountOf(node);
  return amount
    ? [h('span', { className: ['amount'], dataShows: amount.key }, amount.text)]
    : state.all(node);
}

function linked(written: string | undefined, place: ProsePlace, words: ElementContent[]): Element {
  const address = written === undefined ? undefined : place.addressOf(written);
  if (address === undefined) return h('span', words);
  const leaves: Properties = /^[a-z]+:/.test(address) ? { rel: ['noreferrer'] } : {};
  return h('a', { href: address, ...leaves }, words);
}
