package yardloom.kernel.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.problem.SourceRef;

/**
 * A yard, frozen: what the script said, checked and immutable.
 *
 * <p>What is read is noted ({@link Reads}). Elements are sorted by kind and name, so that the order
 * of statements in a script reaches nothing.
 *
 * @param parameters the script's parameters by name, as text with unit
 */
public record Plan(
    PlanInfo info,
    Optional<Site> site,
    Optional<Lot> lot,
    List<Element> elements,
    Attributes attributes,
    Map<String, String> parameters) {
  public Plan {
    elements = elements.stream().sorted((a, b) -> a.id().compareTo(b.id())).toList();
    parameters = java.util.Collections.unmodifiableMap(new TreeMap<>(parameters));
  }

  @Override
  public PlanInfo info() {
    Reads.note(Reads.Topic.INFO, "");
    return info;
  }

  @Override
  public Optional<Site> site() {
    Reads.note(Reads.Topic.SITE, "");
    return site;
  }

  @Override
  public Optional<Lot> lot() {
    Reads.note(Reads.Topic.LOT, "");
    return lot;
  }

  @Override
  public List<Element> elements() {
    Reads.note(Reads.Topic.KIND, Element.class);
    return elements;
  }

  @Override
  public Map<String, String> parameters() {
    Reads.note(Reads.Topic.PARAMETERS, "");
    return parameters;
  }

  /** The elements of one kind, sorted by name. */
  public <E extends Element> List<E> all(Class<E> kind) {
    Reads.note(Reads.Topic.KIND, kind);
    return elements.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  public Optional<Element> element(ElementId id) {
    Reads.note(Reads.Topic.ELEMENT, id);
    return elements.stream().filter(e -> e.id().equals(id)).findFirst();
  }

  /** The same yard while its parts have these turns. */
  public Plan in(PartTurns turns) {
    return new Plan(
        info,
        site,
        lot,
        elements.stream().map(e -> e.in(turns.of(e.part()))).toList(),
        attributes.with(PartTurn.TURNS, turns, SourceRef.NONE),
        parameters);
  }

  /** The same with {@code value} alone under {@code key}. */
  public <T> Plan with(AttributeKey<T> key, T value, SourceRef place) {
    return new Plan(info, site, lot, elements, attributes.with(key, value, place), parameters);
  }

  /** Whether something that was said of the plan is bought and done now, or an element's of it. */
  public boolean isNow(Attributes.Entry<?> said) {
    return turns().of(said.part()) == PartTurn.NOW;
  }

  /**
   * Whether an element is looked after with what is made now: what is made now, and in the first
   * part also what stands before all of them.
   */
  public boolean isOwn(Element element) {
    return element.turn() == PartTurn.NOW
        || element.turn() == PartTurn.DONE && turns().of("") == PartTurn.NOW;
  }

  /** What is made now, as tables call it; empty where the yard is not looked at in parts. */
  public String now() {
    return turns().name();
  }

  private PartTurns turns() {
    return attributes.get(PartTurn.TURNS).orElse(PartTurns.NONE);
  }

  /** Whether the yard lies south of the equator; without a site it does not. */
  public boolean isSouthern() {
    return site().map(s -> s.latitude().degrees() < 0).orElse(false);
  }

  /** The file that the lot is written in; empty without a lot. */
  public String lotFile() {
    Reads.note(Reads.Topic.LOT_FILE, "");
    return lot.map(l -> l.place().file()).orElse("");
  }

  /** What the file with the lot says, wherever it includes others; else what was said last. */
  public <T> Optional<Attributes.Entry<T>> said(AttributeKey<T> key) {
    List<Attributes.Entry<T>> all = attributes.all(key);
    String own = lotFile();
    return all.stream()
        .filter(e -> e.place().file().equals(own))
        .findFirst()
        .or(() -> all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1)));
  }
}
