package org.tenthwise.checklists.drafting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tenthwise.checklists.editing.PlanText;
import org.tenthwise.checklists.editing.TableText;
import org.tenthwise.checklists.editing.TomlValue;
import org.tenthwise.model.callout.CalloutReader;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** Makes the draft of a plan of a list of characteristics. */
public final class Drafter {

    /** Signs of another coding, and what a spreadsheet makes of figures that look like a day. */
    private static final Pattern DAMAGED =
            Pattern.compile("\\u00C3.|\\u00C2.|\\uFFFD|#(REF|VALUE|NAME|DIV/0|N/A|NUM)[!?]?");

    private static final Pattern DAY = Pattern.compile("(?i)\\d{4}-\\d{2}-\\d{2}.*|\\d{1,2}[-.]"
            + "(jan|feb|mar|mär|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez)[a-z]*.*");

    private final CalloutReader reader;
    private final Words words;

    /**
     * @param reader of the drawing
     * @param words in which the plan says why a line was refused
     */
    public Drafter(CalloutReader reader, Words words) {
        this.reader = reader;
        this.words = words;
    }

    /**
     * @param head what is known of the plan; a list says nothing of that
     * @param rows of the file, the headings among them; blank ones are passed over
     * @throws Refused if no row heads the columns that are needed, or two of them mean the same
     */
    public Drafted of(PlanText head, List<List<String>> rows) {
        return of(head, ListedRows.of(rows));
    }

    /** The same of rows some of which are refused already. */
    public Drafted of(PlanText head, ListedRows listed) {
        List<List<String>> rows = listed.rows();
        int headings =
                ListColumn.headingsOf(rows).orElseThrow(() -> new Refused("draft.no-headings", ListColumn.needed()));
        Map<ListColumn, Integer> columns = ListColumn.of(rows.get(headings));
        List<Drafted.CameOf> lines = new ArrayList<>();
        List<TableText> tables = new ArrayList<>();
        Set<String> numbers = new HashSet<>();
        for (int place = headings + 1; place < rows.size(); place++) {
            ListLine line = ListLine.of(place + 1, rows.get(place), columns);
            if (rows.get(place).stream().anyMatch(cell -> !cell.isBlank())) {
                lines.add(drafted(line, Optional.ofNullable(listed.refused().get(place)), numbers, tables));
            }
        }
        return new Drafted(withTables(head, tables), lines);
    }

    private Drafted.CameOf drafted(
            ListLine line, Optional<Message> refused, Set<String> numbers, List<TableText> tables) {
        String number = line.at(ListColumn.NUMBER).orElse("");
        String requirement = line.at(ListColumn.REQUIREMENT).orElse("");
        try {
            refused.ifPresent(why -> {
                throw new Refused(why);
            });
            List<TableText> made = made(line, number, requirement, numbers);
            tables.addAll(made);
            return new Drafted.CameOf(
                    line.place(),
                    number,
                    requirement,
                    made.stream().map(TableText::name).toList(),
                    Optional.empty());
        } catch (Refused e) {
            tables.add(left(line, number, requirement, e));
            return new Drafted.CameOf(line.place(), number, requirement, List.of(), Optional.of(e.why()));
        }
    }

    /** A step that is open until somebody says what is right, so that no line of a drawing is lost. */
    private TableText left(ListLine line, String number, String requirement, Refused refused) {
        TableText step = TableText.ofList("step");
        step = number.isEmpty() ? step : step.with("balloon", TomlValue.text(number));
        step = requirement.isEmpty() ? step : step.with("requirement", TomlValue.text(requirement));
        return step.with("refused", TomlValue.text(words.say(Message.of("draft.left", line.place(), refused.why()))));
    }

    private List<TableText> made(ListLine line, String number, String requirement, Set<String> numbers) {
        if (number.isEmpty() || requirement.isEmpty()) {
            throw new Refused("draft.missing", number.isEmpty() ? ListColumn.NUMBER : ListColumn.REQUIREMENT);
        }
        line.cells().values().stream()
                .filter(cell -> DAMAGED.matcher(cell).find())
                .findFirst()
                .ifPresent(cell -> {
                    throw new Refused("draft.damaged", cell);
                });
        Stream.of(number, requirement)
                .filter(cell -> DAY.matcher(cell).matches())
                .findFirst()
                .ifPresent(cell -> {
                    throw new Refused("draft.a-day", cell);
                });
        if (!numbers.add(number.toLowerCase(Locale.ROOT))) {
            throw new Refused("draft.twice", number);
        }
        line.at(ListColumn.UNIT)
                .filter(unit -> !unit.equalsIgnoreCase(reader.ofDrawing().symbol()) && !unit.equals("-"))
                .filter(unit -> !unit.matches("°|deg|µm|µin|HRC|Ra|Rz"))
                .ifPresent(unit -> {
                    throw new Refused("draft.unit", unit, reader.ofDrawing());
                });
        return new LineTables(line, reader.read(requirement), number, reader.ofDrawing()).made();
    }

    /** Steps first, numbered in their order; what has its place in no order of work behind them. */
    private static PlanText withTables(PlanText head, List<TableText> tables) {
        PlanText plan = head;
        int number = 0;
        for (boolean inOrder : new boolean[] {true, false}) {
            for (TableText table : tables) {
                if (LineTables.isInOrder(table) == inOrder) {
                    number++;
                    plan = plan.appended(table.withAfter(List.of(), "number", TomlValue.number(number)));
                }
            }
        }
        return plan;
    }
}
