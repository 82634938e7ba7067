package daylight.line.cause;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.line.book.Reported;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Which kinds of complaint are recognised in an owner's words, and by which. */
class WordListTest {
  private static final WordList WORDS = words();

  private static WordList words() {
    TreeMap<Reported.Kind, List<String>> phrases = new TreeMap<>();
    phrases.put(Reported.Kind.BACK_UP, List.of("back* up", "comes up"));
    phrases.put(Reported.Kind.SMELL, List.of("smell*"));
    phrases.put(Reported.Kind.SLOW_DRAIN, List.of("won't drain", "slow*"));
    return new WordList("en", phrases, List.of("no", "not", "never"));
  }

  private static List<Reported.Kind> kinds(String text) {
    return WORDS.in(text).stream().map(WordList.Recognised::kind).toList();
  }

  @Test
  void severalKindsAreRecognisedEachOnceAndByTheWordsAsWritten() {
    assertThat(WORDS.in("It Backs up, and it SMELLS. It smells badly."))
        .containsExactly(
            new WordList.Recognised(Reported.Kind.BACK_UP, "Backs up"),
            new WordList.Recognised(Reported.Kind.SMELL, "SMELLS"));
  }

  @Test
  void aWordThatIsDeniedIsNotTaken() {
    assertThat(kinds("There is no bad smell, and it never really backs up.")).isEmpty();
    assertThat(kinds("It does not look blocked but in the evening it smells."))
        .containsExactly(Reported.Kind.SMELL);
  }

  @Test
  void aPhraseIsWholeWordsOneAfterAnother() {
    assertThat(kinds("We go back and then up the road; the tub won’t drain."))
        .containsExactly(Reported.Kind.SLOW_DRAIN);
    assertThat(kinds("Where does it run?")).isEmpty();
    assertThat(kinds("")).isEmpty();
  }
}
