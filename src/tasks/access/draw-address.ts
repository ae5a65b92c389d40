import { qrScene } from '#drafting/qr.ts'
import { svgFrom } from '#drafting/svg.ts'

/** An address as a QR code to scan, black on white, as SVG text. */
export function addressSvg(address: string, title: string, idPrefix: string): string {
  return svgFrom(qrScene(address, { title, widthMm: 52 }), { medium: 'print', idPrefix })
}
