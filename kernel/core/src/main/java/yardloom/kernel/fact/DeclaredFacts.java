package yardloom.kernel.fact;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Facts seen by one reader: an undeclared key is an error at once, so declarations cannot rot. */
final class DeclaredFacts implements Facts {
  private final Facts facts;
  private final String reader;
  private final Set<String> declared;

  DeclaredFacts(Facts facts, String reader, Set<String> declared) {
    this.facts = facts;
    this.reader = reader;
    this.declared = declared;
  }

  @Override
  public <T> T get(FactKey<T> key) {
    check(key);
    return facts.get(key);
  }

  @Override
  public <T> Optional<T> find(FactKey<T> key) {
    check(key);
    return facts.find(key);
  }

  @Override
  public <T> List<T> all(FactKey<T> key) {
    check(key);
    return facts.all(key);
  }

  private void check(FactKey<?> key) {
    // Whoever sees a plan may ask whether it is made in parts.
    if (!key.equals(PartOfPlan.FACT) && !declared.contains(key.id())) {
      throw new IllegalStateException(reader + " reads " + key.id() + " without declaring it");
    }
  }
}
