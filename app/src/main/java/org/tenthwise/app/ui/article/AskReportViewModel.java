package org.tenthwise.app.ui.article;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.tenthwise.app.firstarticle.KeptReport;
import org.tenthwise.app.firstarticle.Proposed;
import org.tenthwise.app.firstarticle.ReportShelf;
import org.tenthwise.app.ui.form.Field;
import org.tenthwise.app.ui.form.FormViewModel;
import org.tenthwise.app.ui.shell.LedgerTasks;
import org.tenthwise.app.ui.shell.Navigator;
import org.tenthwise.app.ui.shell.Notice;
import org.tenthwise.model.plan.PartId;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.words.Refused;
import org.tenthwise.model.words.Words;

/** What is asked for a report that no run knows, with what runs and earlier reports say lying ready. */
public final class AskReportViewModel {

    private static final int SHORT = 40;
    private static final int LONG = 200;
    /** As many as can be seen without turning the page. */
    private static final int SHOWN = 5;

    private final String part;
    private final List<String> runs;
    private final ReportShelf shelf;
    private final LedgerTasks tasks;
    private final Words words;
    private final Navigator navigator;
    private final List<String> people;
    private final Field<String> identifier;
    private final Field<ReportAsked.Extent> extent;
    private final Field<String> baseline;
    private final Field<String> affected;
    private final Field<String> reason;
    private final Field<ReportAsked.Edition> edition;
    private final Field<String> organization;
    private final Field<String> supplierCode;
    private final Field<String> order;
    private final Field<String> route;
    private final Field<String> changes;
    private final Field<String> comments;
    private final Field<String> who;
    private final FormViewModel form;
    private final ReadOnlyStringWrapper joined = new ReadOnlyStringWrapper("");
    private Optional<PartId> revision = Optional.empty();

    /** @param people names to be offered */
    public AskReportViewModel(
            String part,
            List<String> runs,
            List<String> people,
            ReportShelf shelf,
            LedgerTasks tasks,
            Words words,
            Navigator navigator) {
        this.part = part;
        this.runs = List.copyOf(runs);
        this.people = List.copyOf(people);
        this.shelf = shelf;
        this.tasks = tasks;
        this.words = words;
        this.navigator = navigator;
        identifier = mark("identifier", true);
        edition = Field.choice(
                "edition", name("edition"), question("edition"), one -> words.say("report.ask.edition-is", one.name()));
        edition.offer(List.of(ReportAsked.Edition.C, ReportAsked.Edition.B));
        extent = Field.choice("extent", name("extent"), question("extent"), one -> words.say("report.extent", one));
        extent.offer(List.of(ReportAsked.Extent.values()));
        reason = text("reason", true, LONG);
        baseline = text("baseline", true, LONG);
        affected = text("affected", true, LONG);
        organization = text("organization", true, LONG);
        supplierCode = mark("supplier-code", false);
        order = mark("order", false);
        route = mark("route", false);
        changes = text("changes", false, LONG).onlyIfWanted();
        comments = text("comments", false, LONG).onlyIfWanted();
        who = text("who", true, SHORT);
        form = new FormViewModel(
                List.of(
                        identifier,
                        edition,
                        extent,
                        reason,
                        baseline,
                        affected,
                        organization,
                        supplierCode,
                        order,
                        route,
                        changes,
                        comments,
                        who),
                words,
                words.say("report.ask.act"),
                this::drawUp);
        form.about(identifier);
        extent.valueProperty().subscribe(chosen -> {
            boolean partial = chosen.filter(ReportAsked.Extent.PARTIAL::equals).isPresent();
            baseline.askedProperty().set(partial);
            affected.askedProperty().set(partial);
        });
    }

    private String name(String key) {
        return words.say("report.ask." + key);
    }

    private String question(String key) {
        return words.say("report.ask." + key + ".question");
    }

    private Field<String> mark(String key, boolean required) {
        return Field.mark(key, name(key), question(key), required, SHORT);
    }

