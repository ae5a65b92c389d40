import { askText, Away } from '#web/api.ts'

/** Spreadsheets look for it; reading an answer as text drops it. */
const markOfUtf8 = '\ufeff'

/** Hands the rack to the person as a CSV file. @returns what went wrong, or null */
export async function exportRack(): Promise<string | null> {
  let csv: string
  try { csv = await askText('/api/rack/export') } catch (error) {
    if (error instanceof Away) return 'The list is written by the shop’s server, which does not answer just now. Try again later.'
    throw error
  }
  const link = document.createElement('a'), address = URL.createObjectURL(new Blob([markOfUtf8, csv], { type: 'text/csv' }))
  link.href = address
  link.download = 'rack.csv'
  link.click()
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
  return null
}
