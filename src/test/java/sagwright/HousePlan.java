package sagwright;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The one table of which room may use which; DEVELOPERS.md shows the same. */
final class HousePlan {
  private static final String PHYSICS = "uncertainty beam wood run modulus survey finish";

  private HousePlan() {}

  /** Room (the package name behind {@code sagwright.}) to the rooms of ours that it may use. */
  static Map<String, Set<String>> rooms() {
    Map<String, Set<String>> rooms = new LinkedHashMap<>();
    put(rooms, "quantity", "");
    put(rooms, "uncertainty", "");
    put(rooms, "beam", "");
    put(rooms, "wood", "uncertainty");
    put(rooms, "run", "uncertainty");
    put(rooms, "modulus", "beam wood run uncertainty");
    put(rooms, "survey", "beam wood run modulus uncertainty");
    put(rooms, "finish", "beam wood run modulus survey uncertainty");
    put(rooms, "grade", "beam finish modulus uncertainty");
    put(rooms, "choose", PHYSICS + " grade");
    put(rooms, "bench", "beam run uncertainty");
    put(rooms, "bench.serial", "bench");
    put(rooms, "bench.practice", "bench beam run");
    put(rooms, "check", "bench beam run modulus uncertainty");
    put(rooms, "sheet", PHYSICS + " grade bench check");
    put(rooms, "workshop", PHYSICS + " grade choose bench check sheet");
    put(rooms, "drawing", PHYSICS + " grade check quantity");
    put(rooms, "job", PHYSICS + " grade choose bench check sheet workshop");
    put(rooms, "example", PHYSICS + " grade bench bench.practice check sheet workshop job");
    put(rooms, "command", PHYSICS + " grade choose bench check sheet workshop job quantity");
    put(rooms, "screen", PHYSICS + " grade choose bench check workshop job drawing quantity");
    return rooms;
  }

  /** Library packages that one room alone may use. */
  static Map<String, Set<String>> soleUsers() {
    Map<String, Set<String>> soleUsers = new LinkedHashMap<>();
    soleUsers.put("com.fazecast.jSerialComm", Set.of("bench.serial"));
    soleUsers.put("org.jgrapht", Set.of("choose"));
    soleUsers.put("com.fasterxml.jackson", Set.of("sheet"));
    soleUsers.put("java.sql", Set.of("workshop"));
    soleUsers.put("org.jdbi", Set.of("workshop"));
    soleUsers.put("org.sqlite", Set.of("workshop"));
    soleUsers.put("org.jfree", Set.of("drawing", "screen"));
    soleUsers.put("info.picocli", Set.of("command"));
    soleUsers.put("picocli", Set.of("command"));
    soleUsers.put("javax.swing", Set.of("screen"));
    soleUsers.put("com.formdev", Set.of("screen"));
    soleUsers.put("net.miginfocom", Set.of("screen"));
    soleUsers.put("java.awt", Set.of("drawing", "screen"));
    return soleUsers;
  }

  /** The room of a package: the longest room name that it is or lies in; "" for the root. */
  static String roomOf(String packageName) {
    if (!packageName.startsWith("sagwright.")) {
      return "";
    }
    String inside = packageName.substring("sagwright.".length());
    String room = inside;
    while (!rooms().containsKey(room) && room.contains(".")) {
      room = room.substring(0, room.lastIndexOf('.'));
    }
    return rooms().containsKey(room) ? room : inside;
  }

  private static void put(Map<String, Set<String>> rooms, String room, String mayUse) {
    rooms.put(room, mayUse.isBlank() ? Set.of() : Set.of(mayUse.trim().split(" +")));
  }
}
