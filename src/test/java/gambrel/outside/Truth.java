package gambrel.outside;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is wrong with a room.
 *
 * @param what in words, for a reader of a failure
 * @param causes causes that name it
 * @param bodies whose mass is wrong for it
 * @param answers what to paste: the value by scale and ticket; several where they come to the same;
 *     none where nothing can be pasted
 * @param field what to correct, or empty
 * @param tolerance by how many thousandths of the unit a weight may be off
 */
record Truth(
    String what,
    Set<String> causes,
    Set<String> bodies,
    List<Map<String, String>> answers,
    String field,
    long tolerance) {

  /** A truth to which no suggestion is true. */
  static Truth natural(String what, Set<String> bodies) {
    return new Truth(what, Set.of(), bodies, List.of(), "", 0);
  }

  /** Something that was not weighed. */
  static Truth missing(String what, String cause, Set<String> bodies) {
    return new Truth(what, Set.of(cause), bodies, List.of(), "", 0);
  }

  /** Whether a suggestion says what is wrong. */
  boolean isToldBy(Suggestion suggestion) {
    if (!causes.contains(suggestion.cause())) {
      return false;
    }
    if (answers.isEmpty()) {
      return suggestion.values().isEmpty() && bodies.contains(suggestion.body());
    }
    // Where a scale writes gross and tare too, they go with the net weight.
    var corrected = new TreeSet<>(suggestion.values().keySet());
    corrected.removeAll(Set.of("gross", "tare"));
    return corrected.equals(Set.of(field))
        && answers.stream().anyMatch(answer -> fits(answer, suggestion.values().get(field)));
  }

  private boolean fits(Map<String, String> answer, Map<String, String> values) {
    return answer.keySet().equals(values.keySet())
        && answer.entrySet().stream().allMatch(e -> fits(e.getValue(), values.get(e.getKey())));
  }

  private boolean fits(String value, String told) {
    if (!field.equals("net")) {
      return value.equals(told);
    }
    return Math.abs(Suggestion.thousandths(value) - Suggestion.thousandths(told)) <= tolerance;
  }
}
