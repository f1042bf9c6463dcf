/**
 * A tapered shaft on two supports, as pure functions: {@link sagwright.beam.Taper} (what lies
 * there), {@link sagwright.beam.SetUp} (where it is held, loaded and read), {@link
 * sagwright.beam.Flexibility} (how far it bends), {@link sagwright.beam.ElasticCurve}, {@link
 * sagwright.beam.PeakStress} and {@link sagwright.beam.ListeningBand}.
 *
 * <p>With splice wood in its butt: {@link sagwright.beam.SplicedTaper} and {@link
 * sagwright.beam.SplicedFlexibility}. Hung free: {@link sagwright.beam.FreeFreeFrequency}.
 *
 * <p>Formulas: docs/contract.md, sections 2 and 5. Knows no wood, no run, no file and no screen.
 */
package sagwright.beam;
