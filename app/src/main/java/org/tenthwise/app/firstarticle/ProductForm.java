package org.tenthwise.app.firstarticle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.plan.ProofOf;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.words.Words;

/**
 * The form of materials, special processes and functional tests as a table. Whether the customer has approved a source
 * nobody here knows: that column is blank.
 */
public final class ProductForm {

    private static final List<String> KEYS = List.of(
            "product",
            "specification",
            "code",
            "supplier",
            "approval",
            "certificate-no",
            "test-procedure",
            "test-report",
            "product-comments");
    private static final int FIRST = 5;

    private final FirstArticle article;
    private final Words words;

    public ProductForm(FirstArticle article, Words words) {
        this.article = article;
        this.words = words;
    }

    /** Its fields as heads, a row each material, process and test. */
    public FormTable table() {
        List<String> heads = new ArrayList<>();
        for (int place = 0; place < KEYS.size(); place++) {
            heads.add(new NumberedField(String.valueOf(FIRST + place), KEYS.get(place)).head(words));
        }
        return new FormTable(heads, rows());
    }

    /** One a material, process or test and paper, with the runs it is of where there are several. */
    private List<List<String>> rows() {
        Map<List<String>, List<String>> rows = new LinkedHashMap<>();
        article.products().forEach(product -> rows.computeIfAbsent(cells(product.line()), first -> new ArrayList<>())
                .add(article.column(product.column())));
        List<List<String>> all = new ArrayList<>();
        boolean materialNamed = article.plan().steps().stream()
                .flatMap(step -> step.check().asDocument().stream())
                .anyMatch(check -> check.proof() == ProofOf.MATERIAL);
        if (!materialNamed
                && !article.asked().isPartial()
                && !article.plan().material().isBlank()) {
            all.add(ofThePlan());
        }
        rows.forEach((cells, runs) -> all.add(with(cells, runs)));
        return all;
    }

    private List<String> with(List<String> cells, List<String> runs) {
        if (article.runs().size() == 1) {
            return cells;
        }
        List<String> more = new ArrayList<>(cells);
        int last = more.size() - 1;
        more.set(last, words.say("report.more.of", words.list(runs), more.get(last)));
        return more;
    }

    /** The material as the plan names it, and the lots of the runs. */
    private List<String> ofThePlan() {
        List<String> lots = article.runs().stream()
                .map(sheet -> sheet.run().begun().lot())
                .filter(lot -> !lot.isBlank())
                .distinct()
                .toList();
        return List.of(
                article.plan().material(),
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                lots.isEmpty() ? "" : words.say("report.lot", lots));
    }

    private List<String> cells(Line line) {
        DocumentCheck check = line.step().check().asDocument().orElseThrow();
        boolean test = check.proof() == ProofOf.TEST;
        Specified of = check.specified();
        Optional<Document> document = line.pass().giving().map(giving -> giving.document());
        String number = document.map(Document::number).orElse("");
        String specification = words.list(Stream.of(of.specification(), of.form())
                .filter(said -> !said.isEmpty())
                .toList());
        return List.of(
                test ? "" : line.step().name(),
                test ? "" : specification,
                of.code(),
                of.supplier(),
                "",
                test ? "" : number,
                test ? specification.isEmpty() ? line.step().name() : specification : "",
                test ? number : "",
                comments(line, document, test));
    }

    /** What the paper says, of which day, by whom; a test by its name before that. */
    private String comments(Line line, Optional<Document> document, boolean test) {
        String said = document.map(given -> given.says() == Document.Says.NOT_YET
                        ? new DocumentWords(words).numbered(given)
                        : words.say(
                                "report.product.says",
                                words.say("document.said", given.says()),
                                given.dated().toString(),
                                given.by()))
                .orElseGet(() -> words.say("report.product.open"));
        return test ? words.say("report.more.of", line.step().name(), said) : said;
    }
}
