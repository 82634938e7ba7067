package daylight.app.field;

import daylight.app.door.Address;
import daylight.app.door.Doorkeeper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where whoever sits at the machine opens the door for phones, and sees who joined. */
final class PhonePages implements Pages {
  private final Office office;
  private final Doorkeeper keeper;

  PhonePages(Office office, Doorkeeper keeper) {
    this.office = office;
    this.keeper = keeper;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/phones", reply -> show(reply, null));
    routes.post("/phones/open", this::open);
    routes.post("/phones/shut", reply -> done(reply, keeper::shut, "phones.not_shut"));
    routes.post("/phones/code", this::code);
    routes.post("/phones/secure", reply -> done(reply, keeper::makeAuthority, "phones.not_made"));
    routes.post(
        "/phones/revoke",
        reply -> {
          String number = Objects.requireNonNullElse(reply.formParam("number"), "");
          done(reply, () -> keeper.revoke(number), "phones.not_revoked");
        });
  }

  /** What may fail on the disk or at the network. */
  @FunctionalInterface
  private interface Order {
    void carryOut() throws IOException;
  }

  private void done(Context reply, Order order, String otherwise) {
    try {
      order.carryOut();
      reply.redirect("/phones", HttpStatus.SEE_OTHER);
    } catch (IOException e) {
      refuse(reply, office.caller(reply).say(otherwise, String.valueOf(e.getMessage())));
    }
  }

  private void open(Context reply) {
    Caller caller = office.caller(reply);
    String wanted = Objects.requireNonNullElse(reply.formParam("address"), "");
    boolean secure = "secure".equals(reply.formParam("how"));
    Optional<Address> address = Address.find(wanted);
    if (address.isEmpty()) {
      refuse(reply, caller.say("phones.no_address", wanted));
    } else if (secure && keeper.authority().isEmpty()) {
      refuse(reply, caller.say("phones.no_authority"));
    } else if (secure && !address.get().isPrivate()) {
      refuse(reply, caller.say("phones.not_private", wanted));
    } else {
      done(reply, () -> keeper.open(address.get(), secure), "phones.not_opened");
    }
  }

  private void code(Context reply) {
    if (keeper.code().isPresent()) {
      reply.redirect("/phones#code", HttpStatus.SEE_OTHER);
    } else {
      refuse(reply, office.caller(reply).say("phones.code.shut"));
    }
  }

  private void refuse(Context reply, String why) {
    reply.status(HttpStatus.CONFLICT);
    show(reply, why);
  }

  private void show(Context reply, @Nullable String wrong) {
    Caller caller = office.caller(reply);
    office.show(
        reply,
        Sheet.of(caller.say("phones"), new PhoneSheet(caller, keeper).write(wrong))
            .with("phones.js"));
  }
}
