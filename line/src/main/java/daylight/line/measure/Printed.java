package daylight.line.measure;

/**
 * A value with its uncertainty, printed.
 *
 * @param value the value with its unit, such as {@code 12' 7"}
 * @param plusMinus the half-width of its 95 % interval with sign and unit, such as {@code ± 3"}
 */
public record Printed(String value, String plusMinus) {}
