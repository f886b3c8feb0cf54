package org.tenthwise.app.firstarticle;

import java.util.List;
import java.util.stream.Stream;
import org.tenthwise.app.text.Dates;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.Lack;
import org.tenthwise.model.firstarticle.ReportNote;
import org.tenthwise.model.run.ReportRole;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Words;

/** What is said about a report, on screens, in commands and on the forms alike. */
public final class ReportWords {

    private final Words words;

    public ReportWords(Words words) {
        this.words = words;
    }

    /** "Complete", or "Not complete". */
    public String state(FirstArticle article) {
        return words.say(article.isComplete() ? "report.complete" : "report.not-complete");
    }

    /** Why it is not complete, a sentence each; empty where it is. */
    public List<String> open(FirstArticle article) {
        return article.open().stream().map(this::open).toList();
    }

    /** One of them. */
    public String open(Lack lack) {
        return words.say(said(lack));
    }

    static Message said(Lack lack) {
        return Message.ofValue(
                "report.open", lack.why(), lack.what(), lack.what().size());
    }

    /** What should be known besides, a sentence each. */
    public List<String> notes(FirstArticle article) {
        return article.notes().stream().map(this::note).toList();
    }

    private String note(ReportNote note) {
        return switch (note.of()) {
            case LAPSE ->
                words.say(
                        "report.note.lapse", note.values().get(0), note.values().get(1));
            case NOT_SAID -> words.say("report.note.not-said", note.values());
            case SEVERAL_ISSUES -> words.say("report.note.issues", note.values());
        };
    }

    /** Who signed as what, and when; that nobody has, where that is so. */
    public String signed(ArticleReport report) {
        List<String> signed = Stream.of(ReportRole.values())
                .flatMap(role -> report.kept().flatMap(kept -> kept.signedAs(role)).stream()
                        .map(entry -> words.say(
                                "report.signed-by",
                                words.say("report.role", role),
                                KeptReport.name(entry),
                                new Dates(words).day(entry.at()))))
                .toList();
        return signed.isEmpty() ? words.say("report.signed.not-yet") : words.list(signed);
    }

    /** By which edition the forms are arranged. */
    public String arranged(FirstArticle article) {
        return words.say("report.arranged", article.asked().edition().name());
    }

    /** What no report here is. */
    public String noRelease() {
        return words.say("report.no-release");
    }
}
