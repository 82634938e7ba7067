package daylight.app.door;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Codes by which a phone joins: eight letters, good once and for five minutes. Who guesses has one
 * chance in 25.6 thousand million a try, and no more than twenty tries a minute in all; our own
 * limits. Forgotten when the program ends.
 */
public final class Codes {
  /** How long a code is good. */
  public static final Duration GOOD = Duration.ofMinutes(5);

  /** Wrong codes a minute from one address, and from all. */
  static final int WRONG_FROM_ONE = 5;

  static final int WRONG_IN_ALL = 20;

  /** Consonants, of which none is read as another or as a figure; so no code is a word. */
  private static final String LETTERS = "BCDFGHJKMNPQRSTVWXYZ";

  private static final int LENGTH = 8;
  private static final int LONGEST_TYPED = 40;
  private static final Duration MINUTE = Duration.ofMinutes(1);

  /** So long it is told that a code was used or came too late, not only that it is unknown. */
  private static final Duration REMEMBERED = Duration.ofHours(1);

  /** So many at once; more take the place of the oldest. */
  private static final int MOST = 20;

  private final InstantSource clock;
  private final SecureRandom random = new SecureRandom();
  private final Deque<Known> known = new ArrayDeque<>();
  private final Map<String, Deque<Instant>> wrong = new HashMap<>();

  Codes(InstantSource clock) {
    this.clock = clock;
  }

  /**
   * A code that is good.
   *
   * @param text its letters, without a gap
   */
  public record Code(String text, Instant until) {
    /** In two groups, as one reads it out. */
    public String spaced() {
      return text.substring(0, LENGTH / 2) + " " + text.substring(LENGTH / 2);
    }
  }

  private static final class Known {
    private final Code code;
    private boolean used;

    private Known(Code code) {
      this.code = code;
    }
  }

  synchronized Code fresh() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < LENGTH; i++) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    Instant now = clock.instant();
    known.removeIf(one -> one.code.until().plus(REMEMBERED).isBefore(now));
    while (known.size() >= MOST) {
      known.removeFirst();
    }
    Code code = new Code(text.toString(), now.plus(GOOD));
    known.addLast(new Known(code));
    return code;
  }

  /** The newest that is good still; empty where there is none. */
  synchronized Optional<Code> good() {
    return known.reversed().stream().filter(this::isGood).map(one -> one.code).findFirst();
  }

  private boolean isGood(Known one) {
    return !one.used && clock.instant().isBefore(one.code.until());
  }

  /** None is good any more. */
  synchronized void end() {
    known.clear();
  }

  /**
   * Uses a code up, where it is good.
   *
   * @param from whose wrong tries are counted together: the address it comes from
   */
  synchronized Tried use(String typed, String from) {
    Instant now = clock.instant();
    Duration wait = waits(from, now);
    if (wait.isPositive()) {
      return new Tried.TooMany(wait);
    }
    Known found = find(typed);
    if (found == null || !isGood(found)) {
      wrong.computeIfAbsent(from, any -> new ArrayDeque<>()).addLast(now);
      return new Tried.Refused(
          found == null ? Tried.Why.UNKNOWN : found.used ? Tried.Why.USED : Tried.Why.LATE);
    }
    found.used = true;
    return new Tried.Good();
  }

  /** Makes a code good again that was used in vain. */
  synchronized void giveBack(String typed) {
    Known found = find(typed);
    if (found != null) {
      found.used = false;
    }
  }

  /** Looks at all of them to their end, so that the time it takes tells nothing. */
  private @Nullable Known find(String typed) {
    byte[] wanted = letters(typed).getBytes(StandardCharsets.UTF_8);
    Known found = null;
    for (Known one : known) {
      if (MessageDigest.isEqual(one.code.text().getBytes(StandardCharsets.UTF_8), wanted)) {
        found = one;
      }
    }
    return found;
  }

  /** As people type it: small letters, gaps and hyphens are nothing. */
  private static String letters(String typed) {
    return typed
        .substring(0, Math.min(LONGEST_TYPED, typed.length()))
        .toUpperCase(Locale.ROOT)
        .replaceAll("[\\s\\p{Pd}.]+", "");
  }

  private Duration waits(String from, Instant now) {
    wrong.values().forEach(tries -> tries.removeIf(at -> !at.plus(MINUTE).isAfter(now)));
    wrong.values().removeIf(Deque::isEmpty);
    List<Instant> all = new ArrayList<>();
    wrong.values().forEach(all::addAll);
    Duration one =
        wait(List.copyOf(wrong.getOrDefault(from, new ArrayDeque<>())), WRONG_FROM_ONE, now);
    Duration any = wait(all, WRONG_IN_ALL, now);
    return one.compareTo(any) > 0 ? one : any;
  }

  /** Until fewer than so many lie within a minute. */
  private static Duration wait(List<Instant> tries, int most, Instant now) {
    if (tries.size() < most) {
      return Duration.ZERO;
    }
    Instant free = tries.stream().sorted().toList().get(tries.size() - most).plus(MINUTE);
    return Duration.between(now, free);
  }
}
