package daylight.app.cli;

import daylight.app.Job;
import daylight.app.field.FieldPages;
import daylight.app.web.Opened;
import daylight.app.web.Workspace;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveOpening;
import daylight.line.measure.Statement;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Books to look at in a browser. */
@Command(
    name = "open",
    mixinStandardHelpOptions = true,
    description = {
      "Look at field books in a browser of this machine: answers, drawings, pictures, recordings and",
      "the files to hand over, each as the book is on disk when the page is loaded. While the counter",
      "of a recording is read for the first time, the page says how far that is; it can be stopped.",
      "",
      "Without a BOOK, or with --archive, the sites of the archive are shown, and sites, visits and what",
      "is measured are written down there. An archive is begun where there is none.",
      "",
      "Prints the address and goes on until Ctrl-C. No book that is named, recording or result is",
      "altered, and no other machine can look in, unless you open the door for phones on the page",
      "Phones of the archive. Of recordings that browsers cannot play, copies are made in the folder",
      "BOOK-proxies beside the book, which may be thrown away."
    })
final class Open implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65535;

  @Parameters(
      arity = "0..*",
      paramLabel = "BOOK",
      description = "Field books, or folders that hold field-book.yaml.")
  private List<Path> books = List.of();

  @Option(
      names = "--archive",
      paramLabel = "DIR",
      description = {
        "Show the archive in this folder, beside the books that are named; without a BOOK the default",
        "is DAYLIGHT_ARCHIVE, else daylight-archive in your home folder."
      })
  private @Nullable Path archive;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Port to listen on; default: one that is free.")
  private int port;

  @Option(
      names = "--browser",
      negatable = true,
      description = "Open the address in the browser of the desktop; default: only print it.")
  private boolean browser;

  @Option(
      names = "--proxies",
      negatable = true,
      defaultValue = "true",
      fallbackValue = "true",
      description = "Make those copies, or with --no-proxies none.")
  private boolean proxies = true;

  @Mixin private Manner manner = new Manner();

  @Spec private @Nullable CommandSpec spec;

  @Override
  public Integer call() throws InterruptedException {
    Console console = Console.of(spec, false);
    if (port < 0 || port > HIGHEST_PORT) {
      return console.misunderstood("--port: " + port + " is not from 0 to " + HIGHEST_PORT);
    }
    String wrong = manner.wrong();
    if (wrong != null) {
      return console.misunderstood(wrong);
    }
    Job.Settings settings = manner.settings(null).in(Spoken.chosen(spec));
    List<Opened> opened = books.stream().map(book -> new Opened(book, settings)).toList();
    if (archive == null && !books.isEmpty()) {
      return serve(console, opened, port, browser, proxies);
    }
    return switch (Archive.open(ArchiveChoice.folder(archive))) {
      case ArchiveOpening.Opened(Archive kept) -> serve(console, opened, kept);
      case ArchiveOpening.Refused(Statement why) -> {
        console.notStarted(Spoken.plain(spec).say(why));
        yield ExitCode.BOOK_REFUSED;
      }
    };
  }

  private int serve(Console console, List<Opened> opened, Archive kept)
      throws InterruptedException {
    try {
      return serve(console, opened, port, browser, proxies, FieldPages.of(kept)::addTo);
    } catch (IOException e) {
      return console.notStarted(kept.folder() + ": " + e.getMessage());
    } finally {
      kept.close();
    }
  }

  /**
   * Serves books until the process is ended.
   *
   * @param port to listen on; 0 takes one that is free
   * @param browser whether the desktop is asked for its browser
   * @param proxies whether copies are made of recordings that browsers cannot play
   */
  static int serve(Console console, List<Opened> opened, int port, boolean browser, boolean proxies)
      throws InterruptedException {
    return serve(console, opened, port, browser, proxies, null);
  }

  private static int serve(
      Console console,
      List<Opened> opened,
      int port,
      boolean browser,
      boolean proxies,
      Workspace.@Nullable Beside sites)
      throws InterruptedException {
    try (Workspace.Running running = Workspace.serve(opened, port, proxies, sites)) {
      Runtime.getRuntime().addShutdownHook(Thread.ofPlatform().unstarted(running::close));
      console.serving(running.address());
      if (browser) {
        show(running.address().toString());
      }
      Thread.currentThread().join();
      return ExitCode.DONE;
    } catch (JavalinBindException taken) {
      return console.notStarted("port " + port + " is taken; try another, or none");
    }
  }

  /**
   * Asks the desktop for its browser; where there is none, the address stands there to be taken.
   */
  private static void show(String address) {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    List<String> command =
        system.contains("win")
            ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
            : List.of(system.contains("mac") ? "open" : "xdg-open", address);
    try {
      new ProcessBuilder(command)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException none) {
      return;
    }
  }
}
