package yardloom.site.contact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SiteContacts;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.UnitSystem;

/** What the words for address and contacts take, and what they give. */
class ContactWordsTest {
  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "€"));
  private int line;

  private PlanScope in(String file) {
    return new PlanScope(draft, new SourceRef(file, ++line, 1));
  }

  private PlanException refused(Runnable what) {
    return assertThrows(PlanException.class, what::run);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "phones.csv", useHeadersInDisplayName = true, numLinesToSkip = 1)
  void phone_isANumberThatSomeoneCanCall(String phone, String taken, String source) {
    Runnable said = () -> ContactWords.contact(in("a"), "x", phone, null, null);
    if (taken.equals("yes")) {
      said.run();
      assertEquals(phone, draft.attributes().all(ContactCalculator.CONTACT).get(0).value().phone());
    } else {
      assertTrue(refused(said).getMessage().contains("'" + phone + "' is not a phone number"));
    }
  }

  @Test
  void contactsAndAddress_areGivenAsWritten_laterFileReplaces() {
    ContactWords.contact(in("region"), "Digging service", "811", "marks lines", null);
    ContactWords.siteAddress(in("region"), "nowhere");
    ContactWords.contact(in("plan"), "Owner", "217 555 0142", null, true);
    ContactWords.contact(in("plan"), "Foreman", "217 555 0177", "mulch", true);
    ContactWords.contact(in("plan"), "Digging service", "112 811", "marks pipes", false);
    ContactWords.siteAddress(in("plan"), " 14 Linden Walk ");
    Plan plan = draft.freeze();
    SiteContacts given = PlanKit.run(plan).find(YardFacts.SITE_CONTACTS).orElseThrow();
    assertEquals(Optional.of("14 Linden Walk"), given.address());
    assertEquals(
        List.of("Digging service", "Owner", "Foreman"),
        given.people().stream().map(SiteContacts.Contact::name).toList());
    assertEquals("112 811", given.people().get(0).phone());
    assertEquals(Optional.of("Owner, 217 555 0142; Foreman, 217 555 0177"), given.onSite());
  }

  @Test
  void nothingSaid_givesNothing() {
    Plan plan = draft.freeze();
    assertTrue(PlanKit.run(plan).find(YardFacts.SITE_CONTACTS).isEmpty());
  }

  @Test
  void twiceInOneFile_isRefused() {
    ContactWords.contact(in("plan"), "Owner", "217 555 0142", null, null);
    ContactWords.siteAddress(in("plan"), "14 Linden Walk");
    assertTrue(
        refused(() -> ContactWords.contact(in("plan"), "Owner", "217 555 0143", null, null))
            .getMessage()
            .contains("contact 'Owner' is already given at plan:1:1"));
    assertTrue(
        refused(() -> ContactWords.siteAddress(in("plan"), "15 Linden Walk"))
            .getMessage()
            .contains("the address of the yard is already given at plan:2:1"));
  }

  @Test
  void texts_areOneLine_ofAFewLetters() {
    for (String text : List.of(" ", "w".repeat(121), "two\nlines", "\u202eturned")) {
      refused(() -> ContactWords.siteAddress(in("plan"), text));
      refused(() -> ContactWords.contact(in("plan"), "x", "811", text, null));
      refused(() -> ContactWords.contact(in("plan"), text, "811", null, null));
    }
    refused(() -> ContactWords.contact(in("plan"), "x", "811", "w".repeat(61), null));
    assertTrue(
        refused(() -> ContactWords.siteAddress(in("plan"), "two\nlines"))
            .getMessage()
            .contains("the address must be one line of plain text"));
    ContactWords.contact(in("plan"), "x", "811", "w".repeat(60), null);
    ContactWords.siteAddress(in("plan"), "w".repeat(120));
  }
}
