package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveOpening;
import daylight.archive.store.ArchiveTrouble;
import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Which archive a command works on, and what it says of it. */
final class ArchiveChoice {
  @Option(
      names = "--archive",
      paramLabel = "DIR",
      description = {
        "The folder of the archive; default: DAYLIGHT_ARCHIVE, else daylight-archive",
        "in your home folder."
      })
  private @Nullable Path folder;

  @Option(names = "--json", description = "Print one JSON object instead of sentences.")
  private boolean json;

  /** A folder that was chosen. */
  static ArchiveChoice of(Path folder, boolean json) {
    ArchiveChoice choice = new ArchiveChoice();
    choice.folder = folder;
    choice.json = json;
    return choice;
  }

  Path folder() {
    return folder(folder);
  }

  /** The folder that was chosen, or else the usual one. */
  static Path folder(@Nullable Path chosen) {
    String named = System.getenv("DAYLIGHT_ARCHIVE");
    if (chosen != null) {
      return chosen;
    }
    return named != null && !named.isBlank()
        ? Path.of(named)
        : Path.of(System.getProperty("user.home"), "daylight-archive");
  }

  boolean json() {
    return json;
  }

  /**
   * Works on the archive.
   *
   * @param begins whether one is begun where there is none
   */
  int open(CommandSpec spec, boolean begins, ToIntFunction<Archive> work) {
    if (!begins && !Files.exists(folder())) {
      return refused(
          spec,
          Statement.of(ArchiveTrouble.MISSING, new Argument.Text(folder().toString())),
          ExitCode.BOOK_REFUSED);
    }
    return switch (Archive.open(folder())) {
      case ArchiveOpening.Opened(Archive archive) -> {
        try {
          yield work.applyAsInt(archive);
        } finally {
          archive.close();
        }
      }
      case ArchiveOpening.Refused(Statement why) -> refused(spec, why, ExitCode.BOOK_REFUSED);
    };
  }

  /** Why it was not done. */
  int refused(CommandSpec spec, Statement why, int code) {
    if (json) {
      ObjectNode reply = JsonReply.reply("refused");
      reply
          .putArray("complaints")
          .addObject()
          .put("code", why.key().key())
          .put("sentence", Spoken.plain(spec).say(why));
      out(spec).println(reply.toPrettyString());
    } else {
      spec.commandLine().getErr().println("daylight: " + Spoken.plain(spec).say(why));
    }
    return code;
  }

  /** Something to be said on a line of its own, where nobody wants JSON. */
  void say(CommandSpec spec, String key, Argument... arguments) {
    if (!json) {
      out(spec).println(Spoken.plain(spec).say(key, arguments).strip());
    }
  }

  void json(CommandSpec spec, ObjectNode reply) {
    if (json) {
      out(spec).println(reply.toPrettyString());
    }
  }

  static PrintWriter out(CommandSpec spec) {
    return spec.commandLine().getOut();
  }

  static CommandSpec known(@Nullable CommandSpec spec) {
    return Objects.requireNonNull(spec, "a command has its own description before it runs");
  }
}
