package daylight.app.field;

import daylight.app.door.Door;
import daylight.app.door.Doorkeeper;
import daylight.app.web.Sent;
import daylight.app.web.Shelf;
import daylight.app.web.Types;
import daylight.archive.store.Archive;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;

/** The door of the room: the pages of an archive, to be served beside the books. */
public final class FieldPages {
  private final Archive archive;
  private final DeviceKeys keys;
  private final Doorkeeper keeper;

  private FieldPages(Archive archive, DeviceKeys keys, Doorkeeper keeper) {
    this.archive = archive;
    this.keys = keys;
    this.keeper = keeper;
  }

  /**
   * The pages of an archive.
   *
   * @throws IOException where the secret of its pages can neither be read nor be written, or where
   *     the list of its phones or its certificate authority cannot be read
   */
  public static FieldPages of(Archive archive) throws IOException {
    return of(archive, InstantSource.system());
  }

  /** The same, by another clock. */
  static FieldPages of(Archive archive, InstantSource clock) throws IOException {
    return new FieldPages(
        archive, DeviceKeys.of(archive.folder()), Doorkeeper.of(archive.folder(), clock));
  }

  /** Every maker of pages; a new one is a line here. */
  private static List<Pages> makers(Office office, Shelf shelf) {
    List<Pages> makers = new ArrayList<>();
    makers.add(new LookPages(office));
    makers.add(new SiteListPages(office, shelf));
    makers.add(new NewSitePages(office));
    makers.add(new EntryPages(office));
    makers.add(new WalkPages(office));
    makers.add(new PushPages(office));
    makers.add(new PushMedia(office));
    makers.add(new LevelPages(office));
    makers.add(new PencilPages(office));
    makers.add(new PushFilms(office));
    makers.add(new AnswerPages(office, shelf));
    List<Pages> linked = List.copyOf(makers);
    makers.add(new SitePages(office, linked));
    VisitPages visits = new VisitPages(office, linked);
    makers.add(visits);
    makers.add(new PaperPages(office, visits));
    return makers;
  }

  /** Adds all addresses of these pages. */
  public void addTo(RoutesConfig routes, Shelf shelf, Door door) {
    Office office = new Office(archive);
    Gate gate = new Gate(keys);
    keeper.at(door);
    routes.before(new Threshold(keeper, gate, office)::check);
    routes.before(gate::check);
    new PhonePages(office, keeper).addTo(routes);
    new JoinPages(office, gate, keeper).addTo(routes);
    routes.get("/field/{name}", FieldPages::asset);
    makers(office, shelf).forEach(pages -> pages.addTo(routes));
    routes.exception(
        HttpResponseException.class,
        (refused, reply) -> reply.status(refused.getStatus()).result(refused.getMessage() + "\n"));
    routes.error(HttpStatus.NOT_FOUND, reply -> missing(office, reply));
  }

  private static void asset(Context reply) {
    String name = reply.pathParam("name");
    FieldAssets.find(name)
        .ifPresentOrElse(bytes -> Sent.kept(reply, Types.of(name), bytes), () -> reply.status(404));
  }

  private static void missing(Office office, Context reply) {
    if (Gate.isOurs(reply.path())) {
      Phrases phrases = office.caller(reply).phrases();
      String title = phrases.say("missing");
      office.show(
          reply,
          Sheet.of(
              title,
              List.of(Parts.heading(title), Parts.paragraph("lead", phrases.say("missing.why")))));
    }
  }
}
