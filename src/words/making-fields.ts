/** Fields of an order, of the cards of a job, and of what making costs, by their whole path: a step of it means something else where else it stands. */
export const makingFields: { readonly [path: string]: string } = {
  'heights.fromMm': 'lowest height', 'heights.toMm': 'highest height', 'heights.stepMm': 'step of the heights', 'from': 'lowest height', 'to': 'highest height', 'below': 'how far below the jaw', 'under': 'how much shorter than the jaws', 'ladder': 'ladder',
  'offer.cost': 'price of the offer', 'offer.days': 'days until they come', 'offer.match': 'how equal they come', 'offer.parallel': 'how parallel they come',
  'cutting.diameter': 'diameter of the cutter', 'cutting.teeth': 'teeth', 'cutting.stickOut': 'stick-out of the cutter', 'cutting.depth': 'depth along the cutter', 'cutting.rpm': 'spindle speed', 'cutting.feed': 'feed per tooth',
  'heat.hrc': 'hardness wanted', 'straighten.yield': 'yield stress', 'straighten.e': 'elastic modulus',
  'grind.wheelWidth': 'width of the wheel', 'grind.wheelDiameter': 'diameter of the wheel', 'grind.wheelRpm': 'speed of the wheel', 'grind.markedRpm': 'speed marked on the wheel',
  'length': 'length', 'height': 'height', 'thickness': 'thickness', 'bow of the edges': 'bow of the edges', 'bow of the faces': 'bow of the faces', 'hardness': 'hardness', 'difference of mates': 'difference of the mates', 'value': 'reading', 'job': 'job',
}
