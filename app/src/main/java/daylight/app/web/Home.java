package daylight.app.web;

/**
 * The page that a book of an archive was opened from.
 *
 * @param address path of that page
 * @param name what the site is called
 */
public record Home(String address, String name) {}
