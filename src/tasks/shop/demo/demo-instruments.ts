import type { InstrumentFields } from '#model/instrument-record.ts'

/** Days until each is due again; below 0: it was. */
type DemoInstrument = Omit<InstrumentFields, 'dueOn' | 'retired'> & { readonly dueInDays: number | null }

/** Invented demo data. What the invented shop measures with; one micrometer should have been calibrated three weeks ago. */
export const demoInstruments: { readonly [id: string]: DemoInstrument } = {
  'demo-lever-1': { name: 'Lever indicator, 1 µm', note: '', dueInDays: 220, figures: { is: 'indicator', resolutionUm: 1, limitUm: 1, repeatabilityUm: 0.3 } },
  'demo-dial-1': { name: 'Dial indicator, 0.01 mm', note: 'For setting up, too coarse to prove a pair for grinding.', dueInDays: 140, figures: { is: 'indicator', resolutionUm: 10, limitUm: 5, repeatabilityUm: 3 } },
  'demo-micrometer-25': { name: 'Micrometer 0–25 mm', note: '', dueInDays: 90, figures: { is: 'micrometer', resolutionUm: 1, limitUm: 4, repeatabilityUm: 1, fromMm: 0, toMm: 25 } },
  'demo-micrometer-50': { name: 'Micrometer 25–50 mm', note: 'Was to go out for calibration.', dueInDays: -21, figures: { is: 'micrometer', resolutionUm: 1, limitUm: 4, repeatabilityUm: 1, fromMm: 25, toMm: 50 } },
  'demo-blocks-1': { name: 'Gauge blocks, grade 1', note: '', dueInDays: 400, figures: { is: 'gauge blocks', grade: '1', limitUm: null, uUm: null } },
  'demo-plate-1': { name: 'Surface plate 630 × 400', note: 'Flatness by its certificate.', dueInDays: 600, figures: { is: 'plate', lengthMm: 630, widthMm: 400, grade: 'DIN 876 0', flatnessUm: 2 } },
}
