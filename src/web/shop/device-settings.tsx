import { setDevice, useDevice } from '#web/device.ts'
import { Choice } from '#web/parts/choice.tsx'

/** What this device keeps for itself. */
export function DeviceSettings() {
  const { light, pad } = useDevice()
  return (
    <section>
      <h2>This device</h2>
      <div className="choices">
        <Choice label="Screen" value={light} onChange={(value) => setDevice({ light: value })} options={[{ value: 'auto', label: 'as the device' }, { value: 'light', label: 'light' }, { value: 'dark', label: 'dark' }]} />
        <Choice label="Number pad" value={pad} onChange={(value) => setDevice({ pad: value })} options={[{ value: 'touch', label: 'at a touch' }, { value: 'always', label: 'always' }, { value: 'never', label: 'never' }]} />
      </div>
    </section>
  )
}
