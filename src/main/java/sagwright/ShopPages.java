package sagwright;

import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import sagwright.job.ChoosingShop;
import sagwright.screen.Mailbox;
import sagwright.screen.OnBench;
import sagwright.screen.Page;
import sagwright.screen.Shell;
import sagwright.screen.ShopUnits;
import sagwright.screen.choose.ChooseDesk;
import sagwright.screen.choose.ChooseScreen;
import sagwright.screen.choose.ChooseView;
import sagwright.screen.orders.OrdersDesk;
import sagwright.screen.orders.OrdersScreen;
import sagwright.screen.orders.OrdersView;
import sagwright.screen.rack.RackDesk;
import sagwright.screen.rack.RackScreen;
import sagwright.screen.rack.RackView;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;

/** The pages that speak in the shop's units; they are made anew when these change. */
final class ShopPages {
  private final Workshop workshop;
  private final SpeciesTable species;
  private final Executor work;
  private final Shell shell;
  private final OnBench bench;

  ShopPages(Workshop workshop, SpeciesTable species, Executor work, Shell shell, OnBench bench) {
    this.workshop = workshop;
    this.species = species;
    this.work = work;
    this.shell = shell;
    this.bench = bench;
  }

  /** Adds them to the rail. */
  void add(ShopUnits units) {
    makers(units).values().forEach(maker -> shell.add(maker.get()));
  }

  void speakIn(ShopUnits units) {
    makers(units).forEach(shell::makeAnew);
  }

  private Map<String, Supplier<Page>> makers(ShopUnits units) {
    Map<String, Supplier<Page>> makers = new LinkedHashMap<>();
    makers.put("Rack", () -> rack(units));
    makers.put("Orders", () -> orders(units));
    makers.put("Choose", () -> choose(units));
    return makers;
  }

  private Page rack(ShopUnits units) {
    Mailbox<RackView> mailbox = new Mailbox<>(RackDesk.atFirst(units));
    RackDesk desk = new RackDesk(workshop, species, InstantSource.system(), work, mailbox, bench);
    shell.whenOpened("Rack", desk::refresh);
    return new RackScreen(mailbox, desk);
  }

  private Page orders(ShopUnits units) {
    Mailbox<OrdersView> mailbox = new Mailbox<>(OrdersDesk.atFirst(units));
    OrdersDesk desk = new OrdersDesk(workshop, species, work, mailbox);
    shell.whenOpened("Orders", desk::refresh);
    return new OrdersScreen(mailbox, desk);
  }

  private Page choose(ShopUnits units) {
    Mailbox<ChooseView> mailbox = new Mailbox<>(ChooseView.reading(units));
    return new ChooseScreen(
        mailbox,
        new ChooseDesk(new ChoosingShop(workshop, species, InstantSource.system()), work, mailbox));
  }
}
