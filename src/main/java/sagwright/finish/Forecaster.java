package sagwright.finish;

/** Works out a {@link Forecast}: docs/contract.md, section 5. */
public final class Forecaster {
  private Forecaster() {}

  /** The forecast for a request; for many blanks of one plan see {@link PlanForecaster}. */
  public static Forecast forecast(ForecastRequest request) {
    return new PlanForecaster(request.plan(), request.setUps(), request.wantedNPerMm())
        .forecast(request.blank());
  }

  /** The cut that is given, or the one that is best. */
  public static Cut cutOf(ForecastRequest request) {
    CutFinder finder = new CutFinder(request.blank().taper(), request.plan().taper());
    if (request.plan().cutFromMm() != null) {
      return finder.at(request.plan().cutFromMm());
    }
    Cut roomiest = finder.best();
    return request.blank().modulusMPa().variesAlong() && roomiest.fits()
        ? new NearestCut(request, finder).find()
        : roomiest;
  }
}
