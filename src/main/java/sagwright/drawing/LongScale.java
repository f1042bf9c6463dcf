package sagwright.drawing;

/**
 * How millimetres on a shaft become places on the picture: true to scale along, a stated number of
 * times exaggerated across and in bending.
 *
 * @param leftPx where x = 0 lies
 * @param axisPx where the unbent centre line lies
 * @param pxPerMm along the shaft
 * @param thicker how many times the shaft is drawn thicker than true
 * @param bendLarger how many times its bend is drawn larger than true
 */
record LongScale(double leftPx, double axisPx, double pxPerMm, double thicker, double bendLarger) {
  double px(double xMm) {
    return leftPx + xMm * pxPerMm;
  }

  double mm(double px) {
    return (px - leftPx) / pxPerMm;
  }

  /** Half the drawn thickness of a diameter. */
  double halfPx(double diameterMm) {
    return diameterMm / 2 * pxPerMm * thicker;
  }

  double bendPx(double deflectionMm) {
    return deflectionMm * pxPerMm * bendLarger;
  }

  /** The same scale for a shaft whose tip end lies at a place of this one. */
  LongScale from(double xMm) {
    return new LongScale(px(xMm), axisPx, pxPerMm, thicker, bendLarger);
  }

  LongScale bent(double times) {
    return new LongScale(leftPx, axisPx, pxPerMm, thicker, times);
  }
}
