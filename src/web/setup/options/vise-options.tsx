import { fittedJaws } from '#engine/rack/vise-from.ts'
import { wordLength } from '#model/length.ts'
import { Choice } from '#web/parts/choice.tsx'
import { Link } from '#web/parts/link.tsx'
import { offerUndo } from '#web/parts/undo-bar.tsx'
import { useDesk } from '#web/setup/desk.ts'
import { writeDeed } from '#web/write.ts'

/** The vises of the shop, and the jaw sets of the one worked in. Fitting other jaws is written down for everybody. */
export function ViseOptions() {
  const { shop, bench: { vise }, dispatch, units } = useDesk()
  const inUse = shop.vises.filter(({ retired }) => !retired)
  const fit = (id: string) => {
    const set = (fittedJawSetId: string) => writeDeed({ edits: [{ kind: 'vise', record: vise.id, fields: { fittedJawSetId } }] })
    const before = vise.fittedJawSetId
    set(id)
    offerUndo(`${vise.jawSets.find((jaws) => jaws.id === id)?.name ?? 'Jaws'} fitted to ${vise.name}.`, () => set(before))
  }
  return (
    <>
      <ul className="setup-vises">
        {inUse.map((one) => {
          const jaws = fittedJaws(one)
          return (
            <li key={one.id}>
              <button type="button" className="setup-row setup-row--last" aria-current={one.id === vise.id ? 'true' : undefined} onClick={() => dispatch({ do: 'take vise', viseId: one.id })}>
                <strong className="name-text">{one.name}</strong>
                <span>{jaws.name}: jaws {wordLength(jaws.fixedHeightMm, units)}, opens {wordLength(one.openingMm, units)}</span>
              </button>
            </li>
          )
        })}
      </ul>
      {vise.jawSets.length > 1 ? <Choice label="Fitted jaws" value={vise.fittedJawSetId} options={vise.jawSets.map(({ id, name }) => ({ value: id, label: name }))} onChange={fit} /> : null}
      <p className="setup-lines"><Link to="/shop">Change sizes under Shop</Link></p>
    </>
  )
}
