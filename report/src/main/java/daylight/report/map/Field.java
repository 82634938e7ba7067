package daylight.report.map;

/**
 * One typed field.
 *
 * @param name in small letters, the same in every layer and format
 * @param unit of a number
 */
public record Field(String name, Type type, FieldUnit unit) {
  static Field text(String name) {
    return new Field(name, Type.TEXT, FieldUnit.NONE);
  }

  static Field metres(String name) {
    return new Field(name, Type.NUMBER, FieldUnit.METRE);
  }

  static Field degrees(String name) {
    return new Field(name, Type.NUMBER, FieldUnit.DEGREE);
  }

  static Field number(String name, FieldUnit unit) {
    return new Field(name, Type.NUMBER, unit);
  }

  static Field whole(String name) {
    return new Field(name, Type.WHOLE, FieldUnit.NONE);
  }

  static Field yesNo(String name) {
    return new Field(name, Type.YES_NO, FieldUnit.NONE);
  }

  static Field day(String name) {
    return new Field(name, Type.DAY, FieldUnit.NONE);
  }
}
