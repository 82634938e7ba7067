package daylight.report.view;

/**
 * Something at a place of the line that has a name.
 *
 * @param id of the element that tells more of it; empty where there is none
 * @param says what it is
 * @param picture the id of the picture of it on the page; empty where there is none
 * @param from the first of the samples it goes along
 * @param to the last of them
 */
record Thing(String id, String says, String picture, int from, int to) {}
