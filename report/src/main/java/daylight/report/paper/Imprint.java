package daylight.report.paper;

import daylight.report.markup.Tag;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.jspecify.annotations.Nullable;

/**
 * What a document says about itself, for people and for machines (XMP, ISO 16684-1).
 *
 * @param day of the visit that is told of; null where none is recorded, and then no date is said
 */
record Imprint(String title, String about, String language, @Nullable LocalDate day) {
  private static final String MAKER = "Daylight";
  private static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
  private static final String EXTENSION = "http://www.aiim.org/pdfa/ns/extension/";

  /** Writes it into a document, in place of what stood there. */
  void put(PDDocument document) throws IOException {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(title);
    information.setSubject(about);
    information.setCreator(MAKER);
    information.setProducer(MAKER);
    if (day != null) {
      information.setCreationDate(midnight(day));
      information.setModificationDate(midnight(day));
    }
    document.setDocumentInformation(information);
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(packet().getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(metadata);
  }

  private static Calendar midnight(LocalDate day) {
    Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC));
    calendar.setTimeInMillis(day.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
    return calendar;
  }

  private String packet() {
    return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
        + Tag.of("x:xmpmeta")
            .with("xmlns:x", "adobe:ns:meta/")
            .add(Tag.of("rdf:RDF").with("xmlns:rdf", RDF).add(description(), schema()))
            .write()
        + "\n<?xpacket end=\"r\"?>";
  }

  private Tag description() {
    Tag said =
        about("dc", "http://purl.org/dc/elements/1.1/")
            .with("xmlns:pdf", "http://ns.adobe.com/pdf/1.3/")
            .with("xmlns:xmp", "http://ns.adobe.com/xap/1.0/")
            .with("xmlns:pdfaid", "http://www.aiim.org/pdfa/ns/id/")
            .with("xmlns:pdfuaid", "http://www.aiim.org/pdfua/ns/id/")
            .add(
                Tag.of("pdfaid:part", "2"),
                Tag.of("pdfaid:conformance", "A"),
                Tag.of("pdfuaid:part", "1"),
                Tag.of("dc:format", "application/pdf"),
                Tag.of("dc:title").add(inDefault(title)),
                Tag.of("dc:description").add(inDefault(about)),
                Tag.of("dc:language").add(Tag.of("rdf:Bag").add(Tag.of("rdf:li", language))),
                Tag.of("pdf:Producer", MAKER),
                Tag.of("xmp:CreatorTool", MAKER));
    if (day != null) {
      String moment = day + "T00:00:00Z";
      said.add(Tag.of("xmp:CreateDate", moment), Tag.of("xmp:ModifyDate", moment));
    }
    return said;
  }

  /** Tells a reader of PDF/A what the one name means that PDF/A itself does not know. */
  private static Tag schema() {
    Tag property =
        item()
            .add(Tag.of("pdfaProperty:name", "part"))
            .add(Tag.of("pdfaProperty:valueType", "Integer"))
            .add(Tag.of("pdfaProperty:category", "internal"))
            .add(Tag.of("pdfaProperty:description", "Part of ISO 14289 that is conformed to"));
    Tag schema =
        item()
            .add(Tag.of("pdfaSchema:schema", "PDF/UA identification"))
            .add(Tag.of("pdfaSchema:namespaceURI", "http://www.aiim.org/pdfua/ns/id/"))
            .add(Tag.of("pdfaSchema:prefix", "pdfuaid"))
            .add(Tag.of("pdfaSchema:property").add(Tag.of("rdf:Seq").add(property)));
    return about("pdfaExtension", EXTENSION)
        .with("xmlns:pdfaSchema", "http://www.aiim.org/pdfa/ns/schema#")
        .with("xmlns:pdfaProperty", "http://www.aiim.org/pdfa/ns/property#")
        .add(Tag.of("pdfaExtension:schemas").add(Tag.of("rdf:Bag").add(schema)));
  }

  private static Tag about(String prefix, String namespace) {
    return Tag.of("rdf:Description").with("rdf:about", "").with("xmlns:" + prefix, namespace);
  }

  private static Tag item() {
    return Tag.of("rdf:li").with("rdf:parseType", "Resource");
  }

  private static Tag inDefault(String text) {
    return Tag.of("rdf:Alt").add(Tag.of("rdf:li", text).with("xml:lang", "x-default"));
  }
}
