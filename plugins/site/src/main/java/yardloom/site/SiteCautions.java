package yardloom.site;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.site.country.DigCalls;

/** The cautions that any plan calls for by what stands on it; all are read before work begins. */
public final class SiteCautions {
  private static final Source PRACTICE = Source.commonPractice("site work");

  private SiteCautions() {}

  public static List<Caution> of(Plan plan) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        practice(
            "Before any digging have all buried utilities located and marked by the local service"
                + DigCalls.inBrackets(plan)
                + "; dig by hand near the marks."
                + " Lines on this drawing are not proof of where they lie."));
    cautions.add(
        practice(
            "Not a survey. Check lot lines, setbacks, easements and all measures on site before"
                + " work; local codes and licensed professionals decide."));
    if (has(plan, Element.Building.class)) {
      cautions.add(
          new Caution(
              "Keep ground falling away from buildings, at least 6 in within the first 10 ft (5 %),"
                  + " and keep soil and mulch clear of walls and vents.",
              Source.read(
                  "International Residential Code, R401.3 Drainage",
                  "International Code Council",
                  2006,
                  "as quoted on inspection pages"),
              Caution.When.BEFORE_WORK));
    }
    if (has(plan, Element.Structure.class) || has(plan, Element.Fence.class)) {
      cautions.add(
          practice(
              "Structures, retaining walls and fences may need a permit and an engineer; ask the"
                  + " local building office first."));
    }
    if (has(plan, Element.Tree.class)) {
      cautions.add(
          practice(
              "Do not cut roots, raise or pave the ground under trees that are to stay without an"
                  + " arborist's advice."));
    }
    if (has(plan, Element.Utility.class)) {
      cautions.add(
          practice("Work near overhead or gas lines only as the utility allows; ask it first."));
    }
    return cautions;
  }

  private static boolean has(Plan plan, Class<? extends Element> kind) {
    return !plan.all(kind).isEmpty();
  }

  private static Caution practice(String text) {
    return new Caution(text, PRACTICE, Caution.When.BEFORE_WORK);
  }
}
