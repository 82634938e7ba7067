package daylight.report.shots;

/**
 * One picture from the footage, of one finding.
 *
 * @param file its name within the results, such as {@code stills/F2.jpg}
 * @param finding the label of what it shows
 * @param media the label of the recording it is from
 * @param seconds from the first frame of the recording
 */
public record Still(String file, String finding, String media, double seconds, Picture picture) {}
