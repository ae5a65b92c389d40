import type { ShopSnapshot } from '#model/snapshot.ts'

type List = Exclude<keyof ShopSnapshot, 'shop'>

/** The shop as a whole, or what became of it since a revision: records new or changed, and the ids of those that are not listed any more. */
export type ShopNews = { readonly revision: string } & (
  | { readonly whole: ShopSnapshot }
  | { readonly put: Partial<ShopSnapshot>; readonly gone: { readonly [list in List]?: readonly string[] } }
)

/** The shop after the news; lists and records that nothing became of stay the very same. */
export function shopAfter(shop: ShopSnapshot, news: ShopNews): ShopSnapshot {
  if ('whole' in news) return news.whole
  const { shop: settings = shop.shop, ...put } = news.put, lists: { [list: string]: readonly Listed[] } = {}
  for (const list of new Set([...Object.keys(put), ...Object.keys(news.gone)]) as Set<List>) lists[list] = listAfter(shop[list], put[list] ?? [], news.gone[list] ?? [])
  return { ...shop, ...lists, shop: settings }
}

type Listed = { readonly id: string; readonly atIso?: string }

function listAfter(list: readonly Listed[], put: readonly Listed[], gone: readonly string[]): readonly Listed[] {
  const out = new Set([...gone, ...put.map(({ id }) => id)])
  return [...list.filter(({ id }) => !out.has(id)), ...put].sort(inOrder)
}

/** As the store lists them: what happened in the order of time, everything then by id. */
function inOrder(a: Listed, b: Listed): number {
  const [one, other] = a.atIso !== undefined && b.atIso !== undefined && a.atIso !== b.atIso ? [a.atIso, b.atIso] : [a.id, b.id]
  return one < other ? -1 : 1
}
