/** Spindle speed in 1/min for a cutting speed in m/min. @source GEOMETRY */
export const rpmFor = (speedMPerMin: number, diameterMm: number): number => (1000 * speedMPerMin) / (Math.PI * diameterMm)

/** Cutting speed in m/min. @source GEOMETRY */
export const speedAt = (rpm: number, diameterMm: number): number => (Math.PI * diameterMm * rpm) / 1000

/** Table feed in mm/min. @source GEOMETRY */
export const feedRate = (rpm: number, teeth: number, feedPerToothMm: number): number => rpm * teeth * feedPerToothMm

/** cm³/min: `depthMm` along the axis, `widthMm` across it. @source GEOMETRY */
export const removalRate = (depthMm: number, widthMm: number, feedMmPerMin: number): number => (depthMm * widthMm * feedMmPerMin) / 1000

/** At the cutter, in kW. @source CUTTING-FORCE */
export const powerKw = (removalCm3PerMin: number, kcMPa: number): number => (removalCm3PerMin * kcMPa) / 60_000

/** N/mm² at a mean chip; the power law overstates below `leastChipMm`. @source CUTTING-FORCE */
export const specificForce = (kc11MPa: number, mc: number, chipMm: number): number => kc11MPa * chipMm ** -mc

/** How far a side mill runs until it is in at its full width. @source GEOMETRY */
export const approachMm = (widthMm: number, diameterMm: number): number => Math.sqrt(widthMm * Math.max(0, diameterMm - widthMm))

/** @source GEOMETRY */
export const passMin = (travelMm: number, feedMmPerMin: number): number => travelMm / feedMmPerMin
