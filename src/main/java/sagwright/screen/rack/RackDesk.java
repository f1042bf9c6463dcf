package sagwright.screen.rack;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import sagwright.beam.Station;
import sagwright.job.BlankRecord;
import sagwright.job.BlankShaft;
import sagwright.job.KeepBlank;
import sagwright.job.KeepSplice;
import sagwright.job.TakeBack;
import sagwright.job.WoodRecords;
import sagwright.modulus.Shaft;
import sagwright.quantity.Figures;
import sagwright.screen.Desk;
import sagwright.screen.Mailbox;
import sagwright.screen.OnBench;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.WoodWords;
import sagwright.wood.Grain;
import sagwright.wood.Seasoning;
import sagwright.wood.Species;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.RackRow;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What stands behind the rack: reads the records and enters blanks, on the work thread. */
public final class RackDesk extends Desk implements RackActions {
  /** The stages of a blank, in the order in which it passes them. */
  private static final List<String> STAGES =
      List.of("square", "roughed", "second turning", "near size", "planed", "finished cue");

  private final Workshop workshop;
  private final SpeciesTable species;
  private final KeepBlank keepBlank;
  private final KeepSplice keepSplice;
  private final BlankShaft shafts;
  private final Mailbox<RackView> mailbox;
  private final ShopUnits units;
  private final OnBench bench;
  private final InstantSource clock;

  // of the work thread
  private String openTag;
  private String said = "";

  public RackDesk(
      Workshop workshop,
      SpeciesTable species,
      InstantSource clock,
      Executor work,
      Mailbox<RackView> mailbox,
      OnBench bench) {
    super(work);
    this.workshop = workshop;
    this.clock = clock;
    this.species = species;
    this.keepBlank = new KeepBlank(workshop, species);
    this.keepSplice = new KeepSplice(workshop, species);
    this.shafts = new BlankShaft(workshop, species);
    this.mailbox = mailbox;
    this.units = mailbox.newest().units();
    this.bench = bench;
  }

  /** What the screen shows before the records were read. */
  public static RackView atFirst(ShopUnits units) {
    return new RackView(List.of(), null, List.of(), STAGES, units, "");
  }

  /** Reads the records anew. */
  public void refresh() {
    atWork(
        () -> {
          said = "";
          show();
        });
  }

  private void show() throws WorkshopException {
    WoodRecords wood = WoodRecords.of(workshop, species, clock.instant());
    List<RackView.Row> rows = new ArrayList<>();
    for (RackRow row : workshop.rack().rows()) {
      if (!row.state().isCheckRod()) {
        rows.add(row(row, wood.grain(row.blank()), wood.seasoning(row.blank())));
      }
    }
    Collections.reverse(rows);
    mailbox.put(
        new RackView(
            rows,
            openTag == null ? null : opened(openTag, wood),
            species.all().stream().map(Species::name).toList(),
            STAGES,
            units,
            said));
  }

  private RackView.Row row(RackRow row, Grain grain, Seasoning seasoning) {
    boolean isVeiled = isToBeGuessed(row.blank());
    boolean isEnded = row.state().endedWhy() != null;
    String seasoned = isEnded ? "" : WoodWords.seasoning(seasoning);
    String words =
        String.join(
            " ",
            row.blank().tag(),
            orEmpty(row.species()),
            orEmpty(row.state().stage()),
            orEmpty(row.state().promisedTo()),
            orEmpty(row.state().endedWhy()),
            row.state().isFree() ? "free" : "",
            row.state().promisedTo() == null ? "" : "promised",
            row.testedAt() == null ? "untested" : "tested " + row.testedAt().substring(0, 10),
            WoodWords.grain(grain, units),
            orEmpty(grain.looks()),
            seasoned,
            isEnded ? "" : seasoning.state().name());
    return new RackView.Row(
        row.blank().tag(),
        orEmpty(row.species()),
        orEmpty(row.state().stage()),
        row.massG(),
        isVeiled ? null : row.shaftStiffnessNPerMm(),
        isVeiled || row.modulusMPa() == null ? null : row.modulusMPa() / 1000,
        row.testedAt() == null ? "" : row.testedAt().substring(0, 10),
        orEmpty(row.state().promisedTo()),
        grain,
        seasoned,
        orEmpty(row.state().endedWhy()),
        words.toLowerCase(Locale.ROOT));
  }

