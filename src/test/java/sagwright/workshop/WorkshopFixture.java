package sagwright.workshop;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicLong;
import sagwright.bench.LineStatistics;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderDocument;
import sagwright.sheet.OrderReader;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;

/** Workshops and documents for tests; the clock goes on by a second at each look. */
final class WorkshopFixture {
  static final SheetReader READER = new SheetReader(SpeciesTable.published());
  static final Instant START = Instant.parse("2026-03-02T09:00:00Z");

  private WorkshopFixture() {}

  static Keeper keeper() {
    AtomicLong seconds = new AtomicLong();
    InstantSource clock = () -> START.plus(Duration.ofSeconds(seconds.getAndIncrement()));
    return new Keeper(clock, "test");
  }

  static Workshop create(Path folder) throws WorkshopException {
    return Workshop.openOrCreate(folder.resolve("workshop.db"), keeper());
  }

  static Sheet sheet(String tag) {
    return sheet(tag, 12.5);
  }

  /** A tested shaft whose tip is so thick. */
  static Sheet sheet(String tag, double tipMm) {
    return read(
        "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\""
            + tag
            + "\",\"stage\":\"near size\",\"x-shelf\":7,\"stations\":[{\"xMm\":0,\"depthMm\":"
            + tipMm
            + "},{\"xMm\":1490,\"depthMm\":31}]},"
            + "\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,\"gaugeMm\":600},"
            + "\"run\":{\"startedAt\":\"2026-03-01T08:00:00Z\",\"timeS\":[0,0.1,0.2],"
            + "\"loadN\":[0,0.1,0.30000000000000004],\"deflectionMm\":[0,0.05,1e-3]}}");
  }

  static Sheet untested(String tag) {
    return read(
        "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\""
            + tag
            + "\",\"stations\":[{\"xMm\":0,\"depthMm\":12.5},{\"xMm\":1490,\"depthMm\":31}]}}");
  }

  static Sheet read(String json) {
    try {
      return READER.read(json);
    } catch (BadDocumentException e) {
      throw new IllegalArgumentException(e);
    }
  }

  static OrderDocument order(String number) {
    try {
      return OrderReader.readDocument(
          "{\"format\":\"sagwright-order/1\",\"order\":\""
              + number
              + "\",\"finish\":{\"lengthMm\":1473,"
              + "\"taper\":[{\"xMm\":0,\"diameterMm\":9.5},{\"xMm\":1473,\"diameterMm\":29}]},"
              + "\"ask\":{\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,"
              + "\"gaugeMm\":600},\"stiffnessNPerMm\":2.25,\"tolerancePercent\":5}}");
    } catch (BadDocumentException e) {
      throw new IllegalArgumentException(e);
    }
  }

  static Runs.OnOtherShaft onShaft(String tag) {
    return new Runs.OnOtherShaft(sheet(tag).json(), answered());
  }

  static RunOutcome answered() {
    return RunOutcome.answered(
        "{\"stiffnessNPerMm\":4.1,\"modulusMPa\":12340.0,\"modulusStdUncertaintyMPa\":55.0}");
  }

  static RunStart start(Blank blank) {
    return new RunStart(
        blank, START, sheet(blank.tag()).documentWithoutReadings(), null, null, null);
  }

  static RunClosing closing(Blank blank) {
    return new RunClosing(
        "the load is back off",
        sheet(blank.tag()).json(),
        new LineStatistics(312, 2, 1, 5),
        answered(),
        null);
  }
}
