package yardloom.program.words;

import java.util.List;

/**
 * A word of the language itself, which no plugin offers.
 *
 * @param signature how it is written
 * @param help what it does
 * @param example a line that runs
 */
public record BuiltIn(String name, String signature, String help, String example) {
  /** All of them, sorted by name. */
  public static final List<BuiltIn> ALL =
      List.of(
          new BuiltIn(
              "fileText",
              "fileText(name)",
              "The text of a data file beside the plan, such as a price book; it cannot leave the"
                  + " plan's folder.",
              "priceBook fileText('prices.csv'), name: 'prices.csv'"),
          new BuiltIn(
              "include",
              "include(name, parameter: …)",
              "Reads another plan script of the same folder or below, such as a regional file; its"
                  + " statements stand where the line stands.",
              "include 'regional/tallgrass-flats'"),
          new BuiltIn(
              "param",
              "param(name, value, help)",
              "A value that the command line may change with --set, or an including plan; the value"
                  + " written here is taken otherwise.",
              "def bedWidth = param('bedWidth', 4.ft, 'width of the beds')"));
}
