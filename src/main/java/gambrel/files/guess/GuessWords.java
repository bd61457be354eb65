package gambrel.files.guess;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds columns by their header texts, in the languages of the scales on sale. */
final class GuessWords {
  /** Words that fit many columns. */
  private static final List<String> WEAK =
      List.of("no", "nr", "number", "nummer", "weight", "time");

  private static final int WHOLE = 60;
  private static final int WORD = 45;
  private static final int BEGINNING = 30;
  private static final int WEAKLY = 15;
  private static final int SHORTEST_BEGINNING = 4;

  /** A column of ours at the beginning of each line, then words for it. */
  private static final Map<String, List<String>> WORDS =
      """
      scale scale station waage bascule bascula weegschaal device terminal
      ticket ticket beleg bon receipt seq sequence record transaction no nr number nummer
      time timestamp stamp datetime zeitpunkt time
      date date datum fecha day jour
      clock clock uhrzeit zeit heure hora tijd time printed
      body body carcase carcass animal lot kill schlacht tier bete canal karkas beast
      code code plu item article artikel articulo product produkt produit producto cut
      net net netto neto weight gewicht poids peso
      gross gross brutto brut bruto
      tare tare tara
      unit unit uom einheit unite unidad
      pieces pieces pcs count qty quantity stück stueck piezas stuks pièces
      operator operator user clerk bediener vendeur operador cutter
      batch batch charge lote partie
      customer customer kunde client cliente owner farmer klant
      status status state void storno vermerk flag estado
      barcode barcode ean etiquette gtin
      """
          .lines()
          .map(line -> List.of(line.split(" ")))
          .collect(
              Collectors.toMap(
                  line -> line.get(0),
                  line -> line.subList(1, line.size()),
                  (one, other) -> one,
                  LinkedHashMap::new));

  private GuessWords() {}

  /** All columns that have words. */
  static List<String> columns() {
    return List.copyOf(WORDS.keySet());
  }

  /** How well a header text fits a column; 0 if not at all. */
  static int score(String column, String header) {
    String text = header.toLowerCase(Locale.ROOT);
    int best = 0;
    for (String word : WORDS.get(column)) {
      for (String part : text.split("[^\\p{L}]+")) {
        int score =
            text.equals(word)
                ? WHOLE
                : part.equals(word)
                    ? WORD
                    : word.length() >= SHORTEST_BEGINNING && part.startsWith(word) ? BEGINNING : 0;
        best = Math.max(best, WEAK.contains(word) ? Math.min(score, WEAKLY) : score);
      }
    }
    return best;
  }
}
