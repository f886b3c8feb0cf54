package org.tenthwise.app.export.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.picture.Pictures;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.ModifierWords;
import org.tenthwise.model.plan.BalloonNumber;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.OnDrawing;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.DrawingAccount;
import org.tenthwise.model.record.Finding;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Measured;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.verdict.VerdictKind;

/**
 * The table of characteristics line by line, in the order of the drawing's numbers: one for each requirement, one more
 * where of several alike some stand otherwise than the rest.
 */
final class TableLines {

    private final RecordContext matter;
    private final Wrapping wrapping;
    private final DrawingWords drawing;
    private final FigureText figure;
    private final Pictures pictures;

    TableLines(RecordContext matter, Wrapping wrapping) {
        this.matter = matter;
        this.wrapping = wrapping;
        this.drawing = new DrawingWords(matter.words());
        this.figure = new FigureText(matter.words());
        this.pictures = new Pictures(matter.words());
    }

    /** What the part is made of and put through stands apart from its characteristics. */
    static boolean isOfProduct(Line line) {
        return line.step()
                .check()
                .asDocument()
                .map(DocumentCheck::proof)
                .filter(ProofOf::isOfProduct)
                .isPresent();
    }

    /** The requirements of the drawing. */
    List<TableLine> characteristics() {
        List<TableLine> lines = new ArrayList<>();
        for (AccountLine line : together(DrawingAccount.of(matter.sheet()).lines())) {
            line.match(new AccountLine.Cases<Optional<TableLine>>() {
                        @Override
                        public Optional<TableLine> checked(AccountLine.Checked checked) {
                            return isOfProduct(checked.line()) ? Optional.empty() : Optional.of(line(checked));
                        }

                        @Override
                        public Optional<TableLine> notInThisRun(AccountLine.NotInThisRun left) {
                            return isOfProduct(left.line()) ? Optional.empty() : Optional.of(leftOut(left.line()));
                        }

                        @Override
                        public Optional<TableLine> unanswered(AccountLine.Unanswered unanswered) {
                            return Optional.of(line(unanswered));
                        }
                    })
                    .ifPresent(lines::add);
        }
        return lines;
    }

    /** Materials, processes and tests, each with the paper that proves it. */
    List<TableLine> products() {
        return inOrder(matter.sheet().lines().stream().filter(TableLines::isOfProduct))
                .map(line -> line.asked()
                        ? line(new AccountLine.Checked(
                                line.step().drawing().balloon(),
                                line,
                                List.of(),
                                List.of(),
                                line.finding().verdict().standing()))
                        : leftOut(line))
                .toList();
    }

    /** What was checked on the way and did not pass, signed for or not. */
    List<TableLine> onTheWay() {
        return inOrder(matter.sheet().lines().stream()
                        .filter(line -> line.asked() && !line.isOfDrawing())
                        .filter(line -> !line.finding().verdict().passed()))
                .map(line -> line(new AccountLine.Checked(
                        line.step().drawing().balloon(),
                        line,
                        List.of(),
                        line.finding().measured(),
                        line.finding().verdict().standing())))
                .toList();
    }

    private static Stream<Line> inOrder(Stream<Line> lines) {
        return lines.sorted(Comparator.comparing(line -> line.step().number()));
    }

    /** Of several alike those that stand alike are one line. */
    private static List<AccountLine> together(List<AccountLine> lines) {
        Map<String, AccountLine> merged = new LinkedHashMap<>();
        for (AccountLine line : lines) {
            String key = line.match(new AccountLine.Cases<String>() {
                @Override
                public String checked(AccountLine.Checked checked) {
                    return checked.line().step().number() + " " + checked.standing();
                }

                @Override
                public String unanswered(AccountLine.Unanswered unanswered) {
                    return "- " + merged.size();
                }

                @Override
                public String notInThisRun(AccountLine.NotInThisRun left) {
                    return "- " + merged.size();
                }
            });
            merged.merge(key, line, TableLines::together);
        }
        return List.copyOf(merged.values());
    }

    private static AccountLine together(AccountLine one, AccountLine other) {
        return checked(one)
                .flatMap(first -> checked(other)
                        .<AccountLine>map(second -> new AccountLine.Checked(
                                first.balloon(),
                                first.line(),
                                joined(first.instances(), second.instances()),
                                joined(first.measured(), second.measured()),
                                first.standing())))
                .orElse(one);
    }

