/** For tests: a shop that can go every route. Steels and limits are those of no book. */
export const madeUpShop = {
  steels: [
    { name: 'mild', carbonPercent: 0.15 },
    { name: 'C45', carbonPercent: 0.46 },
    { name: 'oil', carbonPercent: 0.9, hardening: { quench: 'oil', hrcFrom: 60, hrcTo: 62, growthFromPercent: 0.09, growthToPercent: 0.15 } },
    { name: 'air', carbonPercent: 1.5, hardening: { quench: 'air', hrcFrom: 59, hrcTo: 62, growthFromPercent: -0.02, growthToPercent: 0.06 } },
    { name: 'pre', carbonPercent: 0.4, deliveredHrc: 42 },
  ],
  machines: [
    { id: 'saw', kind: 'saw', perHour: 20, kerfMm: 1.5, sawnFaceMm: 1 }, { id: 'mill', kind: 'mill', perHour: 30, hardMilling: true, longestMm: 400 }, { id: 'grinder', kind: 'grinder', perHour: 40 },
    { id: 'press', kind: 'press', perHour: 5 }, { id: 'furnace', kind: 'furnace', perHour: 10 }, { id: 'ground plate', kind: 'ground plate', perHour: 0 },
  ],
  handPerHour: 30, cutterCost: 60, bought: { cost: 400, days: 10, matchUm: 5, parallelUm: 5 },
}

export const noBooks = { steels: [], stockLimits: [], allowances: [], blackBars: [] }
