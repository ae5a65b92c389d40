import { spawnSync } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { resolve } from 'node:path'
import { cpuUsage } from 'node:process'
import { chromium } from '@playwright/test'
import load from 'highs'
import { drawNormals } from '#engine/numeric/example-normals.ts'
import { generatorFrom } from '#engine/numeric/generator.ts'
import type { PredictionAsked } from '#engine/setup/prediction/asked.ts'
import { predictionOf } from '#engine/setup/prediction/prediction.ts'
import { tiltOf } from '#engine/setup/tilt/tilt.ts'
import { startShop } from '../e2e/shop-process.ts'
import type { BenchRow } from './bench-row.ts'
import { twoBars } from './tilt-questions.ts'

const trials = 1_000_000, programmes = 300, rounds = 5

/**
 * The prediction on 12 points beside other ways to the same figures: a linear programme a trial with HiGHS, every triple of
 * points at once in NumPy, and the same prediction in a browser's worker. In time of the processor, the browser by the clock.
 */
export async function run(): Promise<BenchRow[]> {
  const question = twoBars(trials)
  tiltOf({ ...question, trials: 20_000 })
  const ours = Math.min(...Array.from({ length: rounds }, () => timed(() => tiltOf(question)))) / trials, highs = await highsMs(), numpy = numpyMs(), worker = await inWorker()
  const us = (ms: number): string => `${(ms * 1000).toFixed(ms < 0.01 ? 2 : 0)} µs`
  return [
    { name: 'tilt: beside a linear programme a trial, HiGHS', figure: `${us(ours)} against ${us(highs)} a trial`, target: 'at least 50 times as fast', ratio: highs / ours, met: highs >= 50 * ours },
    numpy === null ? { name: 'tilt: beside NumPy', figure: 'python3 with numpy is not installed here', target: 'at least 5 times as fast, where installed', ratio: null, met: true }
      : { name: 'tilt: beside NumPy, all triples of points at once', figure: `${us(ours)} against ${us(numpy)} a trial`, target: 'at least 5 times as fast', ratio: numpy / ours, met: numpy >= 5 * ours },
    { name: 'prediction, 10⁶ trials: in a browser worker beside Node', figure: `${worker.browserMs.toFixed(0)} ms against ${worker.nodeMs.toFixed(0)} ms, same figures`, target: 'same to the bit', ratio: worker.browserMs / worker.nodeMs, met: worker.same },
  ]
}

function timed(work: () => unknown): number {
  const from = cpuUsage()
  work()
  const { user, system } = cpuUsage(from)
  return (user + system) / 1000
}

/** The seat of a trial as the linear programme it is. */
async function highsMs(): Promise<number> {
  const solver = await load(), { spots, nominalUm, part: { loadMm: [x, y] } } = twoBars(1), draws = new Float64Array(spots.length), generator = generatorFrom(1)
  const signed = (value: number): string => `${value < 0 ? '-' : '+'} ${Math.abs(value)}`
  return timed(() => {
    for (let t = 0; t < programmes; t += 1) {
      drawNormals(generator, draws)
      const rows = spots.map(({ xMm, yMm }, i) => `h ${signed((xMm - x) / 100)} b ${signed((yMm - y) / 100)} c >= ${nominalUm[i]! + draws[i]!}`)
      solver.solve(`minimize\n h\nsubject to\n${rows.join('\n')}\nbounds\n h free\n b free\n c free\nend\n`, { output_flag: false })
    }
  }) / programmes
}

/**
 * By duality the seat is the triple around the load whose plane is highest there: all triples of all trials by one product of
 * matrices. As many trials, the same figures out of them, and the best of as many rounds as ours.
 */
