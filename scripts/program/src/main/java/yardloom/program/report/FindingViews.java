package yardloom.program.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.FindingGroup;
import yardloom.kernel.vocab.Choices;
import yardloom.program.report.FindingsView.Detail;
import yardloom.program.report.FindingsView.Item;
import yardloom.sheet.compose.PaperWords;

/** Puts findings into words, each with pictures of its place. */
final class FindingViews {
  /** More places of one finding are named, and seen on the map. */
  private static final int PICTURES = 3;

  /** All errors are seen at once, and warnings up to so many: the rest of the story follows. */
  private static final int AT_ONCE = 3;

  private final Optional<LayerMap> map;
  private final PaperWords words;

  FindingViews(Optional<LayerMap> map, PaperWords words) {
    this.map = map;
    this.words = words;
  }

  FindingsView of(List<Finding> findings) {
    List<Item> first = new ArrayList<>();
    List<Item> more = new ArrayList<>();
    for (FindingGroup group : FindingGroup.of(findings)) {
      Severity severity = group.first().severity();
      boolean act =
          severity == Severity.ERROR || severity == Severity.WARNING && first.size() < AT_ONCE;
      (act ? first : more).add(item(group));
    }
    return new FindingsView(FindingGroup.counts(findings), first, more);
  }

  private Item item(FindingGroup group) {
    Finding first = group.first();
    String lines =
        group.all().stream()
            .map(Finding::place)
            .filter(p -> p.line() > 0)
            .map(FindingViews::line)
            .distinct()
            .limit(PICTURES)
            .collect(Collectors.joining(", "));
    return new Item(
        group.number(),
        Choices.text(first.severity()),
        words.of(group.about()),
        words.of(first.text()),
        sentence(words.of(first.advice())),
        pictures(group),
        first.rule() + (lines.isEmpty() ? "" : ", " + lines) + ". " + first.source().cite());
  }

  /** Without the folders, which say nothing on another machine. */
  private static String line(SourceRef place) {
    String file = place.file().substring(place.file().lastIndexOf('/') + 1);
    String caller = place.calledFrom() == 0 ? "" : " called from line " + place.calledFrom();
    return file + " line " + place.line() + caller;
  }

  /** Advice is written to follow a colon; here it stands alone. */
  private static String sentence(String advice) {
    return advice.isEmpty()
        ? ""
        : advice.substring(0, 1).toUpperCase(Locale.ROOT)
            + advice.substring(1)
            + (advice.endsWith(".") ? "" : ".");
  }

  private List<Detail> pictures(FindingGroup group) {
    List<Detail> pictures = new ArrayList<>();
    for (Finding finding : group.all()) {
      boolean room = pictures.size() < PICTURES;
      if (map.isPresent() && finding.ground().isPresent() && room) {
        String where = finding.element().map(id -> words.of(id.toString())).orElse("its place");
        String label = "Finding " + group.number() + " on the map: " + where;
        pictures.add(map.get().detail(finding.ground().get(), label));
      }
    }
    return pictures;
  }
}
