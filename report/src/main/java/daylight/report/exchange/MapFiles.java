package daylight.report.exchange;

import daylight.report.draw.Subject;
import daylight.report.geopackage.GeoPackage;
import daylight.report.map.Atlas;
import daylight.report.map.Layer;
import java.util.SortedMap;
import java.util.TreeMap;

/** The door of the room: the files for maps and drawings of other programs. */
public final class MapFiles {
  /** The folder that they lie in. */
  public static final String FOLDER = "maps/";

  private MapFiles() {}

  /** The files by name; without KML where nothing ties the site to the earth. */
  public static SortedMap<String, byte[]> of(Subject subject) {
    Atlas atlas = Atlas.of(subject);
    SortedMap<String, byte[]> files = new TreeMap<>();
    files.put(FOLDER + "site.gpkg", GeoPackage.write(atlas));
    if (atlas.earth().isPresent()) {
      files.put(FOLDER + "site.kml", Kml.write(atlas));
    }
    files.put(FOLDER + "site.dxf", Dxf.write(atlas));
    files.put(FOLDER + "site.xlsx", Workbook.write(atlas));
    files.put(FOLDER + "dictionary.html", DictionaryPage.write(atlas));
    for (Layer layer : Layer.values()) {
      files.put(FOLDER + "csv/" + layer.id() + ".csv", Csv.write(atlas, layer));
    }
    files.put(FOLDER + "csv/dictionary.csv", Csv.dictionary(atlas));
    return files;
  }
}
