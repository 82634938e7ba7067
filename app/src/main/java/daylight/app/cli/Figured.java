package daylight.app.cli;

import daylight.line.measure.Argument;
import daylight.line.measure.Statement;
import daylight.report.words.DigWords;
import java.util.ArrayList;
import java.util.List;

/** What a calculation found: figures by name, and what is to be said about them. */
final class Figured {
  private final String figure;
  private final List<Value> values = new ArrayList<>();
  private final List<Told> told = new ArrayList<>();
  private boolean open;

  /**
   * @param figure the name of the command, such as {@code nulls}
   */
  Figured(String figure) {
    this.figure = figure;
  }

  /**
   * One figure. Its sentence has the key {@code figure.<command>.<name>}, with dashes as they are.
   *
   * @param arguments what the sentence needs; the first is the figure itself
   */
  record Value(String name, String key, List<Argument> arguments) {
    Value {
      arguments = List.copyOf(arguments);
    }
  }

  /** Something to be said: the key of its sentence and what the sentence needs. */
  record Told(String key, List<Argument> arguments) {
    Told {
      arguments = List.copyOf(arguments);
    }
  }

  /** Adds a figure. */
  Figured with(String name, Argument value, Argument... more) {
    List<Argument> arguments = new ArrayList<>(List.of(value));
    arguments.addAll(List.of(more));
    values.add(new Value(name, "figure." + figure + "." + name, arguments));
    return this;
  }

  /** Adds a sentence of a key of this calculation's own, after its figures. */
  Figured saying(String name, Argument... arguments) {
    told.add(new Told("figure." + figure + "." + name, List.of(arguments)));
    return this;
  }

  /** Adds what a room has to say, such as a trap that is suspected. */
  Figured saying(Statement statement) {
    told.add(new Told(statement.key().key(), statement.arguments()));
    return this;
  }

  /** Adds a row about a dig: a figure where it has a name, else a sentence. */
  void row(DigWords.Row row) {
    if (row.name().isEmpty()) {
      told.add(new Told(row.key(), row.arguments()));
    } else {
      values.add(new Value(row.name(), row.key(), row.arguments()));
    }
    open |= row.doubt();
  }

  /** Notes that what was measured contradicts itself: the command leaves with that exit code. */
  Figured contradicted() {
    open = true;
    return this;
  }

  String figure() {
    return figure;
  }

  List<Value> values() {
    return List.copyOf(values);
  }

  List<Told> told() {
    return List.copyOf(told);
  }

  boolean open() {
    return open;
  }
}