    private static Optional<AccountLine.Checked> checked(AccountLine line) {
        return line.match(new AccountLine.Cases<>() {
            @Override
            public Optional<AccountLine.Checked> checked(AccountLine.Checked checked) {
                return Optional.of(checked);
            }

            @Override
            public Optional<AccountLine.Checked> unanswered(AccountLine.Unanswered unanswered) {
                return Optional.empty();
            }

            @Override
            public Optional<AccountLine.Checked> notInThisRun(AccountLine.NotInThisRun left) {
                return Optional.empty();
            }
        });
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    /** No verdict, no shape and no figure but those of the drawing. */
    private TableLine leftOut(Line line) {
        return new TableLine(
                number(matter.plan().balloon(line.step()), line),
                check(line),
                drawing.place(line.step().drawing()),
                name(line, ""),
                figure.limits(line.step()),
                new RunIn(wrapping).add(matter.notInThisRun(), Style.SMALL),
                Optional.empty(),
                "",
                Optional.empty(),
                List.of(),
                List.of());
    }

    private TableLine line(AccountLine.Unanswered line) {
        return new TableLine(
                line.balloon().map(Object::toString).orElse(""),
                "",
                drawing.place(line.drawing()),
                new RunIn(wrapping)
                        .add(line.drawing().requirement(), Style.CELL)
                        .add(designator(line.drawing()), Style.SMALL_BOLD),
                "",
                new RunIn(wrapping).add(matter.say("record.account.unanswered"), Style.SMALL),
                Optional.empty(),
                "",
                Optional.of(line.standing()),
                List.of(),
                List.of());
    }

    private TableLine line(AccountLine.Checked checked) {
        Line line = checked.line();
        boolean whole = checked.standing() == line.finding().verdict().standing();
        return new TableLine(
                number(checked.balloon(), line),
                check(line),
                drawing.place(line.step().drawing()),
                name(line, drawing.which(checked)),
                figure.limits(line.step()),
                result(checked),
                whole ? pictures.mark(line) : Optional.empty(),
                gauges(line),
                Optional.of(checked.standing()),
                whole ? figure.beside(line) : List.of(),
                checked.standing() == VerdictKind.PASS && !whole ? List.of() : figure.signed(line));
    }

    /** On the drawing; in a plan that names no balloon at all, that of the check. */
    private String number(Optional<BalloonNumber> balloon, Line line) {
        return matter.plan().isBallooned()
                ? balloon.map(Object::toString).orElse("")
                : String.valueOf(line.step().number());
    }

    private String check(Line line) {
        return matter.plan().isBallooned() ? String.valueOf(line.step().number()) : "";
    }

    /** Its name, the words of the drawing unless the name has them, how often it is there, and how it is judged. */
    private RunIn name(Line line, String which) {
        String name = line.step().name();
        String asked = matter.words().readable(line.step().drawing().requirement());
        RunIn said = new RunIn(wrapping).add(name, Style.SMALL_BOLD);
        if (!name.contains(asked)) {
            said.add(asked, Style.SMALL);
        }
        return said.add(designator(line.step().drawing()), Style.SMALL_BOLD)
                .add(product(line), Style.SMALL)
                .add(which, Style.SMALL_BOLD)
                .add(together(line.finding()), Style.SMALL);
    }

    private String designator(OnDrawing on) {
        return on.designator().map(key -> matter.say("record.designator", key)).orElse("");
    }

    private String product(Line line) {
        return line.step()
                .check()
                .asDocument()
                .filter(document -> document.proof().isOfProduct())
                .map(document -> matter.words().sentence(matter.words().say("record.product", document.proof())) + " "
                        + new DocumentWords(matter.words()).specified(document.specified()))
                .orElse("");
    }

    /** How several readings become one size; where each is judged, the least and the greatest say it. */
    private String together(Finding finding) {
        int places =
                finding.check().asWorked().map(worked -> worked.places().size()).orElseGet(finding::readingsInAll);
        return finding.check()
                .asDimension()
                .filter(size -> places > 1 && size.combine() != Combine.EACH)
                .map(size -> matter.say(
                        matter.words().key("record.together", size.combine()), places, ModifierWords.behind(size)))
                .orElse("");
    }

    private RunIn result(AccountLine.Checked checked) {
        Finding finding = checked.line().finding();
        String found = isOfProduct(checked.line())
                ? checked.line()
                        .pass()
                        .giving()
                        .map(giving -> new DocumentWords(matter.words()).whole(giving.document()))
                        .orElse("")
                : drawing.result(checked);
        return new RunIn(wrapping)
                .add(found, Style.SMALL_BOLD)
                .add(
                        finding.greatestBesideDeciding()
                                .map(greatest -> matter.say(
                                        "record.highest",
                                        FigureText.sum(finding, greatest).value()))
                                .orElse(""),
                        Style.SMALL)
                .add(matter.sentences().answeredBeside(finding), Style.SMALL)
                .add(where(checked.line()), Style.SMALL);
    }

    /** Who or what proves what is not measured here. */
    private String where(Line line) {
        return line.step()
                .check()
                .asDocument()
                .map(DocumentCheck::where)
                .filter(where -> !where.isEmpty())
                .map(where -> matter.say("document.where", where))
                .orElse("");
    }

    private String gauges(Line line) {
        Stream<String> read = line.finding().measured().stream()
                .map(Measured::reading)
                .flatMap(reading -> reading.setting().stream())
                .map(setting -> setting.gauge().id());
        Stream<String> answered = matter.story(line).answers().stream()
                .filter(Taken::counts)
                .flatMap(taken -> taken.setting().stream())
                .map(setting -> setting.gauge().id());
        return matter.words().list(Stream.concat(read, answered).distinct().toList());
    }
}
