package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Archive;
import daylight.archive.store.KeptSite;
import daylight.line.measure.Argument;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the archive holds. */
@Command(
    name = "sites",
    mixinStandardHelpOptions = true,
    description = "List the sites in the archive, or those whose name or address holds TEXT.")
final class Sites implements Callable<Integer> {
  @Parameters(paramLabel = "TEXT", arity = "0..1", description = "Part of a name or an address.")
  private String text = "";

  @Mixin private ArchiveChoice archive = new ArchiveChoice();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() {
    CommandSpec here = ArchiveChoice.known(spec);
    return archive.open(here, false, open -> list(here, open));
  }

  private int list(CommandSpec here, Archive open) {
    List<KeptSite> sites = open.sites(text);
    ObjectNode reply = JsonReply.reply("sites");
    ArrayNode listed = reply.putArray("sites");
    for (KeptSite site : sites) {
      LocalDate last = site.lastVisit();
      archive.say(
          here,
          last == null ? "cli.archive.site.undated" : "cli.archive.site",
          new Argument.Text(site.name()),
          new Argument.Count(site.visits()),
          last == null ? new Argument.Text("") : new Argument.Day(last),
          new Argument.Text(site.book().toString()),
          new Argument.Text(site.address()));
      listed
          .addObject()
          .put("book", site.book().toString())
          .put("name", site.name())
          .put("address", site.address())
          .put("visits", site.visits())
          .put("lastVisit", last == null ? null : last.toString())
          .put("changed", site.changed().toString());
    }
    if (sites.isEmpty()) {
      archive.say(here, "cli.archive.no_sites");
    }
    archive.json(here, reply);
    return ExitCode.DONE;
  }
}
