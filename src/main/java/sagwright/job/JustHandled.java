package sagwright.job;

import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The blanks that were laid or tested last: those that may lie there by mistake. */
final class JustHandled {
  private static final int MOST = 4;
  private static final Duration WITHIN = Duration.ofHours(12);

  private final Workshop workshop;
  private final LayBlank layBlank;
  private final InstantSource clock;
  private final Deque<Blank> laid = new ArrayDeque<>(); // the last one first

  JustHandled(Workshop workshop, LayBlank layBlank, InstantSource clock) {
    this.workshop = workshop;
    this.layBlank = layBlank;
    this.clock = clock;
  }

  void laid(Blank blank) {
    laid.remove(blank);
    laid.addFirst(blank);
    if (laid.size() > MOST + 1) {
      laid.removeLast();
    }
  }

  /** All but this one, the last one first. */
  List<RightBlank.Handled> others(Blank but) throws WorkshopException {
    Map<Long, Blank> blanks = new LinkedHashMap<>();
    for (Blank blank : laid) {
      if (workshop.blanks().find(blank.tag()).isPresent()) {
        blanks.putIfAbsent(blank.id(), blank);
      }
    }
    for (Blank blank : workshop.runs().blanksTestedSince(clock.instant().minus(WITHIN), MOST)) {
      blanks.putIfAbsent(blank.id(), blank);
    }
    blanks.remove(but.id());
    List<RightBlank.Handled> others = new ArrayList<>();
    for (Blank blank : blanks.values().stream().limit(MOST).toList()) {
      others.add(new RightBlank.Handled(blank, layBlank.runs(blank)));
    }
    return others;
  }
}
