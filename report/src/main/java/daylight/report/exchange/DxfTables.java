package daylight.report.exchange;

import java.util.List;
import java.util.SortedMap;

/** The tables before a drawing: line types, layers, a way of lettering, whose data there are. */
record DxfTables(Groups groups) {
  private static final String CONTINUOUS = "CONTINUOUS";
  private static final String DASHED = "DASHED";

  /** Metres of stroke and, negative, of gap. */
  private static final List<Double> DASHES = List.of(0.5, -0.25);

  /** Layers whose lines are dashed: what is no pipe that anybody saw. */
  private static boolean dashed(String layer) {
    return layer.startsWith("SERVICE") || layer.equals("BAND") || layer.equals("TIE");
  }

  void write(SortedMap<String, Paint> layers) {
    groups.put(0, "SECTION").put(2, "TABLES");
    lineTypes();
    groups.put(0, "TABLE").put(2, "LAYER").put(70, layers.size() + 1);
    layer("0", 7);
    layers.forEach((name, paint) -> layer(name, paint.number()));
    groups.put(0, "ENDTAB");
    groups.put(0, "TABLE").put(2, "STYLE").put(70, 1);
    groups.put(0, "STYLE").put(2, "STANDARD").put(70, 0).size(40, 0).size(41, 1).size(50, 0);
    groups.put(71, 0).size(42, 0.2).put(3, "txt").put(4, "");
    groups.put(0, "ENDTAB");
    groups.put(0, "TABLE").put(2, "APPID").put(70, 2);
    groups.put(0, "APPID").put(2, "ACAD").put(70, 0);
    groups.put(0, "APPID").put(2, Groups.APPLICATION).put(70, 0);
    groups.put(0, "ENDTAB");
    groups.put(0, "ENDSEC");
  }

  private void lineTypes() {
    groups.put(0, "TABLE").put(2, "LTYPE").put(70, 2);
    lineType(CONTINUOUS, "Solid line", List.of());
    lineType(DASHED, "__ __ __ __", DASHES);
    groups.put(0, "ENDTAB");
  }

  private void lineType(String name, String looks, List<Double> dashes) {
    double all = dashes.stream().mapToDouble(Math::abs).sum();
    groups.put(0, "LTYPE").put(2, name).put(70, 0).put(3, looks).put(72, 65);
    groups.put(73, dashes.size()).size(40, all / groups.unit());
    dashes.forEach(dash -> groups.size(49, dash / groups.unit()));
  }

  private void layer(String name, int colour) {
    groups.put(0, "LAYER").put(2, name).put(70, 0).put(62, colour);
    groups.put(6, dashed(name) ? DASHED : CONTINUOUS);
  }
}
