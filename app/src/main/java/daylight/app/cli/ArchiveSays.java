package daylight.app.cli;

import daylight.line.measure.Key;
import java.util.Locale;

/** What the commands of the archive say when they do not do what was asked. */
enum ArchiveSays implements Key {
  /** {0}: {1} of the {2} entries kept under its name would be others: it may be another site. */
  LIKELY_ANOTHER,
  /** No site is called {0}. */
  NO_SITE,
  /** Several sites are called {0}: {1}. */
  SEVERAL_SITES,
  /** No entry was ever called {0}. */
  NO_ENTRY,
  /** Several entries are or were called {0}: {1}. */
  SEVERAL_ENTRIES;

  @Override
  public String key() {
    return "cli.archive." + name().toLowerCase(Locale.ROOT);
  }
}
