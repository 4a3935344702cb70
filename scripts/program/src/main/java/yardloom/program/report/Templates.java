package yardloom.program.report;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The page's templates. They hold no logic, and escape every value that is not marked as markup of
 * our own with three braces; a name that the records lack is an error, not a blank.
 */
final class Templates {
  private static final Template PAGE =
      Mustache.compiler()
          .escapeHTML(true)
          .strictSections(true)
          .emptyStringIsFalse(true)
          .withLoader(name -> new StringReader(text(name + ".mustache")))
          .compile(text("report.mustache"));

  private Templates() {}

  static String page(ReportPage page) {
    return PAGE.execute(page);
  }

  /** A file that lies beside the templates. */
  static String text(String name) {
    try (InputStream in = Templates.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name + " inside the program cannot be read", e);
    }
  }
}
