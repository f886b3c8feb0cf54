package org.tenthwise.app.ui.documents;

import java.util.Optional;
import org.tenthwise.app.text.DocumentWords;
import org.tenthwise.app.text.DrawingWords;
import org.tenthwise.app.text.Sentences;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.run.Pass;
import org.tenthwise.model.verdict.VerdictKind;
import org.tenthwise.model.words.Words;

/**
 * Something that a document proves.
 *
 * @param step its number in the plan
 * @param balloon of the drawing, where it is another number than that of the step; else empty
 * @param asked what is asked for, where it is proven, and what the drawing or the order names of it; may be empty
 * @param document the one that counts: its number, its date, what it says and who says so; empty while there is none
 * @param distance of its figures from their limits, or why they prove nothing; may be empty
 * @param settled whether nothing more is to be done about it
 */
public record DocumentRow(
        int step,
        String name,
        String balloon,
        String asked,
        String document,
        VerdictKind standing,
        String verdict,
        String distance,
        boolean settled) {

    static DocumentRow of(Line line, Sheet sheet, Words words) {
        Sentences sentences = new Sentences(words);
        VerdictKind standing = line.finding().verdict().standing();
        Optional<Pass.Giving> giving = sheet.run().pass(line.step()).giving();
        boolean says = giving.isPresent()
                && (standing == VerdictKind.OPEN
                        || line.finding().verdict().margin().isPresent());
        return new DocumentRow(
                line.step().number(),
                words.readable(line.step().name()),
                DrawingWords.apart(line.step())
                        .map(new DrawingWords(words)::balloon)
                        .orElse(""),
                sentences.asked(line.finding()),
                giving.map(Pass.Giving::document)
                        .map(new DocumentWords(words)::whole)
                        .orElse(""),
                standing,
                sentences.standing(line.finding()),
                says ? sentences.distance(line.finding()) : "",
                line.settled());
    }

    /** All of it, for those who listen. */
    String spoken(Words words) {
        return words.spoken(step + " " + name, balloon, asked, document, verdict, distance);
    }
}
