package yardloom.materials.goods;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.materials.cutting.CuttingStock;
import yardloom.materials.cutting.CuttingStock.CutList;
import yardloom.materials.cutting.CuttingStock.Demand;
import yardloom.materials.cutting.CuttingStock.Pattern;
import yardloom.materials.goods.formula.FramePieces;
import yardloom.materials.goods.formula.Lumber;

/** The frames of a plan: pieces of the same lumber and stock are sawn together. */
public final class FrameWork {
  private static final double NM_PER_M = 1e9;

  /** What is sawn from one kind of board. */
  private record Stock(String size, List<Long> stocksNm, long kerfNm) {
    long longest() {
      return stocksNm.get(stocksNm.size() - 1);
    }
  }

  private final Map<String, Stock> stocks = new TreeMap<>();
  private final Map<String, TreeMap<Long, List<String>>> pieces = new TreeMap<>();
  private int screws;
  private int stakes;

  private FrameWork() {}

  static FrameWork of(Plan plan) {
    FrameWork work = new FrameWork();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      if (bed.turn() == PartTurn.NOW) {
        bed.attributes().get(Frame.KEY).ifPresent(f -> work.add(bed, f));
      }
    }
    return work;
  }

  private void add(Element.Bed bed, Frame frame) {
    Lumber.Size size = Lumber.size(frame.size());
    List<Length> boards = FramePieces.of(bed.shape(), size.thickness(), frame.longest());
    Stock stock =
        new Stock(
            frame.size(), frame.stocks().stream().map(FrameWork::nm).toList(), nm(frame.kerf()));
    String key = stock.size() + " " + stock.stocksNm() + " " + stock.kerfNm();
    stocks.put(key, stock);
    for (int course = 0; course < frame.courses(); course++) {
      for (Length board : boards) {
        // Rounded down to a nanometre, so that a side as long as the stock still fits it.
        pieces
            .computeIfAbsent(key, k -> new TreeMap<>())
            .computeIfAbsent(Math.min(nm(board), stock.longest()), k -> new ArrayList<>())
            .add(bed.id().name());
      }
      screws += boards.size() * FramePieces.screwsPerCorner(size.nominalWidthIn());
    }
    stakes += FramePieces.stakes(boards);
  }

  /** Nanometres, to the nearest 10 µm: finer than any saw, and equal sides stay equal. */
  private static long nm(Length length) {
    return Math.round(length.metres() * 1e5) * Math.round(NM_PER_M / 1e5);
  }

  private static Length length(long nm) {
    return Length.metres(nm / NM_PER_M);
  }

  List<SawList> sawLists() {
    List<SawList> lists = new ArrayList<>();
    stocks.forEach((key, stock) -> lists.addAll(sawLists(stock, pieces.get(key))));
    return lists;
  }

  /** One list for each stock length that is bought. */
  private static List<SawList> sawLists(Stock stock, TreeMap<Long, List<String>> pieces) {
    List<Demand> demands = new ArrayList<>();
    for (Map.Entry<Long, List<String>> e : pieces.descendingMap().entrySet()) {
      String beds = String.join(", ", e.getValue().stream().distinct().sorted().toList());
      demands.add(new Demand("frame of " + beds, e.getKey(), e.getValue().size()));
    }
    CutList cut = CuttingStock.solve(stock.stocksNm(), stock.kerfNm(), demands);
    List<SawList> lists = new ArrayList<>();
    for (long length : stock.stocksNm()) {
      List<Pattern> patterns = cut.patterns().stream().filter(p -> p.stockNm() == length).toList();
      if (!patterns.isEmpty()) {
        lists.add(sawList(stock, length, demands, patterns, cut));
      }
    }
    return lists;
  }

  private static SawList sawList(
      Stock stock, long stockNm, List<Demand> demands, List<Pattern> patterns, CutList cut) {
    String least = stock.stocksNm().size() > 1 ? "least length" : "fewest boards";
    Derived.Builder why =
        Derived.by(least + " for all pieces, kerf between pieces", CuttingStock.SOURCE);
    for (long each : stock.stocksNm()) {
      why.from("stock", length(each));
    }
    why.from("kerf", length(stock.kerfNm()));
    for (Demand d : demands) {
      why.from(d.count() + " pieces, " + d.label(), length(d.lengthNm()));
    }
    Derived<Integer> boards = why.gives(patterns.stream().mapToInt(Pattern::boards).sum());
    double feet = Lumber.size(stock.size()).boardFeet(length(stockNm)) * boards.value();
    return new SawList(
        stock.size(),
        length(stockNm),
        length(stock.kerfNm()),
        boards,
        Derived.by("board feet = thickness × width × board in ft / 12 × boards", Lumber.SOURCE)
            .from("boards", boards)
            .from("thickness, nominal inches", Lumber.size(stock.size()).nominalThicknessIn())
            .from("width, nominal inches", Lumber.size(stock.size()).nominalWidthIn())
            .from("board", length(stockNm))
            .gives(feet),
        patterns.stream().map(p -> cut(p, demands, stock)).toList(),
        least,
        cut.proven());
  }

  private static SawList.Cut cut(Pattern pattern, List<Demand> demands, Stock stock) {
    List<Length> lengths = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    long used = -stock.kerfNm();
    for (int i = 0; i < demands.size(); i++) {
      for (int n = 0; n < pattern.pieces().get(i); n++) {
        lengths.add(length(demands.get(i).lengthNm()));
        labels.add(demands.get(i).label());
        used += demands.get(i).lengthNm() + stock.kerfNm();
      }
    }
    // A last cut that leaves less than a kerf turns the rest to dust.
    long rest = Math.max(0, pattern.stockNm() - used - stock.kerfNm());
    return new SawList.Cut(pattern.boards(), lengths, labels, length(rest));
  }

  Optional<Derived<Integer>> screws() {
    return count(screws, "one for each 2 in (5 cm) of board width at each joint, at least two");
  }

  Optional<Derived<Integer>> stakes() {
    return count(stakes, "one for each board, and every 4 ft (1.2 m)");
  }

  private static Optional<Derived<Integer>> count(int n, String rule) {
    return n == 0 ? Optional.empty() : Optional.of(Derived.by(rule, FramePieces.SOURCE).gives(n));
  }
}
