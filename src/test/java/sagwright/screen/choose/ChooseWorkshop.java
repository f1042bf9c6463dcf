package sagwright.screen.choose;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import sagwright.choose.RankingWeights;
import sagwright.job.ImportDocuments;
import sagwright.job.ShopSettings;
import sagwright.sheet.BadDocumentException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * A real workshop file: three tested blanks and two orders that ask for the same. 25-002 lies in
 * the middle of the ask, 25-001 further up in it (docs/contract.md, section 5, forecasts 2.296 N/mm
 * for such a blank), 25-003 far below it.
 */
public final class ChooseWorkshop {
  public static final String BEST = "25-002";
  public static final String SECOND = "25-001";
  public static final String SOFT = "25-003";
  public static final String ORDER = "R-0007";
  public static final String OTHER_ORDER = "R-0008";

  private ChooseWorkshop() {}

  public static Workshop create(Path folder) throws WorkshopException, BadDocumentException {
    return create(folder, InstantSource.system());
  }

  static Workshop create(Path folder, InstantSource clock)
      throws WorkshopException, BadDocumentException {
    Workshop workshop =
        Workshop.openOrCreate(folder.resolve("workshop.db"), new Keeper(clock, "test"));
    ImportDocuments documents = new ImportDocuments(workshop, SpeciesTable.published());
    documents.bring(sheet(SECOND, 4.1034), false);
    documents.bring(sheet(BEST, 4.02), false);
    documents.bring(sheet(SOFT, 3.2), false);
    documents.bring(order(ORDER), false);
    documents.bring(order(OTHER_ORDER), false);
    return workshop;
  }

  /** The tag of the blank that is promised to an order. */
  public static Optional<String> promised(Workshop workshop, String order) {
    try {
      return workshop.promises().blankOf(workshop.orders().require(order)).map(Blank::tag);
    } catch (WorkshopException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What ranks. */
  public static RankingWeights weights(Workshop workshop) {
    try {
      return new ShopSettings(workshop).rankingWeights();
    } catch (WorkshopException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String sheet(String tag, double stiffnessNPerMm) {
    StringJoiner loads = new StringJoiner(",", "[", "]");
    StringJoiner deflections = new StringJoiner(",", "[", "]");
    for (int n = 0; n <= 16; n += 4) {
      loads.add(Integer.toString(n));
      deflections.add(String.format(Locale.ROOT, "%.4f", n / stiffnessNPerMm));
    }
    return "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\""
        + tag
        + "\",\"species\":\"European ash\",\"stage\":\"near size\",\"lengthMm\":1490,"
        + "\"massG\":405,\"moisturePercent\":11.2,"
        + "\"stations\":[{\"xMm\":0,\"depthMm\":12.5,\"widthMm\":12.48},{\"xMm\":1490,\"depthMm\":31}]},"
        + "\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,\"gaugeMm\":600,"
        + "\"frameComplianceMmPerN\":0.002},\"modulusToShearRatio\":14,\"handRead\":{\"loadN\":"
        + loads
        + ",\"deflectionMm\":"
        + deflections
        + "}}";
  }

  /** As docs/contract.md, section 5, has it. */
  private static String order(String number) {
    return "{\"format\":\"sagwright-order/1\",\"order\":\""
        + number
        + "\",\"species\":\"European ash\",\"finish\":{\"lengthMm\":1473,"
        + "\"diameterUncertaintyMm\":0.05,\"taper\":[{\"xMm\":0,\"diameterMm\":9.5},"
        + "{\"xMm\":1473,\"diameterMm\":29}],\"cutFromMm\":8,"
        + "\"ferrule\":{\"lengthMm\":9.5,\"boreMm\":8,\"densityKgM3\":8500},"
        + "\"splice\":{\"fromMm\":1030,\"coreHalfAtButtMm\":4,\"densityKgM3\":1120,"
        + "\"modulusMPa\":15500}},\"ask\":{\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,"
        + "\"loadMm\":600,\"gaugeMm\":600},\"stiffnessNPerMm\":2.25,\"tolerancePercent\":5}}";
  }
}
