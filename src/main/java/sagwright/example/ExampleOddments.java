package sagwright.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishedMass;
import sagwright.job.LayBlank;
import sagwright.job.MoveRun;
import sagwright.job.SafeLoad;
import sagwright.wood.SafeStress;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.WorkshopException;

/**
 * What else happens in a workshop: notes, blanks that break, runs that go wrong, runs read by hand,
 * cues that people bring along.
 */
final class ExampleOddments {
  private static final String MAKER = ExampleWorkshop.MAKER;
  private static final String APPRENTICE = ExampleWorkshop.APPRENTICE;
  private static final double NOTED_SHARE = 0.4;
  private static final double VISITOR_MOISTURE_PERCENT = 9.5;

  private static final List<String> NOTES =
      List.of(
          "rings fine and even all along",
          "small knot 1180 mm from the tip, inside the splice",
          "came up a little proud after the second turning, taken down again",
          "lay against the outer wall last winter",
          "nicest of this lot",
          "end checked 20 mm, cut back",
          "sapwood on one side near the butt",
          "tip a shade soft to the nail",
          "keep for a long cue",
          "oiled by mistake, wiped off the same day");

  /** A blank that is no more, since so many days. */
  private record Ended(String tag, int daysAgo, String why) {}

  private static final List<Ended> ENDED =
      List.of(
          new Ended("12-027", 88, "sold as it was to another maker"),
          new Ended("13-032", 410, "snapped on the lathe at a knot"),
          new Ended("14-031", 61, "a shake opened while it seasoned"));

  private final BlankStory.Tools tools;
  private final ExampleRack rack;
  private final Map<String, BlankStory> stories;

  /**
   * @param stories by tag
   */
  ExampleOddments(BlankStory.Tools tools, ExampleRack rack, Map<String, BlankStory> stories) {
    this.tools = tools;
    this.rack = rack;
    this.stories = stories;
  }

  void tell(Diary diary) {
    notes(diary);
    for (Ended each : ENDED) {
      diary.on(
          each.daysAgo(),
          0.9,
          MAKER,
          () -> tools.workshop().blanks().end(blank(each.tag()), each.why()));
    }
    brokenOff(diary);
    underTheWrongTag(diary);
    setAside(diary);
    readByHand(diary);
    visitors(diary);
  }

  private Blank blank(String tag) throws WorkshopException {
    return tools.workshop().blanks().require(tag);
  }

  private void notes(Diary diary) {
    for (ExampleBlank blank : rack.blanks()) {
      Random random = ExampleRack.randomOf("notes on " + blank.tag());
      if (random.nextDouble() < NOTED_SHARE) {
        int since = blank.daysAgo(Stage.SQUARE);
        int daysAgo = 1 + random.nextInt(Math.max(1, since - 2));
        String words = NOTES.get(random.nextInt(NOTES.size()));
        String hand = random.nextInt(4) == 0 ? APPRENTICE : MAKER;
        diary.on(
            daysAgo, 0.95, hand, () -> tools.workshop().notes().add(blank(blank.tag()), words));
      }
    }
  }

  private void brokenOff(Diary diary) {
    diary.on(
        120,
        0.93,
        APPRENTICE,
        () ->
            tools
                .bench()
                .brokenOff(stories.get("13-003").lying(Stage.NEAR_SIZE), tools.usual(), 11));
  }

  /** A run lay under one tag while another blank lay on the bench; it was moved, with its trace. */
  private void underTheWrongTag(Diary diary) {
    List<Run> made = new ArrayList<>();
    diary.on(
        110,
        0.93,
        APPRENTICE,
        () -> {
          ExampleBench.Lying really = stories.get("13-010").lying(Stage.NEAR_SIZE);
          made.add(
              tools
                  .bench()
                  .test(
                      new ExampleBench.Lying(
                          blank("13-012"), really.shape(), really.modulus(), really.looseness()),
                      tools.usual(),
                      null));
        });
    diary.on(
        110,
        0.94,
        MAKER,
        () -> move(made.get(0), "13-010", "the tags of the two had been swapped"));
  }

  private void move(Run run, String tag, String why) throws WorkshopException {
    LayBlank bench =
        new LayBlank(
            tools.workshop(),
            tools.species(),
            new SafeLoad(tools.species(), SafeStress.ASSUMED_SHARE));
    new MoveRun(tools.workshop(), tools.species()).move(bench.tested(run), blank(tag), why);
  }

  private void setAside(Diary diary) {
    diary.on(
        95,
        0.93,
        MAKER,
        () -> {
          ExampleBench.Lying sound = stories.get("12-011").lying(Stage.NEAR_SIZE);
          Run run =
              tools
                  .bench()
                  .test(
                      new ExampleBench.Lying(sound.blank(), sound.shape(), sound.modulus(), 0.06),
                      tools.usual(),
                      null);
          tools.workshop().runs().setAside(run, "near support had not been tightened");
        });
  }

  /** Before the bench had its head. */
  private void readByHand(Diary diary) {
    for (String tag : List.of("11-013", "11-014", "11-015")) {
      diary.on(
          965,
          0.2,
          MAKER,
          () -> tools.bench().readByHand(stories.get(tag).lying(Stage.NEAR_SIZE), tools.usual()));
    }
  }

  /** Cues that were played for years, measured so that their stiffness can be asked for again. */
  private void visitors(Diary diary) {
    int daysAgo = 140;
    for (String tag : ExampleRack.VISITORS) {
      int since = daysAgo;
      diary.on(since, 0.1, MAKER, () -> visit(tag));
      diary.on(
          since - 1,
          0.8,
          MAKER,
          () -> tools.workshop().blanks().end(blank(tag), "went home with its player"));
      daysAgo -= 50;
    }
  }

  private void visit(String tag) throws WorkshopException {
    ExampleWood wood = rack.visitor(tag);
    FinishPlan plan = ExampleOrders.plan(Math.floorMod(tag.hashCode(), 100));
    ExampleShape shape = ExampleShape.planed(tag, plan, true);
    double density = wood.densityKgM3(VISITOR_MOISTURE_PERCENT);
    tools
        .workshop()
        .blanks()
        .enter(
            new ExampleSheet(
                    tag,
                    wood.species().name(),
                    "visitor",
                    shape,
                    new FinishedMass(plan, density).total().massG(),
                    VISITOR_MOISTURE_PERCENT)
                .read(tools.reader()));
    tools
        .bench()
        .test(new ExampleBench.Lying(blank(tag), shape, wood::modulusMPa, 0), tools.usual(), null);
    tools
        .workshop()
        .notes()
        .add(blank(tag), "brought along by its player: measured, to be asked for again");
  }
}
