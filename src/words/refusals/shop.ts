import { field, given, needed } from '#words/refusals/input.ts'
import { sayErrno } from '#words/say-errno.ts'
import type { Say } from '#words/wording.ts'

/** What the shop's records do not allow. */
export const shopRefusals: { readonly [code: string]: Say } = {
  'unknown-record': (facts, w) => `${field(facts, w)}: there is no ${w.text(facts.kind ?? 'record')} ${given(facts, w)}.`,
  'shop-not-empty': () => 'The demo shop is only for an empty shop: this one holds records already.',
  'value-not-allowed': (facts, w) => `${field(facts, w)}: ${given(facts, w)} does not fit; needed is ${needed(facts, w)}.`,
  'id-used-twice': (facts, w) => `${field(facts, w)}: ${given(facts, w)} was used before for something else; send it under an id of its own.`,
  'saw-in-circle': (facts, w) => `${field(facts, w)}: the change ${given(facts, w)} says it saw itself, or one that saw it; make it anew from the record as it stands.`,
  'jaw-set-not-known': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is none of the jaw sets of this ${w.vise}; fit one of ${w.text(facts.needed, 'or')}.`,
  'code-used-twice': (facts, w) => `${field(facts, w)}: ${given(facts, w)} is on another bar or slot already; each carries a code of its own.`,
  'bar-not-known': (facts, w) => `${field(facts, w)}: there is no bar ${given(facts, w)} in this rack.`,
  'check-not-known': (facts, w) => `${field(facts, w)}: there is no check ${given(facts, w)}${facts.field === 'replaces' ? ' to correct' : ''}.`,
  'event-not-known': (facts, w) => `${field(facts, w)}: nothing named ${given(facts, w)} happened to this bar, so it cannot be undone.`,
  'bar-left-out': (facts, w) => `${field(facts, w)}: the check ${given(facts, w)} also has readings of ${w.bars(facts.needed)}; a correction needs them too.`,
  'data-folder-not-writable': (facts, w) => `The data folder ${w.text(facts.folder)} cannot be made or written: ${sayErrno(facts.given)}. See who owns it, or give another with --data.`,
  'database-busy': (facts, w) => `Another program has been writing into this shop for ${w.number(Number(facts.waitedMs) / 1000)} s. Nothing was changed: try again when it has ended.`,
  'database-damaged': (facts, w) => `The database ${w.text(facts.file)} is damaged (${w.text(facts.given)}). Nothing was changed. Put a backup in its place: twinrest restore BACKUP, where BACKUP is one out of the folder backups beside it (twinrest backup --list); the damaged file is kept. Or give another folder with --data.`,
  'disk-full': (facts, w) => `No room is left on the disk of ${w.text(facts.folder)}. Nothing was written; what was kept before is there. Make room, and try again.`,
  'disk-nearly-full': (facts, w) => `Only ${w.number(Math.round(Number(facts.givenBytes) / 1048576))} MiB are left on the disk of the shop; ${w.number(Number(facts.neededBytes) / 1048576)} MiB are wanted. Make room.`,
  'shop-is-open': (facts, w) => `A program has ${w.text(facts.file)} open: stop the server first, then restore.`,
  'import-not-empty': () => 'A whole shop comes only into an empty one, and this one holds records already. Give a new folder with --data.',
  'backups-not-kept': () => 'This server was started without a folder for backups.',
  'database-not-ours': (facts, w) => `${w.text(facts.file)} is a database of another program (it holds ${w.text(facts.given)}). Give another folder with --data.`,
  'database-newer-than-program': (facts, w) => `The database ${w.text(facts.file)} was written by a newer Twinrest (${w.text(facts.given)}; this one knows up to ${w.text(facts.needed)}). Start that one.`,
}
