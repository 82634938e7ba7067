package daylight.archive.store;

import daylight.line.measure.Complaint;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/**
 * What becomes of entries that come together. They are tried all at once, and the book is read as
 * it would be then; only where the reader refuses something are those left out in which it stands,
 * and the rest tried again.
 */
final class Intake {
  private final Handle handle;
  private final UUID book;
  private final List<Entered> entries;
  private final Map<UUID, Entries.Last> before;
  private final List<OwnKeys> keys;

  /** The book before. */
  private final Look was;

  /** Those that cannot be entered, by where they stand in the list, and why. */
  private final Map<Integer, List<Complaint>> out = new TreeMap<>();

  Intake(Handle handle, UUID book, List<Entered> entries, Looks looks) {
    this.handle = handle;
    this.book = book;
    this.entries = entries;
    before =
        Entries.last(handle, book).stream()
            .collect(Collectors.toMap(last -> last.leaf().entry(), last -> last));
    List<Leaf> leaves = before.values().stream().map(Entries.Last::leaf).toList();
    was = looks.of(book, Entries.newest(handle, book), () -> Look.at(leaves));
    entries.stream()
        .map(Entered::entry)
        .filter(entry -> !before.containsKey(entry))
        .forEach(
            entry ->
                Entries.revision(handle, book, entry, null)
                    .ifPresent(last -> before.put(entry, last)));
    keys =
        entries.stream()
            .map(one -> new OwnKeys(one.entry(), Objects.requireNonNullElse(one.content(), "{}")))
            .toList();
    for (int i = 0; i < keys.size(); i++) {
      if (!keys.get(i).complaints().isEmpty()) {
        out.put(i, keys.get(i).complaints());
      }
    }
  }

  /**
   * What is to be written, with the outcome of each.
   *
   * @param look at the book as it is then
   */
  record Settled(Trial trial, Look look) {}

  Settled settle() {
    while (true) {
      Trial trial = trial(out);
      if (trial.steps().isEmpty()) {
        return new Settled(trial, was);
      }
      Look look = Look.at(trial.leaves());
      List<Look.Seen> fresh = look.beyond(was);
      if (fresh.isEmpty()) {
        return new Settled(trial, look);
      }
      if (!blame(trial, fresh)) {
        List<Integer> all = trial.steps().stream().map(Trial.Step::index).toList();
        sift(all, new ArrayList<>(), all);
      }
    }
  }

  private Trial trial(Map<Integer, List<Complaint>> without) {
    Trial trial = new Trial(handle, book, before);
    for (int i = 0; i < entries.size(); i++) {
      List<Complaint> wrong = without.get(i);
      if (wrong == null) {
        trial.put(i, entries.get(i), keys.get(i));
      } else {
        trial.refuse(wrong);
      }
    }
    Map<Integer, List<Complaint>> leaving = trial.leavingOthers();
    if (leaving.isEmpty()) {
      return trial;
    }
    leaving.putAll(without);
    return trial(leaving);
  }

  /** Leaves out the entries in which something refused stands; false where that is none. */
  private boolean blame(Trial trial, List<Look.Seen> fresh) {
    Map<UUID, Integer> steps = new HashMap<>();
    trial.steps().forEach(step -> steps.put(step.leaf().entry(), step.index()));
    boolean any = false;
    for (Look.Seen one : fresh) {
      Integer index = one.owner() == null ? null : steps.get(one.owner());
      if (index != null) {
        out.computeIfAbsent(index, i -> new ArrayList<>()).add(one.complaint());
        any = true;
      }
    }
    return any;
  }

  /**
   * Finds by halves those that make something wrong elsewhere, as where what others name is
   * withdrawn.
   *
   * @param good taken already
   * @param all that could be
   */
  private void sift(List<Integer> some, List<Integer> good, List<Integer> all) {
    Map<Integer, List<Complaint>> without = new HashMap<>(out);
    all.stream()
        .filter(i -> !some.contains(i) && !good.contains(i))
        .forEach(i -> without.put(i, List.of()));
    List<Look.Seen> fresh = Look.at(trial(without).leaves()).beyond(was);
    if (fresh.isEmpty()) {
      good.addAll(some);
    } else if (some.size() == 1) {
      out.put(some.getFirst(), fresh.stream().map(Look.Seen::complaint).toList());
    } else {
      int half = some.size() / 2;
      sift(some.subList(0, half), good, all);
      sift(some.subList(half, some.size()), good, all);
    }
  }
}