    private Field<String> text(String key, boolean required, int most) {
        return Field.words(key, name(key), question(key), required, most);
    }

    public FormViewModel form() {
        return form;
    }

    /** The part and the runs it is of. */
    public ReadOnlyStringProperty joinedProperty() {
        return joined.getReadOnlyProperty();
    }

    public void load() {
        tasks.run(() -> shelf.proposed(part, runs), this::ready);
        tasks.run(shelf::reports, this::ready);
        who.offer(people);
    }

    private void ready(Proposed proposed) {
        ReportAsked asked = proposed.asked();
        revision = Optional.of(asked.part());
        joined.set(words.say(
                "report.ask.joined",
                words.say(
                        "ask.part-revision", asked.part().number(), asked.part().revision()),
                proposed.runs(),
                proposed.runs().size()));
        take(identifier, asked.identifier());
        if (asked.isPartial()) {
            extent.choice().choose(ReportAsked.Extent.PARTIAL);
        }
        take(reason, asked.reason());
        take(baseline, asked.baseline());
        take(affected, String.join(",", asked.affected()));
        take(order, asked.order());
        take(changes, String.join(",", asked.changes()));
    }

    /** What runs say stands there already and can be chosen otherwise. */
    private static void take(Field<String> field, String said) {
        if (!said.isBlank() && field.valueProperty().get().isEmpty()) {
            field.offer(List.of(said));
            field.choice().choose(said);
        }
    }

    /** What earlier reports say is offered, and chosen by nobody but who draws this one up. */
    private void ready(List<KeptReport> before) {
        offer(organization, before, ReportAsked::organization);
        offer(supplierCode, before, ReportAsked::supplierCode);
        offer(route, before, ReportAsked::route);
        List<String> onThePart = before.stream()
                .map(KeptReport::asked)
                .filter(asked -> asked.part().number().equals(part))
                .map(asked -> words.say(
                        "report.ask.baseline-is",
                        words.say("ask.part-revision", part, asked.part().revision()),
                        asked.identifier()))
                .toList();
        if (baseline.valueProperty().get().isEmpty() && !onThePart.isEmpty()) {
            baseline.offer(onThePart);
        }
    }

    private static void offer(Field<String> field, List<KeptReport> before, Function<ReportAsked, String> of) {
        List<String> said = before.stream()
                .map(KeptReport::asked)
                .map(of)
                .filter(text -> !text.isBlank())
                .distinct()
                .limit(SHOWN)
                .toList();
        if (!said.isEmpty()) {
            field.offer(said);
        }
    }

    private void drawUp() {
        if (revision.isEmpty()) {
            return;
        }
        try {
            ReportAsked asked = asked(revision.get());
            form.busy(true);
            tasks.run(
                    () -> shelf.drawUp(asked, runs, who.reads()),
                    report -> navigator.articleReport(asked.identifier()),
                    () -> form.busy(false));
        } catch (Refused e) {
            navigator.tell(
                    Notice.plain(words.say("errand.refused"), words.say(e.why()), words.say("shell.understood")));
        }
    }

    private ReportAsked asked(PartId of) {
        boolean partial = extent.valueProperty()
                .get()
                .filter(ReportAsked.Extent.PARTIAL::equals)
                .isPresent();
        return new ReportAsked(
                identifier.reads(),
                of,
                edition.valueProperty().get().orElseThrow(),
                partial ? ReportAsked.Extent.PARTIAL : ReportAsked.Extent.FULL,
                reason.reads(),
                partial ? baseline.reads() : "",
                partial ? several(affected.reads()) : List.of(),
                order.reads(),
                organization.reads(),
                supplierCode.reads(),
                route.reads(),
                several(changes.reads()),
                false,
                comments.reads());
    }

    /** With commas between, or else with blanks. */
    private static List<String> several(String typed) {
        return Stream.of(typed.split(typed.contains(",") ? "," : "\\s"))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
    }
}