  private RackView.Opened opened(String tag, WoodRecords wood) throws WorkshopException {
    BlankRecord record = BlankRecord.of(workshop, tag);
    Blank blank = record.blank();
    Shaft shaft = shafts.shaft(blank);
    String stage = orEmpty(record.state().stage());
    Grain grain = wood.grain(blank);
    List<BlankEntry.Calipers> calipers = new ArrayList<>();
    for (int i = 0; i < shaft.taper().stationCount(); i++) {
      Station s = shaft.taper().station(i);
      calipers.add(
          new BlankEntry.Calipers(
              s.xMm(), s.depthMm(), shaft.widthMeasured()[i] ? s.widthMm() : null));
    }
    BlankEntry entry =
        new BlankEntry(
            blank.tag(),
            orEmpty(shaft.species()),
            stage,
            shaft.taper().shape(),
            shaft.taper().lengthMm(),
            shaft.massG(),
            shaft.moisturePercent(),
            calipers,
            grain,
            "");
    List<RackView.Event> events = RecordEvents.of(record, units);
    List<String> details = new ArrayList<>();
    details.add(shaft.species() == null ? "wood not said" : shaft.species());
    if (!stage.isEmpty()) {
      details.add(stage);
    }
    details.add(units.lengthText(shaft.taper().lengthMm()));
    if (shaft.massG() != null) {
      details.add(units.massText(shaft.massG()));
    }
    if (shaft.moisturePercent() != null) {
      details.add(Figures.rounded(shaft.moisturePercent(), 1) + " % moist");
    }
    String seasoning = WoodWords.seasoningWhole(wood.seasoning(blank));
    String grainWords = WoodWords.grain(grain, units);
    return new RackView.Opened(
        blank.tag(),
        String.join(", ", details),
        seasoning + (grainWords.isEmpty() ? "" : "; grain " + grainWords),
        orEmpty(record.state().endedWhy()),
        shaft.taper(),
        entry,
        isToBeGuessed(blank) ? RecordEvents.veiled(events) : events);
  }

  /** What a hand is to guess, it must not be able to read here. */
  private boolean isToBeGuessed(Blank blank) {
    return blank.tag().equals(bench.toBeGuessed());
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }

  @Override
  public void open(String tag) {
    atWork(
        () -> {
          openTag = tag;
          said = "";
          show();
        });
  }

  @Override
  public void enter(BlankEntry blank, Reply reply) {
    atWork(
        reply,
        () -> {
          if (workshop.blanks().find(blank.tag()).isPresent()) {
            throw new WorkshopException("tag: there is a blank " + blank.tag() + " already");
          }
          keepBlank.enter(measured(blank));
          openTag = blank.tag();
          show();
        });
  }

  @Override
  public void measure(BlankEntry blank, Reply reply) {
    atWork(
        reply,
        () -> {
          keepBlank.measure(measured(blank), blank.why());
          openTag = blank.tag();
          show();
        });
  }

  @Override
  public void splice(String tag, KeepSplice.Measured splice, Reply reply) {
    atWork(
        reply,
        () -> {
          keepSplice.keep(tag, splice);
          show();
        });
  }

  private static KeepBlank.Measured measured(BlankEntry b) {
    return new KeepBlank.Measured(
        b.tag(),
        b.species().isBlank() ? null : b.species(),
        b.stage().isBlank() ? null : b.stage(),
        b.section(),
        b.lengthMm(),
        b.massG(),
        b.moisturePercent(),
        b.stations().stream()
            .map(c -> new KeepBlank.Calipers(c.xMm(), c.depthMm(), c.widthMm()))
            .toList(),
        b.grain());
  }

  @Override
  public void note(String tag, String words, Reply reply) {
    atWork(
        reply,
        () -> {
          workshop.notes().add(workshop.blanks().require(tag), words);
          show();
        });
  }

  @Override
  public void end(String tag, String why, Reply reply) {
    atWork(
        reply,
        () -> {
          workshop.blanks().end(workshop.blanks().require(tag), why);
          openTag = null;
          said = tag + " is ended: " + why + ".  Ctrl Z takes it back, ended typed here shows it.";
          show();
        });
  }

  @Override
  public void undo(Reply reply) {
    atWork(
        reply,
        () -> {
          said = "Taken back: " + new TakeBack(workshop, species).last() + ".";
          if (openTag != null && workshop.blanks().find(openTag).isEmpty()) {
            openTag = null;
          }
          show();
        });
  }

  @Override
  public void lay(String tag) {
    bench.lay(tag);
  }
}
