import type { Files } from '../../src/publishing/paths/files.ts';

/** A tag of a page that was made here, with its attributes as they read. */
export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Where it stands in the page. */
  readonly at: number;
}

/** The opening tags of a page, in order. Pages are made by one stringifier, so their form is known. */
export function tagsOf(html: string): readonly Tag[] {
  const tags = html.matchAll(/<([a-z][a-z0-9]*)((?:\s+[^\s=>/]+(?:="[^"]*")?)*)\s*\/?>/gi);
  return [...tags].map(({ 1: name = '', 2: attributes = '', index }) => ({
    name,
    attributes: attributesOf(attributes),
    at: index,
  }));
}

function attributesOf(text: string): Record<string, string> {
  const all = text.matchAll(/([^\s=>/]+)(?:="([^"]*)")?/g);
  return Object.fromEntries([...all].map(([, key = '', value = '']) => [key, decoded(value)]));
}

export function decoded(text: string): string {
  return text
    .replace(/&#x([0-9a-f]+);/gi, (_, hex: string) => String.fromCodePoint(Number.parseInt(hex, 16)))
    .replaceAll('&lt;', '<')
    .replaceAll('&amp;', '&');
}

/** What a page says, without its tags and its data for other programs. */
export function lettersOf(html: string): string {
  return decoded(html.replace(/<script[^>]*>[^<]*<\/script>|<[^>]*>/g, ' ')).replace(/[^\S\u00a0]+/g, ' ');
}

/** Blank rows of lists are for the browser, which fills them before anybody sees them; the innermost go first. */
function withoutBlankRows(html: string): string {
  const rest = html.replace(/<template>(?:(?!<template>)[\s\S])*?<\/template>/g, '');
  return rest === html ? html : withoutBlankRows(rest);
}

/** The pages of a site, without blank rows. */
export function pagesOf(site: Files): readonly (readonly [path: string, html: string])[] {
  return [...site]
    .filter(([path]) => path.endsWith('.html'))
    .map(([path, bytes]) => [path, withoutBlankRows(new TextDecoder().decode(bytes))] as const);
}
