import { drawUnit, generatorFrom } from '#engine/numeric/generator.ts'
import { checkPlan } from '#engine/make/cut-list/check-plan.ts'
import { costStep, type CutProblem, type Pattern, type Plan } from '#engine/make/cut-list/cut-problem.ts'
import { dive } from '#engine/make/cut-list/dive.ts'
import { fillUp } from '#engine/make/cut-list/fill-up.ts'
import { generatePatterns } from '#engine/make/cut-list/generate-patterns.ts'
import { Master } from '#engine/make/cut-list/master.ts'
import { planOf, programmeOf } from '#engine/make/cut-list/pattern-programme.ts'
import { boundFrom, type Worths, worthsOf } from '#engine/make/cut-list/safe-bound.ts'
import { stockMixes } from '#engine/make/cut-list/stock-mixes.ts'
import { tightPatterns } from '#engine/make/cut-list/tight-patterns.ts'
import type { Solve } from '#engine/make/solver.ts'

/** What is known so far: the best plan, null where none was found, and less than which none can cost; Infinity: there is none. */
export type CutState = { readonly plan: Plan | null; readonly bound: number }

/** What pure code is not given: a clock in seconds, and a solver. */
export type CutTools = { readonly now: () => number; readonly solve: Solve }

/**
 * The least cost of stock for all pieces. Gives what is known every now and then; who does not ask for more has stopped it.
 *
 * The plan is filled up first, then taken out of the linear programme of all patterns again and again; the bound follows from its duals in
 * whole numbers. Where both do not meet, the patterns that a cheaper plan could have at all are listed, and the solver finds such a plan out of
 * them or finds that there is none. Every plan is checked piece by piece.
 *
 * @source CUT-PATTERNS
 */
export function* cut(problem: CutProblem, secondsMost: number, tools: CutTools): Generator<CutState, CutState> {
  return yield* searchOn(new CutSearch(problem, secondsMost, tools, true))
}

function* searchOn(search: CutSearch): Generator<CutState, CutState> {
  search.begin()
  while (!search.isOver()) {
    yield search.state
    search.goOn()
  }
  return search.state
}

/** Patterns listed for the solver; the first time fewer, so that it has an answer soon. */
const fewPatterns = 3000, manyPatterns = 20_000
/** How far a dive may stray. */
const strayMost = 0.6
/** Dives and runs of the solver take turns, each time for so many times as long: which of the two ends a case is not known before. */
const divesLeast = 3, diveSeconds = 0.1, solveSeconds = 0.6, longer = 3
/** Share of the time left that one mix of stock may take. */
const mixShare = 0.5

class CutSearch {
  state: CutState
  readonly #problem: CutProblem
  readonly #tools: CutTools
  readonly #until: number
  readonly #generator = generatorFrom(1)
  readonly #counts: readonly number[]
  readonly #isLate: () => boolean
  /** Whether costs may be settled by the mixes of stock that come to them: not where a mix is given. */
  readonly #mayMix: boolean
  #master: Master | null = null
  #worths: Worths
  #dives = 0
  #turn = 0
  #diveUntil = 0
  #isExact = false
  /** Whether there are too many patterns to list: then only dives are left. */
  #isTooMany = false

