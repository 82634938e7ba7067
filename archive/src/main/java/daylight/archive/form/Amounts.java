package daylight.archive.form;

import daylight.line.measure.Argument;
import daylight.line.measure.Parsed;
import daylight.line.measure.Quantities;
import daylight.line.measure.Reading;
import daylight.line.measure.Refusal;
import daylight.line.measure.Unit;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads one quantity, as a text or with its standard uncertainty beside it. */
final class Amounts {
  private static final String IS = "is";
  private static final String SD = "sd";

  private final Shape.Amount amount;
  private final Fields fields;
  private final String key;

  Amounts(Shape.Amount amount, Fields fields, String key) {
    this.amount = amount;
    this.fields = fields;
    this.key = key;
  }

  /** The keys {@code is} and {@code sd}, both of the shape of the quantity itself. */
  static Section withDoubt(Shape.Amount amount) {
    return Section.named("amount").with(IS, amount).with(SD, amount);
  }

  @Nullable Reading read(Tree tree) {
    return switch (tree) {
      case Tree.Text text -> parse(fields, key, text.text());
      case Tree.Keys keys -> doubted(keys);
      case Tree.Items items -> {
        fields.complain(FormTrouble.WRONG_SHAPE, key, new Argument.Term("form.shape.quantity"));
        yield null;
      }
    };
  }

  private @Nullable Reading doubted(Tree.Keys keys) {
    String path = fields.place(key).path();
    Fields parts = new Fields(withDoubt(amount), keys, path, fields.desk());
    Reading value = part(parts, IS);
    Reading sd = part(parts, SD);
    if (sd != null && !(sd.value() > 0)) {
      parts.complain(FormTrouble.NOT_POSITIVE, SD, new Argument.Text(sd.written()));
    }
    if (value == null || sd == null || !parts.sound()) {
      fields.spoil();
      return null;
    }
    return value.withSd(sd.value());
  }

  private @Nullable Reading part(Fields parts, String name) {
    if (!parts.has(name)) {
      parts.complain(FormTrouble.MISSING, name, new Argument.Text(name));
      return null;
    }
    String text = parts.text(name);
    return text == null ? null : parse(parts, name, text);
  }

  private @Nullable Reading parse(Fields where, String name, String text) {
    Unit bare = amount.bare().in(where.desk().units());
    return switch (Quantities.parse(amount.dimension(), text, bare)) {
      case Parsed.Value<Reading>(Reading value) -> value;
      case Parsed.Refused<Reading>(Refusal reason, List<String> suggestions) -> {
        refuse(where, name, text, amount.dimension().name(), reason, suggestions);
        yield null;
      }
    };
  }

  /** Complains of a text that is no quantity. */
  static void refuse(
      Fields where,
      String name,
      String text,
      String dimension,
      Refusal reason,
      List<String> suggestions) {
    where.complain(
        FormTrouble.NOT_A_QUANTITY,
        name,
        new Argument.Text(text),
        new Argument.Term("dimension." + dimension.toLowerCase(Locale.ROOT).replace('_', '-')),
        new Argument.Reason(reason),
        new Argument.Choices(suggestions));
  }
}
