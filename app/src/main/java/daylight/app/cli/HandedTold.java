package daylight.app.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import daylight.app.HandedFootage.Anew;
import daylight.app.HandedFootage.Told;
import daylight.footage.Remark;
import daylight.line.measure.Argument;
import daylight.report.Handout;
import daylight.report.words.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Says what became of recordings that were to be handed over. */
record HandedTold(Words words) {
  /** The reply to another program, with the recordings where there were any. */
  static String reply(Handout handout, Path folder, Set<String> files, List<Told> handed) {
    List<String> all = new ArrayList<>(files);
    handed.forEach(
        one -> {
          if (one instanceof Told.Copied copied) {
            all.addAll(copied.files());
          }
        });
    ObjectNode reply = JsonReply.answered(handout, folder, all.stream().sorted().toList());
    if (!handed.isEmpty()) {
      HandedTold told = new HandedTold(Words.of(handout.language(), handout.shown()));
      ArrayNode into = reply.putArray("footage");
      handed.forEach(one -> told.add(into.addObject(), one));
    }
    return reply.toPrettyString();
  }

  private void add(ObjectNode json, Told one) {
    json.put("recording", one.recording());
    switch (one) {
      case Told.Copied copied -> {
        json.put("outcome", "copied").put("from", copied.from());
        json.put("anew", copied.anew() != null).put("soundLeftOut", copied.unfit());
        ArrayNode files = json.putArray("files");
        copied.files().forEach(files::add);
      }
      case Told.LeftOut _ -> json.put("outcome", "left-out");
      case Told.NoEntry _ -> json.put("outcome", "no-entry");
      case Told.Missing _ -> json.put("outcome", "missing");
    }
    json.put("sentence", say(one));
  }

  String say(Told one) {
    Argument name = Given.text(one.recording());
    return switch (one) {
      case Told.Copied copied -> copied(copied);
      case Told.LeftOut(var _, Remark why) -> words.say("handed.left", name, Given.text(said(why)));
      case Told.NoEntry _ -> words.say("handed.no_entry", name);
      case Told.Missing _ -> words.say("handed.missing", name);
    };
  }

  private String copied(Told.Copied copied) {
    Argument name = Given.text(copied.recording());
    Argument file = Given.text(copied.files().getFirst());
    Argument from = Given.text(VideoConsole.clock(copied.from()));
    List<String> said = new ArrayList<>();
    said.add(
        switch (copied.anew()) {
          case null -> words.say("handed.as_it_was", file, name, from);
          case Anew.NoCleanCut() -> words.say("handed.anew_cut", file, name, from);
          case Anew.NotForMp4(Remark why) ->
              words.say("handed.anew_mp4", file, name, from, why.arguments().getFirst());
        });
    if (copied.unfit() != null) {
      said.add(words.say("cli.proxy.silent", Given.text(copied.unfit()), Given.text("mp4")));
    }
    return String.join(" ", said);
  }

  private String said(Remark why) {
    return words.say(why.trouble().key(), why.arguments().toArray(Argument[]::new));
  }
}
