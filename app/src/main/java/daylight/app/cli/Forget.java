package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Archive;
import daylight.archive.store.KeptEntry;
import daylight.archive.store.KeptSite;
import daylight.archive.store.Revision;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes out for good what an entry said before. */
@Command(
    name = "forget",
    mixinStandardHelpOptions = true,
    description = {
      "Take out of the archive, for good, what an entry said before and says no more.",
      "",
      "For who asks that something about a person be gone. What the entry says now stays; so change it",
      "or withdraw it first. Of what is taken out there stay its SHA-256, who wrote it, when and on",
      "which device. Backups and exported files that were made before still hold it."
    })
final class Forget implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "SITE",
      description = "Part of its name or address that no other has, or the identity of its book.")
  private String site = "";

  @Parameters(
      index = "1",
      paramLabel = "ENTRY",
      description = "The label of the entry, such as L3, or its identity.")
  private String entry = "";

  @Option(names = "--yes", description = "Do it; without this it is only said what would be done.")
  private boolean yes;

  @Mixin private ArchiveChoice archive = new ArchiveChoice();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    return archive.open(
        here, false, open -> OneSite.of(here, archive, open, site, one -> find(here, open, one)));
  }

  private int find(CommandSpec here, Archive open, KeptSite one) {
    List<UUID> found = open.called(one.book(), entry);
    UUID identity = identity();
    if (identity != null && !open.history(one.book(), identity).isEmpty()) {
      found = List.of(identity);
    }
    Argument called = new Argument.Text(entry);
    if (found.size() == 1) {
      return forget(here, open, one, found.getFirst());
    }
    Statement why =
        found.isEmpty()
            ? Statement.of(ArchiveSays.NO_ENTRY, called)
            : Statement.of(
                ArchiveSays.SEVERAL_ENTRIES,
                called,
                new Argument.Choices(found.stream().map(UUID::toString).toList()));
    return archive.refused(here, why, ExitCode.BOOK_REFUSED);
  }

  private @Nullable UUID identity() {
    try {
      return UUID.fromString(entry);
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  private int forget(CommandSpec here, Archive open, KeptSite one, UUID found) {
    boolean holds = open.entries(one.book()).stream().map(KeptEntry::entry).anyMatch(found::equals);
    long said =
        open.history(one.book(), found).stream()
            .map(Revision::content)
            .filter(Objects::nonNull)
            .count();
    long before = said - (holds ? 1 : 0);
    ObjectNode reply =
        JsonReply.reply(yes ? "forgotten" : "would_forget")
            .put("book", one.book().toString())
            .put("entry", found.toString())
            .put("holdsNow", holds);
    try {
      long done = yes ? open.forget(one.book(), found) : before;
      reply.put("contents", done);
      Argument count = new Argument.Count(done);
      archive.say(
          here,
          yes ? "cli.archive.forgotten" : "cli.archive.would_forget",
          new Argument.Text(entry),
          count);
    } catch (IOException e) {
      return Console.of(here, archive.json()).notWritten(open.folder(), e);
    }
    archive.say(here, holds ? "cli.archive.says_still" : "cli.archive.says_nothing");
    archive.json(here, reply);
    return ExitCode.DONE;
  }
}
