package sagwright.bench;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A head's answer to a command, as it came: to {@code *IDN?} or to {@code SYST:ERR?}. What looks
 * like neither is another device's chatter.
 */
public record HeadAnswer(String text) implements LineOutcome {
  private static final Pattern IDENTITY =
      Pattern.compile("SAGWRIGHT,[ -~&&[^,]]*,[ -~&&[^,]]*,[ -~&&[^,]]*");
  private static final Pattern ERROR = Pattern.compile("[+-]?[0-9]{1,6},\"[ -~]*\"");

  static boolean isOne(String text) {
    return IDENTITY.matcher(text).matches() || ERROR.matcher(text).matches();
  }

  /** Who the head says it is; empty where this is an answer to something else. */
  public Optional<HeadIdentity> identity() {
    if (!IDENTITY.matcher(text).matches()) {
      return Optional.empty();
    }
    String[] fields = text.split(",", -1);
    return Optional.of(new HeadIdentity(fields[1].strip(), fields[2].strip(), fields[3].strip()));
  }
}
