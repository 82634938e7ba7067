package daylight.line.proving;

import daylight.line.book.Test;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A hold test of the book, read.
 *
 * @param test as it was written
 * @param reaches the labels of the reaches it speaks for; empty when not known
 * @param hold what it comes to in figures; null where too little is known
 * @param leak what it lost; null where too little is known
 * @param against each criterion that could be applied, in the order of the limits
 * @param lacks what must be known before more can be said
 */
public record HeldTest(
    Test test,
    List<String> reaches,
    @Nullable Hold hold,
    @Nullable Leak leak,
    List<HoldVerdict> against,
    List<Lack> lacks) {
  public HeldTest {
    reaches = List.copyOf(reaches);
    against = List.copyOf(against);
    lacks = List.copyOf(lacks);
  }

  /** The criterion that decides: the first of those that go by how much may be lost. */
  public Optional<HoldVerdict> deciding() {
    return against.stream().filter(one -> one.allowed() != null).findFirst();
  }
}
