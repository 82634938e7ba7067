package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What the command line said and left with.
 *
 * @param code its exit code
 * @param out standard output
 * @param err standard error
 */
record Said(int code, String out, String err) {
  /** Runs the command that the words name, in this process. */
  static Said by(Object... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] texts = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      texts[i] = words[i].toString();
    }
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), texts);
    Said said = new Said(code, out.toString(), err.toString());
    assertThat(said.out + said.err).doesNotContain("\tat ");
    return said;
  }

  /** The one JSON object that was printed. */
  JsonNode json() {
    try {
      return new JsonMapper().readTree(out);
    } catch (JsonProcessingException e) {
      throw new AssertionError("not JSON: " + out, e);
    }
  }
}
