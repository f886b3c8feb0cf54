package org.tenthwise.app.firstarticle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.plan.Plan;
import org.tenthwise.model.run.Entry;
import org.tenthwise.model.run.ReportAsked;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.words.Words;

/** The form of the part: its fields in the order of the standard, blank where the tool cannot know. */
public final class PartForm {

    /** A field and what stands in it. */
    public record Filled(NumberedField field, String value) {}

    private static final int DIGITS_OF_HASH = 12;

    private final ArticleReport report;
    private final FirstArticle article;
    private final ReportAsked asked;
    private final Words words;

    public PartForm(ArticleReport report, Words words) {
        this.report = report;
        this.article = report.article();
        this.asked = article.asked();
        this.words = words;
    }

    private boolean isOfC() {
        return asked.edition() == ReportAsked.Edition.C;
    }

    /** Fields 1 to 4, which head all three forms. */
    public List<Filled> head() {
        return List.of(
                filled("1", "part-number", asked.part().number()),
                filled("2", "part-name", article.plan().name()),
                filled("3", "serial", String.join("; ", article.serials())),
                filled("4", isOfC() ? "identifier" : "fair-number", asked.identifier()));
    }

    /** The part, the drawing and the order: fields 5 to 14. */
    public List<Filled> part() {
        Plan plan = article.plan();
        List<Filled> fields = new ArrayList<>(List.of(
                filled("5", "part-revision", asked.part().revision()),
                filled(
                        "6",
                        "drawing-number",
                        plan.drawing().number().orElse(plan.drawing().title())),
                filled("7", "drawing-revision", plan.drawing().revision().orElse("")),
                filled("8", "changes", String.join("; ", article.changes())),
                filled("9", "route", route()),
                filled("10", "organization", asked.organization()),
                filled("11", "supplier-code", asked.supplierCode()),
                filled("12", "order", asked.order()),
                filled("13", "detail", words.say(asked.assembly() ? "report.assembly" : "report.detail")),
                filled("14", "extent", words.say("report.extent", asked.extent())),
                filled("14", "baseline", asked.baseline()),
                filled("14", "reason", asked.reason())));
        return fields;
    }

    /** The route and what stands behind it here: the plan with its issue and hash, and the machine. */
    private String route() {
        List<String> plans = article.runs().stream()
                .map(sheet -> words.say(
                        "report.route",
                        sheet.plan().issue(),
                        sheet.plan().source().sha256().substring(0, DIGITS_OF_HASH)))
                .distinct()
                .toList();
        List<String> machines = article.runs().stream()
                .map(sheet -> sheet.run().begun().machine())
                .filter(machine -> !machine.isBlank())
                .distinct()
                .toList();
        List<String> said = new ArrayList<>();
        if (!article.route().isBlank()) {
            said.add(article.route());
        }
        said.addAll(plans);
        said.addAll(machines);
        return said.stream().collect(Collectors.joining("; "));
    }

    /** The index of an assembly, fields 15 to 18, which a report on a detail part leaves blank. */
    public List<Filled> index() {
        return List.of(
                filled("15", "index-part-number", ""),
                filled("16", "index-part-name", ""),
                filled("17", isOfC() ? "index-part-type" : "index-serial", ""),
                filled("18", isOfC() ? "index-identifier" : "index-fair-number", ""));
    }

    /** What it comes to, who signed, and what is for others to say: from field 19. */
    public List<Filled> end() {
        int next = isOfC() ? 20 : 19;
        List<Filled> fields = new ArrayList<>();
        if (isOfC()) {
            fields.add(filled(
                    "19", "has-nonconformance", words.say(article.hasNonconformance() ? "report.yes" : "report.no")));
        } else {
            fields.add(filled(
                    "", "complete", words.say(article.isComplete() ? "report.complete" : "report.not-complete")));
        }
        fields.addAll(signed(next, isOfC() ? "verified-by" : "signature", ReportRole.VERIFIED));
        fields.addAll(signed(next + 2, isOfC() ? "approved-by" : "reviewed-by", ReportRole.APPROVED));
        fields.add(filled(String.valueOf(next + 4), "customer-approval", ""));
        fields.add(filled(String.valueOf(next + 5), "date", ""));
        fields.add(isOfC() ? filled("26", "comments", asked.comments()) : filled("", "comments", asked.comments()));
        if (!report.movedOn().isEmpty()) {
            fields.add(filled("", "moved-on", String.join("; ", report.movedOn())));
        }
        return fields;
    }

    /** Signature and date at the foot of the second and the third form, which the earlier edition has. */
    public List<Filled> signedAtFoot(int form) {
        return isOfC() || form == 1 ? List.of() : signed(form == 2 ? 14 : 12, "signature", ReportRole.VERIFIED);
    }

    private List<Filled> signed(int number, String key, ReportRole role) {
        Optional<Entry> signature = report.kept().flatMap(kept -> kept.signedAs(role));
        return List.of(
                filled(
                        String.valueOf(number),
                        key,
                        signature.map(KeptReport::name).orElse("")),
                filled(
                        String.valueOf(number + 1),
                        "date",
                        signature
                                .map(entry -> entry.at().toLocalDate().toString())
                                .orElse("")));
    }

    /** Every field in its order. */
    public List<Filled> all() {
        List<Filled> fields = new ArrayList<>(head());
        fields.addAll(part());
        fields.addAll(index());
        fields.addAll(end());
        return fields;
    }

    /** The form as a table: number, name and what stands in the field. */
    public FormTable table() {
        return new FormTable(
                List.of(
                        words.say("report.column.number"),
                        words.say("report.column.name"),
                        words.say("report.column.value")),
                all().stream()
                        .map(filled ->
                                List.of(filled.field().number(), filled.field().name(words), filled.value()))
                        .toList());
    }

    private static Filled filled(String number, String key, String value) {
        return new Filled(new NumberedField(number, key), value);
    }
}
