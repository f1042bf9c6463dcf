package sagwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SectionShape;
import sagwright.sheet.JsonLine;
import sagwright.wood.Grain;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

class KeepBlankTest {
  private static final String SHEET =
      "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\"25-014\",\"stage\":\"near size\","
          + "\"massG\":405,\"diameterUncertaintyMm\":0.01,\"diameterCommonShare\":0.25,"
          + "\"bowMm\":0.3,\"x-shelf\":7,\"x-bowSideDegrees\":90,\"stations\":["
          + "{\"xMm\":0,\"depthMm\":12.5,\"widthMm\":12.4,\"x-by\":\"KM\"},"
          + "{\"xMm\":1490,\"depthMm\":31}]},\"modulusToShearRatio\":15.5}";

  private final SpeciesTable species = SpeciesTable.published();
  private Workshop workshop;
  private KeepBlank keep;

  @BeforeEach
  void open(@TempDir Path folder) throws Exception {
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"));
    new ImportDocuments(workshop, species).bring(SHEET, false);
    keep = new KeepBlank(workshop, species);
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private static KeepBlank.Measured measured(double massG, double tipMm) {
    return new KeepBlank.Measured(
        "25-014",
        null,
        "planed",
        SectionShape.ELLIPSE,
        1490.0,
        massG,
        null,
        List.of(new KeepBlank.Calipers(0, tipMm, null), new KeepBlank.Calipers(1490, 31, null)),
        new Grain(9.0, Grain.RunOut.STRAIGHT, null));
  }

  private JsonLine newest() throws WorkshopException {
    return JsonLine.parse(
        workshop.blanks().caliperNow(workshop.blanks().require("25-014")).document());
  }

  @Test
  void whatTheFormDoesNotAskForIsCarriedOn() throws Exception {
    keep.measure(measured(404.2, 12.3), "station 1 was misread");
    JsonLine shaft = newest().object("shaft");
    assertThat(shaft.number("massG")).isEqualTo(404.2);
    assertThat(shaft.number("bowMm")).isEqualTo(0.3);
    assertThat(shaft.number("diameterUncertaintyMm")).isEqualTo(0.01);
    assertThat(shaft.number("diameterCommonShare")).isEqualTo(0.25);
    assertThat(shaft.number("x-shelf")).isEqualTo(7);
    assertThat(shaft.number("x-bowSideDegrees")).isEqualTo(90);
    assertThat(newest().number("modulusToShearRatio")).isEqualTo(15.5);
    JsonLine tip = shaft.objects("stations").get(0);
    assertThat(tip.number("depthMm")).isEqualTo(12.3);
    assertThat(tip.number("widthMm")).isNull(); // taken out of the form
    assertThat(tip.text("x-by")).isEqualTo("KM");
  }

  @Test
  void oneUndoTakesMeasuresStageAndGrainBackTogether() throws Exception {
    keep.measure(measured(404.2, 12.3), "turned");
    BlankRecord with = BlankRecord.of(workshop, "25-014");
    assertThat(with.state().stage()).isEqualTo("planed");
    assertThat(with.grains()).hasSize(1);
    assertThat(workshop.actions().undoLast().what()).isEqualTo("measured 25-014: turned");
    BlankRecord without = BlankRecord.of(workshop, "25-014");
    assertThat(without.caliperEntries()).hasSize(1);
    assertThat(without.state().stage()).isEqualTo("near size");
    assertThat(without.grains()).isEmpty();
  }

  @Test
  void aNewerEntrySaysWhyAndTheOlderStays() throws Exception {
    assertThatThrownBy(() -> keep.measure(measured(404.2, 12.3), " "))
        .isInstanceOf(WorkshopException.class)
        .hasMessage("say why: turned, weighed, what was misread");
    keep.measure(measured(404.2, 12.3), "station 1 was misread");
    BlankRecord kept = BlankRecord.of(workshop, "25-014");
    assertThat(kept.caliperEntries()).hasSize(2);
    assertThat(kept.caliperEntries().get(0).document()).contains("12.5");
    assertThat(kept.caliperEntries().get(1).why()).isEqualTo("station 1 was misread");
  }

  @Test
  void grainThatLooksAsBeforeIsNotEnteredAgain() throws Exception {
    keep.measure(measured(404.2, 12.3), "turned");
    keep.measure(measured(403.9, 12.3), "weighed");
    assertThat(BlankRecord.of(workshop, "25-014").grains()).hasSize(1);
  }
}
