package yardloom.site.contact;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.SiteContacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** The address of the yard, then everyone whom a crew may have to call. */
public final class ContactTable implements TableMaker {
  @Override
  public String id() {
    return "contacts";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SITE_CONTACTS);
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.COVER, SheetPage.CREW);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    SiteContacts contacts = facts.find(YardFacts.SITE_CONTACTS).orElse(SiteContacts.NONE);
    Table.Builder table =
        Table.titled(id(), "Contacts")
            .column(Column.text("who", "Who"))
            .column(Column.text("for", "For"))
            .column(Column.text("phone", "Phone or address"));
    contacts
        .address()
        .ifPresent(a -> table.row(Cell.text("This yard"), Cell.text("deliveries"), Cell.text(a)));
    for (SiteContacts.Contact c : contacts.people()) {
      table.row(Cell.text(c.name()), role(c), Cell.text(c.phone()));
    }
    return table.build();
  }

  private static Cell role(SiteContacts.Contact contact) {
    if (!contact.isOnSite()) {
      return contact.role().isEmpty() ? Cell.BLANK : Cell.text(contact.role());
    }
    return Cell.text(contact.role().isEmpty() ? "on site" : contact.role() + ", on site");
  }
}
