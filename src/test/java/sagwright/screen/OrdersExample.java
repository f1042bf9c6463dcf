package sagwright.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.AskPlaces;
import sagwright.grade.Order;
import sagwright.grade.OrderRemarks;
import sagwright.grade.ReferenceCue;
import sagwright.job.FinishedCues.FinishedCue;
import sagwright.job.KeepTapers.KeptTaper;
import sagwright.job.PlannedFinish;
import sagwright.modulus.ModulusAlong;
import sagwright.screen.bench.BenchExample;
import sagwright.screen.orders.OrdersActions;
import sagwright.screen.orders.OrdersView;
import sagwright.screen.theme.RowTable;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;

/** Invented orders for pictures and window tests. */
final class OrdersExample {
  private static final SetUp MIDDLE = AskPlaces.AT_FIRST.middle();

  private OrdersExample() {}

  static OrdersView orders() {
    return view(
        List.of(
            new OrdersView.Row(order("R-0007", 2.10, "left-handed, long reach", 1473), ""),
            new OrdersView.Row(order("R-0006", 2.25, "a second cue like R-0002", 1473), ""),
            new OrdersView.Row(order("R-0004", 2.10, "", 1460), "25-007")),
        "R-0008");
  }

  static OrdersView none() {
    return view(List.of(), "R-0001");
  }

  private static OrdersView view(List<OrdersView.Row> rows, String next) {
    return new OrdersView(
        rows,
        next,
        AskPlaces.AT_FIRST,
        BenchExample.words(),
        SpeciesTable.published().all(),
        List.of(
            new FinishedCue(cue("24-031", 12_400, 2.218), order("R-0002", 2.2, "", 1473)),
            new FinishedCue(cue("V-003", 13_100, 2.402), null)),
        List.of(
            new KeptTaper(1, "club", taper(1460, 9.8, 18.6)),
            new KeptTaper(2, "slim", taper(1473, 9.2, 17.9))),
        ShopUnits.METRIC);
  }

  private static ReferenceCue cue(String tag, double modulusMPa, double stiffnessNPerMm) {
    return new ReferenceCue(
        tag,
        taper(1473, 9.4, 18.5),
        new Splice(1030, 4, 1009, 17_700, 0),
        ModulusAlong.constant(new Estimate(modulusMPa, 55)),
        10.9,
        new ReferenceCue.Measured(MIDDLE, new Estimate(stiffnessNPerMm, 0.004)));
  }

  private static Taper taper(double lengthMm, double tipMm, double waistMm) {
    return Taper.round(
        List.of(Station.round(0, tipMm), Station.round(740, waistMm), Station.round(lengthMm, 29)),
        lengthMm);
  }

  /** With ferrule, joint, ebony splice and lead; asked in the middle and, by a cue, at the butt. */
  static Order order(String number, double asked, String notes, double lengthMm) {
    return new Order(
        number,
        "European ash",
        LocalDate.of(2027, 3, 1),
        notes,
        new FinishPlan(
            taper(lengthMm, 9.5, 18.4),
            0.05,
            8.0,
            new Ferrule(9.5, 8, 8500),
            new Splice(1030, 4, 1009, 17_700, 0),
            List.of(new Weight(1320, 1400, 12, 11340)),
            List.of(new Extra("joint", 1000, 38), new Extra("badge", 1440, 6))),
        new Ask(MIDDLE, asked, 5, new Aim(510, 15.0), new Aim(390, 15.0)),
        List.of(Ask.ofStiffness(AskPlaces.AT_FIRST.butt(), 22.4, 8)),
        new OrderRemarks(
            80.0, "ebony African", List.of(asked > 2.2 ? "as 24-031" : "", "as 24-031 + 5 %")));
  }

  /** The newest order as it is opened to be changed. */
  static Shell opened(Shell shell) {
    RowTable<?> table = (RowTable<?>) ShopExample.named(shell, "orders.table");
    table.getActionMap().get("open").actionPerformed(null);
    return shell;
  }

  /** A new order, typed in everyday words as far as it is known yet. */
  static Shell typed(Shell shell) {
    ShopExample.type(shell, "order.length", "58 in");
    ShopExample.type(shell, "order.tip", "9,5");
    ShopExample.type(shell, "order.butt", "29");
    ShopExample.type(shell, "knots.1.1", "740");
    ShopExample.type(shell, "knots.1.2", "18.4");
    ShopExample.type(shell, "ask.front", "as V-003 + 10 %");
    ShopExample.type(shell, "ask.middle", "firm");
    ShopExample.type(shell, "ask.butt", "as 24-031");
    ShopExample.type(shell, "ask.weight", "18½ oz");
    ShopExample.type(shell, "ask.weight ±", "15");
    ShopExample.type(shell, "ask.balance", "16 in");
    ShopExample.type(shell, "caller.who for", "long reach, plays from the elbow");
    ShopExample.type(shell, "caller.promised", "30.6.2027");
    ShopExample.type(shell, "splice.splice", "17 in");
    ((JComboBox<?>) ShopExample.named(shell, "splice.splice wood"))
        .setSelectedItem("ebony African");
    ((JComboBox<?>) ShopExample.named(shell, "caller.wood")).setSelectedItem("European ash");
    return shell;
  }

  /** A new order that its maker should look at twice. */
  static Shell odd(Shell shell) {
    String[][] texts = {
      {"order.length", "38 in"},
      {"order.tip", "14.5"},
      {"order.butt", "29"},
      {"knots.1.1", "600"},
      {"knots.1.2", "13"},
      {"ask.front", "6.2"},
      {"ask.weight", "26 oz"},
      {"ask.balance", "300"},
      {"fitting.ferrule", "30"},
      {"fitting.bore", "9"},
      {"fitting.joint at", "500"}
    };
    for (String[] text : texts) {
      ShopExample.type(shell, text[0], text[1]);
    }
    return shell;
  }

  /** Does nothing but plan. */
  static class Idle implements OrdersActions {
    @Override
    public void undo(Consumer<String> said) {}

    @Override
    public void take(Order order, Reply reply) {}

    @Override
    public void change(Order order, Reply reply) {}

    @Override
    public void plan(Order order, String pickedTag, Consumer<PlannedFinish> planned) {
      planned.accept(PlanExample.of(order, pickedTag));
    }

    @Override
    public void keepTaper(String name, Taper taper, Reply reply) {}

    @Override
    public void renameTaper(long id, String name, Reply reply) {}

    @Override
    public void deleteTaper(long id, Reply reply) {}

    @Override
    public void undoTaper(Reply reply) {}
  }
}
