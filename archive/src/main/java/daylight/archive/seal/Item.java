package daylight.archive.seal;

import daylight.archive.Sha256;
import java.util.regex.Pattern;

/**
 * One file of a bundle, as its list has it.
 *
 * @param name its path in the bundle, with slashes
 * @param size bytes
 */
record Item(String name, long size, Sha256 content) {
  /** Nothing that leads elsewhere on some system: no drive, root, parent, control character. */
  private static final Pattern SAFE =
      Pattern.compile("(?!.*(?:^|/)\\.{0,2}(?:/|$))[^\\p{Cntrl}\\\\:]{1,400}");

  Item {
    if (!isName(name) || size < 0) {
      throw new IllegalArgumentException("no file of a bundle: " + name + ", " + size + " bytes");
    }
  }

  /** Whether a file of a bundle may be called so. */
  static boolean isName(String name) {
    return SAFE.matcher(name).matches();
  }
}
