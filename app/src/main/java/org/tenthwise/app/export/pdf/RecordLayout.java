package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.IntStream;
import org.tenthwise.app.export.Evidence;
import org.tenthwise.app.export.RecordFormat;
import org.tenthwise.app.picture.TextMetrics;
import org.tenthwise.model.words.Words;

/** The pages of a record: those a file is written from are those that are shown. */
public final class RecordLayout {

    private final Words words;
    private final Paper paper;
    private final TextMetrics lettering;
    private final List<RecordFormat> enclosed;

    /** @param formats of the same record; those that are whole travel inside the printed one */
    public RecordLayout(Words words, Paper paper, List<RecordFormat> formats) {
        this.words = words;
        this.paper = paper;
        this.lettering = new TextMetrics(words);
        this.enclosed = formats.stream().filter(RecordFormat::isWhole).toList();
    }

    Words words() {
        return words;
    }

    Paper paper() {
        return paper;
    }

    TextMetrics lettering() {
        return lettering;
    }

    List<RecordFormat> enclosed() {
        return enclosed;
    }

    List<Page> leaves(Evidence evidence) {
        return new RecordPages(words, paper, lettering, enclosed).of(evidence);
    }

    /** The same, each as a picture of its own. */
    public List<PagePicture> pages(Evidence evidence) {
        List<Page> leaves = leaves(evidence);
        return IntStream.range(0, leaves.size())
                .mapToObj(i -> new PagePicture(leaves.get(i), paper, words.say("record.page", i + 1, leaves.size())))
                .toList();
    }
}
