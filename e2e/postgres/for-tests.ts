import { startCluster } from './cluster.ts'

/** One PostgreSQL for the whole run of the store's tests, which the tests find by its address. */
export async function setup(): Promise<() => Promise<void>> {
  const cluster = await startCluster()
  process.env['TWINREST_TEST_POSTGRES'] = await cluster.makeDatabase('shops')
  return cluster.clear
}
