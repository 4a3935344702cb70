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
            "Before digging have buried lines marked"
                + DigCalls.inBrackets(plan)
                + "; dig by hand near marks."));
    cautions.add(
        practice(
            "Not a survey. Check lot lines, setbacks, easements and measures on site; local codes"
                + " decide."));
    if (has(plan, Element.Building.class)) {
      cautions.add(
          new Caution(
              "Keep ground falling away from buildings, 6 in (150 mm) in 10 ft (3 m), and soil and"
                  + " mulch clear of walls and vents.",
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
              "Structures, walls and fences may need a permit and an engineer: ask the building"
                  + " office first."));
    }
    if (has(plan, Element.Tree.class)) {
      cautions.add(
          practice(
              "Under trees that stay, ask an arborist before you cut roots, or raise or pave the"
                  + " ground."));
    }
    if (has(plan, Element.Utility.class)) {
      cautions.add(practice("Utility lines drawn here are no proof of where they lie."));
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
