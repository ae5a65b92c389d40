import { type GaugeLine, linesIn } from '#web/inspect/serial/gauge-line.ts'

/** A serial line as the browser hands it out: what of Web Serial is used here. */
type SerialPort = {
  open(options: { readonly baudRate: number; readonly dataBits: 7 | 8; readonly parity: 'none' | 'even' | 'odd'; readonly stopBits: 1 | 2 }): Promise<void>
  close(): Promise<void>
  readonly readable: ReadableStream<Uint8Array> | null
}
type Serial = { requestPort(): Promise<SerialPort> }

/** A gauge that is listened to. `ended` is kept when the line goes dead by itself. */
export type GaugePort = { readonly close: () => Promise<void>; readonly ended: Promise<void> }

/** Null where this browser, or a page that is not https, has no serial lines. */
export function serialHere(): Serial | null {
  return 'serial' in navigator ? (navigator.serial as Serial) : null
}

/** Asks the person which line it is and listens to it, line by line. Rejects where no line was chosen or it cannot be opened. */
export async function openGauge(serial: Serial, how: GaugeLine, onLine: (line: string) => void): Promise<GaugePort> {
  const port = await serial.requestPort()
  const { baudRate, dataBits, parity, stopBits } = how
  await port.open({ baudRate, dataBits, parity, stopBits })
  const reader = port.readable?.getReader()
  if (!reader) throw new Error('the line has nothing to read from')
  const ended = listen(reader, how, onLine).finally(() => { reader.releaseLock() })
  return {
    ended,
    close: async () => {
      await reader.cancel()
      await ended.catch(() => { /* A line that broke is closed all the same. */ })
      await port.close()
    },
  }
}

async function listen(reader: ReadableStreamDefaultReader<Uint8Array>, how: GaugeLine, onLine: (line: string) => void): Promise<void> {
  const decoder = new TextDecoder('latin1')
  let arrived = ''
  for (;;) {
    const { value, done } = await reader.read()
    if (done) return
    const { lines, rest } = linesIn(arrived + decoder.decode(value, { stream: true }), how)
    arrived = rest
    for (const line of lines) onLine(line)
  }
}
