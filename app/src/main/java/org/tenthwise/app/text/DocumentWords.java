package org.tenthwise.app.text;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.model.plan.Specified;
import org.tenthwise.model.quantity.Written;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.words.Words;

/** A document in words: on screens, in stories and in the printed record alike. */
public final class DocumentWords {

    private final Words words;

    public DocumentWords(Words words) {
        this.words = words;
    }

    /** What it is called: its number, or that it is not there yet. */
    public String numbered(Document document) {
        return document.number().isEmpty() ? words.say("document.awaited") : document.number();
    }

    /** The same with its figures, where it gives any. */
    public String told(Document document) {
        return document.figures().isEmpty()
                ? numbered(document)
                : words.say("document.with-figures", numbered(document), figures(document));
    }

    /** All of it: number, date, what it says, who says so, and its figures. */
    public String whole(Document document) {
        String day = new Dates(words).day(document.dated());
        if (document.says() == Document.Says.NOT_YET) {
            return words.say("document.awaited-since", day, document.by());
        }
        String said = words.say(
                "document.whole", numbered(document), day, words.say("document.said", document.says()), document.by());
        return document.figures().isEmpty() ? said : words.say("document.with-figures", said, figures(document));
    }

    /** Its figures as typed, in their order. */
    public String figures(Document document) {
        List<String> figures =
                document.figures().stream().map(Written::toString).toList();
        return words.list(figures);
    }

    /** What the drawing or the order names of a material, a process or a test; empty where neither names anything. */
    public String specified(Specified specified) {
        return words.list(Stream.of(
                        said("document.specification", specified.specification()),
                        said("document.form", specified.form()),
                        said("document.code", specified.code()),
                        said("document.supplier", specified.supplier()))
                .filter(part -> !part.isEmpty())
                .toList());
    }

    private String said(String key, String value) {
        return value.isEmpty() ? "" : words.say(key, value);
    }
}
