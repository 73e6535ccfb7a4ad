import type { Markup } from './markup.ts';

/** Title and lead of a page that is not a guide. */
export function plainHero(title: string, lead?: string): Markup {
  return (
    <div class="hero">
      <div class="hero-title">
        <h1>{title}</h1>
        {lead === undefined ? null : <p class="lead">{lead}</p>}
      </div>
    </div>
  );
}
