package org.tenthwise.app.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.plan.DocumentCheck;
import org.tenthwise.model.record.DocumentFinding;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/** What is said of what a document proves. */
final class DocumentSentences extends FindingSentences {

    private final DocumentFinding finding;
    private final DocumentWords documents;

    DocumentSentences(DocumentFinding finding, Words words) {
        super(finding, words);
        this.finding = finding;
        this.documents = new DocumentWords(words);
    }

    /** What is asked for, where it is proven, and what the drawing or the order names of it. */
    @Override
    String asked() {
        DocumentCheck check = finding.check();
        String where = check.where().isEmpty() ? "" : words.say("document.where", check.where());
        return Stream.of(check.what(), where, documents.specified(check.specified()))
                .filter(part -> !part.isEmpty())
                .map(words::sentence)
                .collect(Collectors.joining(" "));
    }

    /** The verdict of figures by their distance; of a document that is not there, that it is to come. */
    @Override
    String distance() {
        if (finding.verdict().standing() == VerdictKind.OPEN) {
            return finding.document()
                    .filter(document -> document.says() != Document.Says.NOT_YET)
                    .map(document -> words.say("document.proves-nothing"))
                    .orElseGet(() -> words.say("document.to-come"));
        }
        return finding.verdict().margin().isEmpty() ? words.say("document.says", said()) : super.distance();
    }

    private String said() {
        return finding.document().map(Document::by).orElse("");
    }

    /** Its number, with the figures it gives. */
    @Override
    String value() {
        return finding.document().map(documents::told).orElse("");
    }

    /** Its number alone. */
    @Override
    String listed() {
        return finding.document().map(documents::numbered).orElse("");
    }

    /** Nobody cuts, measures or looks here: another paper, or a decision. */
    @Override
    Optional<ToDo> failed() {
        return Optional.of(ToDo.of(words.say("document.failed")));
    }

    @Override
    List<Weighed> remarks() {
        return List.of();
    }
}
