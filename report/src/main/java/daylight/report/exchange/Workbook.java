package daylight.report.exchange;

import daylight.report.map.Atlas;
import daylight.report.map.Dictionary;
import daylight.report.map.Field;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import daylight.report.map.Type;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/**
 * An atlas as a workbook (XLSX): a sheet for each layer, the notice first, the dictionary last.
 * Texts are texts, whatever they begin with. The library dates what it writes by its clock, so the
 * parts are put together again with the day of the visit.
 */
final class Workbook {
  /** What a cell holds at most; what is longer ends with a sign that something is missing. */
  private static final int LONGEST = 32_767;

  /** The least that the format can say; also of parts of a book without a day. */
  private static final LocalDate NO_DAY = LocalDate.of(1980, 1, 1);

  private static final List<Integer> DICTIONARY_WIDTHS = List.of(14, 24, 14, 16, 110);

  private final Atlas atlas;

  private Workbook(Atlas atlas) {
    this.atlas = atlas;
  }

  static byte[] write(Atlas atlas) {
    try {
      return new Workbook(atlas).all();
    } catch (IOException e) {
      throw new UncheckedIOException("a workbook in memory can always be written", e);
    }
  }

  private byte[] all() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (org.dhatim.fastexcel.Workbook book =
        new org.dhatim.fastexcel.Workbook(out, "Daylight", "1.0")) {
      for (Layer layer : Layer.values()) {
        layer(book.newWorksheet(layer.id()), layer);
      }
      dictionary(book.newWorksheet("dictionary"));
    }
    return dated(out.toByteArray());
  }

  private void layer(Worksheet sheet, Layer layer) throws IOException {
    List<Field> fields = layer.fields();
    heads(sheet, fields.stream().map(Field::name).toList());
    int line = 1;
    for (Row row : atlas.of(layer)) {
      for (int column = 0; column < fields.size(); column++) {
        cell(sheet, line, column, row.get(fields.get(column)));
      }
      line++;
    }
    for (int column = 0; column < fields.size(); column++) {
      sheet.width(column, width(layer, fields.get(column)));
    }
    sheet.finish();
  }

  private static double width(Layer layer, Field field) {
    boolean telling =
        List.of("says", "sentence", "card", "ticket", "missing", "caution", "stop")
            .contains(field.name());
    if (layer == Layer.NOTICE && telling) {
      return 110;
    }
    return telling ? 48 : field.type() == Type.TEXT ? 18 : 13;
  }

  private static void heads(Worksheet sheet, List<String> names) {
    for (int column = 0; column < names.size(); column++) {
      sheet.value(0, column, names.get(column));
      sheet.style(0, column).bold().fillColor("E6EFE9").set();
    }
    sheet.freezePane(0, 1);
  }

  private static void cell(Worksheet sheet, int line, int column, @Nullable Object value) {
    switch (value) {
      case null -> {}
      case String text -> {
        sheet.value(line, column, told(text));
        sheet.style(line, column).verticalAlignment("top").set();
      }
      case Boolean yes -> sheet.value(line, column, yes);
      case Number number -> sheet.value(line, column, number);
      case LocalDate day -> {
        sheet.value(line, column, day);
        sheet.style(line, column).format("yyyy-mm-dd").set();
      }
      default -> throw new IllegalArgumentException("no field holds " + value.getClass());
    }
  }

  /** With what would be read as a character by its number kept as it is (ST_Xstring). */
  private static String told(String text) {
    String kept = text.replaceAll("_(?=x[0-9A-Fa-f]{4}_)", "_x005F_");
    return kept.length() <= LONGEST ? kept : kept.substring(0, LONGEST - 1) + "…";
  }

  private void dictionary(Worksheet sheet) throws IOException {
    heads(sheet, Dictionary.HEADS);
    int line = 1;
    for (Dictionary row : Dictionary.of(atlas)) {
      List<String> cells = row.cells();
      for (int column = 0; column < cells.size(); column++) {
        cell(sheet, line, column, cells.get(column).isEmpty() ? null : cells.get(column));
      }
      line++;
    }
    for (int column = 0; column < DICTIONARY_WIDTHS.size(); column++) {
      sheet.width(column, DICTIONARY_WIDTHS.get(column));
    }
    sheet.finish();
  }

  private byte[] dated(byte[] book) throws IOException {
    LocalDate day = atlas.day().filter(NO_DAY::isBefore).orElse(NO_DAY);
    LocalDateTime time = day.atStartOfDay();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : Parts.of(book).entrySet()) {
        ZipEntry again = new ZipEntry(part.getKey());
        again.setTimeLocal(time);
        zip.putNextEntry(again);
        boolean dated = part.getKey().equals("docProps/core.xml");
        zip.write(dated ? made(part.getValue(), day) : part.getValue());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private static byte[] made(byte[] properties, LocalDate day) {
    return new String(properties, StandardCharsets.UTF_8)
        .replaceAll(
            "(<dcterms:created[^>]*>)[^<]*(</dcterms:created>)", "$1" + day + "T00:00:00Z$2")
        .getBytes(StandardCharsets.UTF_8);
  }
}
