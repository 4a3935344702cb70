package yardloom.kernel.recall;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Reads.Attribute;
import yardloom.kernel.plan.Reads.Question;

/** What a plan and its facts answer. */
final class Answers {
  private final Plan plan;
  private final Results facts;
  private final Map<ElementId, Element> elements = new TreeMap<>();
  private Function<Object, ?> offers = use -> List.of();

  Answers(Plan plan, Results facts) {
    this.plan = plan;
    this.facts = facts;
    plan.elements().forEach(e -> elements.put(e.id(), e));
  }

  void offers(Function<Object, ?> tables) {
    offers = tables;
  }

  /** The answer, to be compared with that of another run; null if there is none. */
  Object to(Question question) {
    Object about = question.about();
    return switch (question.topic()) {
      case INFO -> plan.info();
      case SITE -> plan.site();
      case LOT -> plan.lot();
      case LOT_FILE -> plan.lotFile();
      case PARAMETERS -> plan.parameters();
      case KIND -> plan.elements().stream().filter(((Class<?>) about)::isInstance).toList();
      case ELEMENT, WHOLE_ELEMENT -> elements.get((ElementId) about);
      case WHOLE_PLAN -> plan;
      case ATTRIBUTE -> attribute((Attribute) about);
      case FACT -> facts.given((String) about);
      case OFFER -> offers.apply(about);
    };
  }

  private Object attribute(Attribute asked) {
    if (asked.of() == null) {
      return plan.attributes().all(asked.key());
    }
    Element element = elements.get(asked.of());
    return element == null ? null : element.attributes().all(asked.key());
  }
}
