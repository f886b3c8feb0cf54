package org.tenthwise.app.export.qif;

import java.util.stream.Collectors;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.words.Word;

/** What a paper says, in one text. */
final class DocumentFacts {

    private DocumentFacts() {}

    static NamedFacts of(Document document) {
        return new NamedFacts()
                .and("document", document.number())
                .and("dated", document.dated().toString())
                .and("says", Word.of(document.says()))
                .and("said-by", document.by())
                .and(
                        "figures",
                        document.figures().stream().map(Written::toString).collect(Collectors.joining(", ")));
    }
}
