package daylight.app.web;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.line.measure.Shown;
import daylight.report.words.Language;
import daylight.report.words.Words;

/** Says how far a copy for the browser is. */
final class ProxyWords {
  private static final Words WORDS = Words.of(Language.EN, Shown.METRES);

  private ProxyWords() {}

  static String told(Proxies.State state) {
    return switch (state) {
      case Proxies.State.Ready _ -> WORDS.word("web.proxy.ready");
      case Proxies.State.Making(double share) when share > 0 ->
          WORDS.say("web.proxy.making", new Argument.Quantity(Dimension.SHARE, share));
      case Proxies.State.Making _ -> WORDS.word("web.proxy.waiting");
      case Proxies.State.Failed(String why) ->
          WORDS.say("web.proxy.failed", new Argument.Text(why)).strip();
    };
  }
}