  constructor(problem: CutProblem, secondsMost: number, tools: CutTools, mayMix: boolean) {
    this.#mayMix = mayMix && problem.stocks.length > 1
    this.#problem = problem
    this.#tools = tools
    this.#until = tools.now() + secondsMost
    this.#isLate = () => tools.now() >= this.#until
    this.#counts = problem.kinds.map(({ count }) => count)
    this.#worths = worthsOf(problem, problem.kinds.map(({ size }) => size))
    this.state = { plan: null, bound: boundFrom(problem, this.#worths) }
  }

  begin(): void {
    this.#offer(fillUp(this.#problem, this.#counts, this.#problem.stocks.map(({ most }) => most)))
  }

  isOver(): boolean {
    const { plan, bound } = this.state
    return bound === Infinity || (plan !== null && plan.cost <= bound) || this.#isLate()
  }

  goOn(): void {
    if (this.#master === null) this.#open()
    else if (this.#isTooMany || this.#dives < divesLeast || this.#tools.now() < this.#diveUntil) this.#dive()
    else {
      const { bound } = this.state
      this.#prove()
      this.#turn = this.state.bound > bound ? 0 : this.#turn + 1
      this.#dives = 0
      this.#diveUntil = this.#tools.now() + diveSeconds * longer ** this.#turn
    }
  }

  /** The linear programme over all patterns, and the bound by its duals. */
  #open(): void {
    const { kinds, stocks } = this.#problem, master = new Master(this.#problem)
    this.#master = master
    for (const { pattern } of this.state.plan?.used ?? []) master.add(pattern)
    // where every piece may come from every stock, a smaller one may stand in the place of a larger one: the duals then fall with the size, and settle sooner
    if (stocks.every(({ takes }) => takes === null)) for (let k = 0; k + 1 < kinds.length; k += 1) master.add({ stock: -1, kinds: [k, k + 1], counts: [-1, 1] })
    generatePatterns(this.#problem, master, this.#counts, false, this.#isLate)
    this.#bindByDuals()
  }

  #bindByDuals(): void {
    const worths = worthsOf(this.#problem, this.#master!.duals), bound = boundFrom(this.#problem, worths)
    this.#worths = worths
    this.#bind(bound)
  }

  #dive(): void {
    const stray = this.#dives === 0 && this.#turn === 0 ? 0 : strayMost * drawUnit(this.#generator)
    this.#dives += 1
    this.#offer(dive(this.#problem, this.#master!, this.state.bound, stray, this.#generator, this.#isLate))
  }

  /** Lists what a cheaper plan could be made of, and has it solved. */
  #prove(): void {
    if (!this.#isExact) {
      this.#isExact = generatePatterns(this.#problem, this.#master!, this.#counts, true, this.#isLate)
      if (!this.#isExact) return
      this.#bindByDuals()
      if (this.isOver()) return
    }
    // of strips there are too many mixes to begin with them
    const { stocks } = this.#problem
    if (this.#mayMix && (this.#turn > 0 || stocks.every(({ takes }) => takes === null))) this.#mix()
    if (this.isOver()) return
    const { plan, bound } = this.state, most = this.#turn === 0 ? fewPatterns : manyPatterns
    const cheaper = plan === null ? mostCost(this.#problem) : plan.cost - costStep(this.#problem)
    for (const cost of new Set([cheaper, bound])) {
      const patterns = tightPatterns(this.#problem, this.#worths, cost, most)
      if (patterns === null) continue
      this.#solve(cost, patterns)
      return
    }
    this.#isTooMany = this.#turn > 0
  }

  /**
   * Settles one cost after another from the bound up, by the mixes of stock that cost just that and are worth all pieces: with so many of each given, the
   * bound is much nearer, and few patterns can be in a plan. The first that does is a least plan; a cost of which no mix does is none.
   */
  #mix(): void {
    const { kinds, stocks } = this.#problem, { ofStocks, total } = this.#worths
    while (!this.isOver()) {
      const { bound } = this.state
      let isOpen = false
      for (const counts of stockMixes(stocks.map(({ cost, most }, s) => ({ cost, most, worth: ofStocks[s]! })), bound, total)) {
        if (this.#isLate()) return
        const left = this.#until - this.#tools.now(), run = searchOn(new CutSearch({ kinds, stocks: stocks.map((stock, s) => ({ ...stock, most: counts[s]! })) }, left * mixShare, this.#tools, false))
        let next = run.next()
        while (next.done !== true && next.value.plan === null) next = run.next()
        this.#offer(next.value.plan)
        if (this.isOver()) return
        if (next.value.bound !== Infinity) isOpen = true
      }
      if (isOpen) return
      this.#bindAbove(bound)
    }
  }

  #solve(cost: number, patterns: readonly Pattern[]): void {
    const left = this.#until - this.#tools.now()
    const { status, values, bound } = this.#tools.solve(programmeOf(this.#problem, patterns, cost), Math.min(left, solveSeconds * longer ** this.#turn))
    const found = values && planOf(this.#problem, patterns, values)
    if (found) this.#offer(found)
    if (status === 'infeasible') this.#bindAbove(cost)
    else if (status === 'optimal' && found) this.#bind(found.cost)
    else if (Number.isFinite(bound)) this.#bindAbove(Math.min(cost, Math.ceil(bound - solverSlack) - 1))
  }

  #bindAbove(cost: number): void {
    this.#bind(boundFrom(this.#problem, this.#worths, cost))
  }

  #bind(bound: number): void {
    if (bound <= this.state.bound) return
    this.state = { ...this.state, bound }
    this.#isTooMany = false
  }

  #offer(plan: Plan | null): void {
    if (plan === null || (this.state.plan !== null && plan.cost >= this.state.plan.cost)) return
    checkPlan(this.#problem, plan)
    this.state = { ...this.state, plan }
  }
}

/** What a bound of the solver may be off by, in units of cost. */
const solverSlack = 1e-4

/** More than any plan costs. */
const mostCost = ({ kinds, stocks }: CutProblem): number => {
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0)
  return stocks.reduce((sum, { cost, most }) => sum + cost * Math.min(most, pieces), 0)
}
