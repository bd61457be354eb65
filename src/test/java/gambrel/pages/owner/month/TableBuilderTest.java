package gambrel.pages.owner.month;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.owner.SmallShop;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.views.TableView;
import java.util.List;
import org.junit.jupiter.api.Test;

class TableBuilderTest {
  private static final List<String> ROWS = List.of("a", "b", "c");

  private static TableBuilder<String> named() {
    return new TableBuilder<String>("letters figures").first("Letter", text -> text);
  }

  private static List<List<String>> texts(TableView table) {
    return table.rows().stream().map(SmallShop::texts).toList();
  }

  @Test
  void aRowHasACellForEachColumnAndTwoForACountedFigure() {
    var table = named().counted("Lost", text -> new Counted(text + "1", "of 2")).rows(ROWS);
    var view = table.table("remark").get(0);
    assertEquals(List.of("a", "a1", "of 2"), texts(view).get(0));
    assertEquals(List.of("", "2"), view.heads().get(0).stream().map(TableView.Cell::span).toList());
    assertEquals(List.of("remark"), view.remarks());
  }

  @Test
  void withoutRowsThereIsNoTable() {
    assertEquals(List.of(), named().table("remark"));
    assertEquals(List.of(), named().group("title", List.of()).table("remark"));
  }

  @Test
  void headsWithoutTextAreLeftOut() {
    var silent = new TableBuilder<String>("letters").first("", text -> text).rows(ROWS);
    assertEquals(List.of(), silent.table().get(0).heads());
  }
}
