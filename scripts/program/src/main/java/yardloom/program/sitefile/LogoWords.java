package yardloom.program.sitefile;

import yardloom.kernel.draw.Logo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word for a firm's mark. */
public final class LogoWords {
  private LogoWords() {}

  @Verb(
      help =
          "Puts a firm's mark into the title block of every sheet: an SVG file of filled outlines,"
              + " without texts, pictures or anything from elsewhere.",
      example =
          "logo('<svg viewBox=\"0 0 8 4\"><path fill=\"#2f5d1e\" d=\"M0 4L4 0L8 4Z\"/></svg>')")
  public static void logo(
      PlanScope plan,
      @Arg(name = "svg", help = "the SVG text, as from fileText('our-logo.svg')") String svg) {
    Making.once(plan, Logo.KEY, l -> true, "the logo");
    try {
      plan.draft().attributes().add(Logo.KEY, SvgLogo.read(svg), plan.place());
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
  }
}
