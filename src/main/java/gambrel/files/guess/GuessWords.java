package gambrel.files.guess;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Finds columns by their header texts, in the languages that scales print. */
final class GuessWords {
  /** Words that fit many columns. */
  private static final List<String> WEAK =
      List.of(
          "no", "nr", "num", "number", "nummer", "numero", "numéro", "id", "weight", "time", "art",
          "st", "op", "day", "tag", "data", "label", "mass", "key", "res", "ear");

  /** The group of the words for columns that hold something else. */
  static final String NONE = "none";

  private static final int WHOLE = 60;
  private static final int WORD = 45;
  private static final int BEGINNING = 30;
  private static final int WEAKLY = 15;
  private static final int SHORTEST_BEGINNING = 4;

  /** A column of ours at the beginning of each line, then words for it. */
  private static final Map<String, List<String>> WORDS =
      """
      scale scale station waage bascule balance bascula báscula weegschaal device terminal balanza
      ticket ticket beleg belegnr volgnr bon receipt seq sequence record transaction trans slip label weighing wägung pesada pesée ticketnr id no nr num number nummer numéro numero folio lfd
      time timestamp stamp datetime zeitpunkt zeitstempel when horodatage quand epoch recorded weighed ts time
      date date datum fecha day tag jour data
      clock clock uhrzeit zeit heure hora tijd time ora
      body body carcase carcass animal lot kill schlacht tier bête bete res canal karkas beast ear tier-nr schlachtnr carcasse
      code code plu item article artikel articulo artículo product produkt produit producto cut key art ware teil pieza sku material
      net net netto neto nett weight wt gewicht poids peso gew masse mass
      gross gross brutto brut bruto lordo
      tare tare tara
      unit unit units uom einheit unite unité unidad eh
      pieces pieces pcs count qty quantity stück stueck stk piezas stuks pièces pz pc
      operator operator user clerk bediener vendeur operador cutter op personal staff opérateur
      batch batch charge lote partie charge-nr
      customer customer kunde client cliente owner farmer klant
      status status stat state void voided storno stornokz vermerk flag estado etat état st kz annul annulé cancelled deleted stab stability
      barcode barcode ean etiquette étiquette gtin scan strichcode
      none price preis prix precio amount betrag total montant value wert cost use best expiry expires mhd bbd slaughtered geschlachtet temp temperature importe eur usd aud gbp description bezeichnung desc libellé beschreibung descripción
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
    return WORDS.keySet().stream().filter(word -> !word.equals(NONE)).toList();
  }

  /** Whether a header text is of a column that holds something else. */
  static boolean isOther(String header) {
    int other = score(NONE, header);
    return other > 0 && columns().stream().allMatch(column -> score(column, header) < other);
  }

  /** A header text with blanks between words that only a capital sets apart: {@code netGrams}. */
  static String spaced(String header) {
    return header.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ");
  }

  /** How well a header text fits a column; 0 if not at all. */
  static int score(String column, String header) {
    String text = header.toLowerCase(Locale.ROOT);
    var parts = spaced(header).toLowerCase(Locale.ROOT).split("[^\\p{L}]+");
    int best = 0;
    for (String word : WORDS.get(column)) {
      for (String part : parts) {
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
