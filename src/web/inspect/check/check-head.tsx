import { sayRefusal } from '#words/say-refusal.ts'
import { type CheckDesk, type Panel, useCheckDesk } from '#web/inspect/check/desk.ts'
import { changeForm } from '#web/inspect/draft/draft-edits.ts'
import { sayMethod, wordHeight } from '#web/inspect/say-check.ts'
import { NumberField } from '#web/parts/number-field.tsx'
import { SpotButton } from '#web/setup/sheet/spot-button.tsx'

/** What the check is made with, above the drawing: each opens beside it; the zero and the temperature are typed. */
export function CheckHead() {
  const desk = useCheckDesk(), { draft: { id, form }, read, units, facts } = desk
  const onPlate = form.method === 'compare' || form.method === 'turn-over', known = form.zeroBar === null ? null : facts.heights(form.zeroBar)
  const wrong = (field: string) => { const said = read.wrong[field]; return said && textOf(field, desk) !== '' ? sayRefusal(said, units) : null }
  return (
    <div className="insp-head">
      <HeadButton panel="bars" value={form.bars.length === 0 ? '+' : form.bars.length === 1 ? '1' : String(form.bars.length)} label={form.bars.length === 1 ? 'bar' : 'bars'} />
      <HeadButton panel="method" value={sayMethod(form.method)} label="method" />
      {form.method === 'rock' ? null : <HeadButton panel="instruments" value={instrumentName(desk)} label="read with" />}
      {form.method === 'rock' ? null : <HeadButton panel="stations" value={sayStations(desk)} label="stations" />}
      {onPlate ? <HeadButton panel="zero" value={form.zeroOn === 'block' ? 'block' : form.zeroBar === null ? 'bar' : desk.nameOf(form.zeroBar)} label="zero on" /> : null}
      {onPlate ? (
        <div className="insp-head-field" data-needed={read.zeroMm === null && read.wrong['zero'] ? '' : undefined}>
          <NumberField
            label={`zero, ${form.unit}`} more={form.zeroOn === 'block' ? 'height of the block' : 'height of the bar there'} value={form.zero} error={wrong('zero')}
            {...(form.zeroOn === 'bar' && known ? { ifEmpty: wordHeight(known.heightMm, form.unit, units) } : {})} onChange={(zero) => changeForm(id, { zero })}
          />
        </div>
      ) : null}
      {form.method === 'rock' ? null : (
        <div className="insp-head-field"><NumberField label="°C" more="at the plate" ifEmpty="?" value={form.temperature} error={wrong('temperature')} onChange={(temperature) => changeForm(id, { temperature })} /></div>
      )}
    </div>
  )
}

function HeadButton({ panel, value, label }: { readonly panel: Panel; readonly value: string; readonly label: string }) {
  const { panel: now, open } = useCheckDesk()
  return <SpotButton value={value} label={label} said={`${label}: ${value}. Change`} open={now === panel} onPress={() => open(now === panel ? null : panel)} />
}

function instrumentName({ draft: { form }, facts }: CheckDesk): string {
  return facts.instruments.find(({ id }) => id === form.instrumentId)?.name ?? '?'
}

function sayStations({ draft: { form: { stations, lines, repeats } } }: CheckDesk): string {
  return [String(stations), ...(lines === 2 ? ['2 lines'] : []), ...(repeats > 1 ? [`${repeats}×`] : [])].join(' · ')
}

function textOf(field: string, { draft: { form } }: CheckDesk): string {
  return (field === 'zero' ? form.zero : form.temperature).trim()
}