const python = `
import sys, json, time, math
import numpy as np
from itertools import combinations
q = json.load(sys.stdin); P = np.array(q['spots']); x, y = q['load']; n = len(P)
W, B, C = [], [], []
for t in combinations(range(n), 3):
    A = np.column_stack([np.ones(3), P[list(t)]])
    if abs(np.linalg.det(A)) < 1e-9: continue
    I = np.linalg.inv(A); w = np.array([1, x, y]) @ I
    if (w < 0).any(): continue
    row = np.zeros((3, n)); row[0, list(t)] = w; row[1, list(t)] = I[1]; row[2, list(t)] = I[2]; W.append(row[0]); B.append(row[1]); C.append(row[2])
W, B, C = np.array(W), np.array(B), np.array(C); S = np.array(q['mix']); z0 = np.array(q['nominal']); rng = np.random.default_rng(1)
def spreading(v):
    return v.mean(), v.std(ddof=1), np.quantile(v, [.025, .5, .975, .95]), np.quantile(np.abs(v), .95)
best = math.inf
for _ in range(q['rounds']):
    start = time.process_time(); along = np.empty(q['trials']); across = np.empty(q['trials'])
    for done in range(0, q['trials'], 20000):
        z = z0 + rng.standard_normal((20000, S.shape[0])) @ S; to = slice(done, done + 20000)
        k = (z @ W.T).argmax(axis=1); along[to] = (z * B[k]).sum(axis=1); across[to] = (z * C[k]).sum(axis=1)
    along *= q['length']; across *= q['width']; sizes = np.abs(along) + np.abs(across)
    spreading(along), spreading(across), np.quantile(sizes, [.5, .95]), (sizes <= q['tolerance']).mean()
    best = min(best, time.process_time() - start)
print(best * 1000 / q['trials'])
`

/** Null where it is not installed. One thread, as the others. */
function numpyMs(): number | null {
  const { spots, nominalUm, part, sources, toleranceUm } = twoBars(1)
  const asked = {
    spots: spots.map(({ xMm, yMm }) => [xMm, yMm]), load: part.loadMm, nominal: nominalUm, trials, rounds, tolerance: toleranceUm, length: part.lengthMm, width: part.widthMm,
    mix: sources.map(({ spread, onPoints }) => onPoints.map((share) => share * (spread.dist === 'normal' ? spread.sd : 0))),
  }
  const { status, stdout } = spawnSync('python3', ['-c', python], { input: JSON.stringify(asked), encoding: 'utf8', env: { ...process.env, OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1' } })
  return status === 0 ? Number(stdout) : null
}

async function inWorker(): Promise<{ readonly browserMs: number; readonly nodeMs: number; readonly same: boolean }> {
  const shop = await startShop({ demo: false, main: resolve('dist/node/main.js') }), executablePath = process.env['PW_CHROMIUM']
  const script = readdirSync('dist/web/assets').find((name) => name.startsWith('predict-worker'))!
  const browser = await chromium.launch(executablePath ? { executablePath } : {})
  try {
    const page = await browser.newPage()
    await page.goto(`${shop.url}/setup`)
    const [said, browserMs] = await page.evaluate(([url, asked]) => new Promise<readonly [string, number]>((answered) => {
      const worker = new Worker(url, { type: 'module' }), from = performance.now()
      worker.addEventListener('message', ({ data }: MessageEvent<{ readonly prediction?: unknown }>) => { if (data.prediction !== undefined) answered([JSON.stringify(data.prediction), performance.now() - from]) })
      worker.postMessage([{ key: 'k', asked }])
    }), [`/assets/${script}`, predictionAsked] as const)
    let here = ''
    const nodeMs = timed(() => { here = JSON.stringify(predictionOf(predictionAsked)) })
    return { browserMs, nodeMs, same: here === said }
  } finally {
    await browser.close()
    await shop.clear()
  }
}

/** Two ground bars of one check under a sawn part. Invented. */
const bar = (id: string, heightMm: number) => ({
  id, heightMm, thicknessMm: 8, lengthMm: 150, trust: 'trusted', standing: 'measured', thicknessStanding: 'measured', where: 'slot', stationUUm: 0.4, known: { check: 'c', uUm: 1, uAloneUm: 0.8 },
  heightsUm: [[10, 0.2], [40, -0.3], [75, 0.1], [110, 0], [140, -0.2]],
}) as const
const predictionAsked: PredictionAsked = {
  part: { shape: 'block', betweenJawsMm: 60, alongJawsMm: 140, heightMm: 30, hollows: [] }, choice: { bars: ['a', 'b'], stand: 'on edge', places: [{ xMm: -5, yMm: 0 }, { xMm: -5, yMm: 52 }] }, bars: [bar('a', 25.002), bar('b', 25)],
  vise: null, side: 'sawn', scatter: { along: { sdUm: null, count: 0 }, across: { sdUm: null, count: 0 } }, could: { barUm: 0.2, stationUm: 0.2, slopeUmPerMm: null, bedUm: null, liftUm: null }, toleranceUm: 5, trials, seed: 1,
}
