package yardloom.site.contact;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SiteContacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;

/** Gives the address and the contacts, where the plan says any. */
public final class ContactCalculator implements Calculator {
  /** On the plan: the address. */
  static final AttributeKey<String> ADDRESS = new AttributeKey<>("site.address", String.class);

  /** On the plan, any number: whom to call. */
  static final AttributeKey<SiteContacts.Contact> CONTACT =
      new AttributeKey<>("site.contact", SiteContacts.Contact.class);

  @Override
  public String id() {
    return "site.contacts";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SITE_CONTACTS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<String> address = plan.attributes().get(ADDRESS);
    // The plan's own word for a name that an included file gave replaces it in its row.
    Map<String, SiteContacts.Contact> byName = new LinkedHashMap<>();
    plan.attributes().all(CONTACT).forEach(e -> byName.put(e.value().name(), e.value()));
    if (address.isPresent() || !byName.isEmpty()) {
      out.give(
          YardFacts.SITE_CONTACTS, new SiteContacts(address, new ArrayList<>(byName.values())));
    }
  }
}
