package daylight.app.web;

import daylight.line.measure.Argument;
import daylight.line.measure.Dimension;
import daylight.report.words.Words;

/** Says how far a copy for the browser is. */
final class ProxyWords {
  private ProxyWords() {}

  static String told(Proxies.State state, Words words) {
    return switch (state) {
      case Proxies.State.Ready _ -> words.word("web.proxy.ready");
      case Proxies.State.Making(double share) when share > 0 ->
          words.say("web.proxy.making", new Argument.Quantity(Dimension.SHARE, share));
      case Proxies.State.Making _ -> words.word("web.proxy.waiting");
      case Proxies.State.Failed(String why) ->
          words.say("web.proxy.failed", new Argument.Text(why)).strip();
    };
  }
}
