package sagwright.job;

import java.util.List;

/**
 * Where a bench head may be plugged in, as people tell the places apart. Looking may take a while:
 * not for the event thread.
 */
public interface HeadPorts {
  /** Those that are there now. */
  List<String> names();

  /** The one that is listened to. */
  String chosen();

  /** The same as one line of text that finds it again at the next start; empty for none. */
  String asText();

  /** Listens to another one from now on; one that is gone changes nothing. */
  void choose(String name);

  /** A bench that is in one place alone. */
  static HeadPorts only(String name) {
    return new HeadPorts() {
      @Override
      public List<String> names() {
        return List.of(name);
      }

      @Override
      public String chosen() {
        return name;
      }

      @Override
      public String asText() {
        return "";
      }

      @Override
      public void choose(String other) {
        // there is no other
      }
    };
  }
}
