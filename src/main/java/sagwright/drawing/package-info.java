/**
 * The pictures, as painters on {@code Graphics2D} for screen and paper alike: {@link
 * sagwright.drawing.LongDrawing} (the shaft on its bench), {@link sagwright.drawing.FinishDrawing}
 * (the finished shaft inside its blank), {@link sagwright.drawing.StiffnessLine}, {@link
 * sagwright.drawing.LoadDeflectionPlot}, {@link sagwright.drawing.ButtEnd} and {@link
 * sagwright.drawing.SeriesBars}; all in one {@link sagwright.drawing.Style}.
 *
 * <p>A painter is given an area and immutable values; it keeps nothing between two pictures.
 * Lengths on the picture are in units of the graphics' own scale, so that everything is sharp at
 * any size. Knows no Swing, no store and no wire.
 */
package sagwright.drawing;
