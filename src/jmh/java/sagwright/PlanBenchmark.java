package sagwright;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.drawing.FinishDrawing;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;
import sagwright.finish.Cut;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.job.ImportDocuments;
import sagwright.job.InventedBlanks;
import sagwright.job.PlanFinish;
import sagwright.job.PlannedFinish;
import sagwright.sheet.BadDocumentException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * One keystroke in an order: the whole rack held against it, the best blank forecast and graded, a
 * tenth of a millimetre more and less planed, its lead solved; and the finish plan drawn at 1920
 * wide. Everything is in the plan, two stiffnesses are asked.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanBenchmark {
  private static final int WIDTH = 1700;
  private static final int HEIGHT = 260;

  @Param({"50", "500", "5000"})
  private int blanks;

  /** Asked; 200 from the butt is nearer than any lead brings it. */
  @Param({"400", "200"})
  private double balanceMm;

  private final Style style = new Style(Palette.LIGHT, Lettering.load());
  private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
  private PlanFinish plan;
  private Order order;
  private FinishDrawing.Scene scene;

  /** Invented, always the same. */
  @Setup(Level.Trial)
  public void fill() throws IOException, WorkshopException, BadDocumentException {
    Path file = Files.createTempDirectory("plan").resolve("workshop.db");
    SpeciesTable species = SpeciesTable.published();
    try (Workshop workshop =
        Workshop.openOrCreate(file, new Keeper(InstantSource.system(), "bench"))) {
      ImportDocuments imports = new ImportDocuments(workshop, species);
      for (int i = 0; i < blanks; i++) {
        imports.bring(
            InventedBlanks.sheet(
                InventedBlanks.Spec.ash(String.format("25-%05d", i), 11_000 + 37 * i % 2_000)),
            false);
      }
      plan = new PlanFinish(workshop, species);
      plan.readAgain();
    }
    order = order();
    PlannedFinish planned = plan.plan(order, null);
    Cut cut = planned.graded().forecast().cut();
    scene =
        new FinishDrawing.Scene(
            planned.blank().taper(),
            order.finish(),
            cut.fromMm(),
            planned.graded().forecast().balanceFromButtMm(),
            new FinishDrawing.LeastSpare(cut.leastSpareMm(), cut.leastSpareAtMm()));
  }

  private Order order() {
    FinishPlan finish =
        new FinishPlan(
            Taper.round(
                List.of(Station.round(0, 9.5), Station.round(740, 18.9), Station.round(1473, 29)),
                1473),
            FinishPlan.ASSUMED_DIAMETER_UNCERTAINTY_MM,
            null,
            new Ferrule(9.5, 8, 8500),
            new Splice(1030, 4, 1120, 15_500, 0),
            List.of(),
            List.of(new Extra("joint", 740, 38)));
    return new Order(
        "R-0001",
        null,
        null,
        null,
        finish,
        new Ask(
            new SetUp(100, 1100, 600, 600, 0),
            2.2,
            5,
            new Aim(560, 15.0),
            new Aim(balanceMm, 15.0)),
        List.of(Ask.ofStiffness(new SetUp(700, 1450, 1075, 1075, 0), 21, 8)));
  }

  @Benchmark
  public PlannedFinish planned() {
    return plan.plan(order, null);
  }

  @Benchmark
  public BufferedImage drawn() {
    Graphics2D g = image.createGraphics();
    new FinishDrawing(style).paint(g, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT), scene);
    g.dispose();
    return image;
  }
}
