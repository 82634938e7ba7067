package daylight.app.cli;

import daylight.archive.store.Archive;
import daylight.archive.store.KeptSite;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.util.List;
import java.util.function.ToIntFunction;
import picocli.CommandLine.Model.CommandSpec;

/** The one site of an archive that a person names. */
final class OneSite {
  private static final int SHOWN = 5;

  private OneSite() {}

  /**
   * Works on the site that has a name, or a part of it, that no other has, or the identity of its
   * book; says so where there is none, or more than one.
   */
  static int of(
      CommandSpec here,
      ArchiveChoice archive,
      Archive open,
      String named,
      ToIntFunction<KeptSite> work) {
    List<KeptSite> found =
        open.sites("").stream().filter(s -> s.book().toString().equals(named)).toList();
    if (found.isEmpty()) {
      found = open.sites(named);
    }
    return found.size() == 1
        ? work.applyAsInt(found.getFirst())
        : archive.refused(here, notOne(named, found), ExitCode.BOOK_REFUSED);
  }

  private static Statement notOne(String named, List<KeptSite> found) {
    Argument called = new Argument.Text(named);
    return found.isEmpty()
        ? Statement.of(ArchiveSays.NO_SITE, called)
        : Statement.of(
            ArchiveSays.SEVERAL_SITES,
            called,
            new Argument.Choices(
                found.stream().limit(SHOWN).map(s -> s.name() + " (" + s.book() + ")").toList()));
  }
}
