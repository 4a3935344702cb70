package yardloom.site.firm;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;
import yardloom.kernel.draw.Contrast;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Theme;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/**
 * The words for how a firm's drawings look. A colour is taken only where texts and lines stay
 * legible on it; hatches, dashes and what warns stay as they are.
 *
 * <p>References: [1] Web Content Accessibility Guidelines 2.2, W3C, 2023, 1.4.3 and 1.4.11: texts
 * have a contrast of at least 4.5, lines that are needed to understand a figure 3. [2] ISO 128-20
 * line widths as stated in DIN EN ISO 128-20: 0.13 to 1.0 mm. [3] Machine Drawing, section 2.5:
 * lettering heights 2.5 and 3.5 mm.
 */
public final class ThemeWords {
  private static final double OF_TEXTS = 4.5;
  private static final double OF_LINES = 3;
  private static final Length THINNEST = Length.metres(0.00013);
  private static final Length THICKEST = Length.metres(0.001);
  private static final Length USUAL_LETTERS = Length.metres(0.0024);
  private static final Length LARGEST_LETTERS = Length.metres(0.003);
  private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{6}");

  private ThemeWords() {}

  @Verb(
      help =
          "Says how a part of all drawings looks: its fill, its line and the line's width. A firm"
              + " keeps such lines in a file that its plans include.",
      example = "theme('bed', fill: '#e3ecd6', line: '#2f5d1e', weight: 0.5.mm)")
  public static void theme(
      PlanScope plan,
      @Arg(name = "part", help = "what is drawn so", choices = Theme.Part.class) String part,
      @Opt(
              name = "fill",
              help = "a pale colour such as #e3ecd6, on which texts keep a contrast of 4.5",
              fallback = "as usual")
          String fill,
      @Opt(
              name = "line",
              help = "a dark colour such as #2f5d1e, with a contrast of 3 to paper and fill",
              fallback = "as usual")
          String line,
      @Opt(name = "weight", help = "the line's width on paper, 0.13 to 1 mm", fallback = "as usual")
          Length weight) {
    Theme.Part which = Choices.parse(Theme.Part.class, part);
    if (fill == null && line == null && weight == null) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          plan.place(),
          "`theme` changes nothing; give `fill:`, `line:` or `weight:`");
    }
    String ground = fill == null ? "" : colour(plan, "fill", fill);
    String stroke = line == null ? "" : colour(plan, "line", line);
    if (!ground.isEmpty()) {
      requireContrast(plan, "fill", ground, Palette.INK, "the ink of texts", OF_TEXTS);
      requireContrast(plan, "fill", ground, Palette.MUTED, "the grey of lesser texts", OF_TEXTS);
    }
    if (!stroke.isEmpty()) {
      requireContrast(plan, "line", stroke, Palette.PAPER, "paper", OF_LINES);
      if (!ground.isEmpty()) {
        requireContrast(plan, "line", stroke, ground, "the fill", OF_LINES);
      }
    }
    Making.once(plan, Theme.LOOK, l -> l.part() == which, "the look of '" + part + "'");
    plan.draft()
        .attributes()
        .add(
            Theme.LOOK,
            new Theme.Look(
                which,
                ground,
                stroke,
                weight == null ? 0 : millimetres("weight", weight, THINNEST, THICKEST)),
            plan.place());
  }

  @Verb(
      help =
          "Says how the texts of all sheets look: the colour of headings, the height of letters.",
      example = "themeText(headings: '#1f4e79', capitals: 2.6.mm)")
  public static void themeText(
      PlanScope plan,
      @Opt(
              name = "headings",
              help = "a colour such as #1f4e79, with a contrast of 4.5 to paper",
              fallback = "as usual")
          String headings,
      @Opt(
              name = "capitals",
              help =
                  "the height of running text on drawing sheets, 2.4 to 3 mm; pages to carry follow"
                      + " in proportion",
              fallback = "2.4 mm")
          Length capitals) {
    String colour = headings == null ? "" : colour(plan, "headings", headings);
    if (!colour.isEmpty()) {
      requireContrast(plan, "headings", colour, Palette.PAPER, "paper", OF_TEXTS);
      requireContrast(plan, "headings", colour, Palette.SHADE, "shaded rows", OF_TEXTS);
    }
    Making.once(plan, Theme.LETTERING, l -> true, "the look of texts");
    double letters =
        capitals == null
            ? 1
            : millimetres("capitals", capitals, USUAL_LETTERS, LARGEST_LETTERS)
                / (USUAL_LETTERS.metres() * 1000);
    plan.draft()
        .attributes()
        .add(Theme.LETTERING, new Theme.Lettering(colour, letters), plan.place());
  }

  private static double millimetres(String what, Length given, Length least, Length most) {
    if (given.metres() < least.metres() - 1e-9 || given.metres() > most.metres() + 1e-9) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              "`%s:` is %s to %s on paper, got %s",
              what, shown(least).replace(" mm", ""), shown(most), shown(given)));
    }
    return given.metres() * 1000;
  }

  private static String shown(Length length) {
    return BigDecimal.valueOf(length.metres() * 1000)
            .setScale(2, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString()
        + " mm";
  }

  private static String colour(PlanScope plan, String what, String said) {
    if (!COLOUR.matcher(said).matches()) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          "`"
              + what
              + ":` is a colour of red, green and blue such as '#2f5d1e', got '"
              + said
              + "'");
    }
    return said.toLowerCase(Locale.ROOT);
  }

  private static void requireContrast(
      PlanScope plan, String what, String colour, String other, String on, double least) {
    double ratio = Contrast.ratio(colour, other);
    if (ratio < least) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          plan.place(),
          String.format(
              Locale.ROOT,
              "`%s:` %s has a contrast of %.2f to %s (%s), at least %.1f is needed; take a %s one",
              what,
              colour,
              // Never shown as the limit that it misses.
              Math.floor(ratio * 100) / 100,
              on,
              other,
              least,
              what.equals("fill") ? "paler" : "darker"));
    }
  }
}
