package org.tenthwise.app.text;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.GaugeOrMaster;
import org.tenthwise.model.record.GaugesUsed;
import org.tenthwise.model.record.Line;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.words.Words;

/** By what certificate a gauge was calibrated, and until when. */
public final class CalibrationWords {

    private final Words words;
    private final Function<LocalDate, String> day;

    private CalibrationWords(Words words, Function<LocalDate, String> day) {
        this.words = words;
        this.day = day;
    }

    /** For a screen. */
    public CalibrationWords(Words words) {
        this(words, new Dates(words)::day);
    }

    /** For a record: year first, so that no reader takes the day for the month (ISO 8601). */
    public static CalibrationWords ofRecord(Words words) {
        return new CalibrationWords(words, LocalDate::toString);
    }

    /** What is said of it; that nothing is, where nothing is. */
    public String of(Calibration calibration) {
        return calibration.isStated()
                ? words.list(Stream.concat(
                                Stream.of(calibration.certificate())
                                        .filter(number -> !number.isEmpty())
                                        .map(number -> words.say("calibration.certificate", number)),
                                calibration.due().stream().map(due -> words.say("calibration.due", day.apply(due))))
                        .toList())
                : words.say("calibration.not-stated");
    }

    /** Its mark, and of what gauges are set on that it is such. */
    public String named(GaugeOrMaster what) {
        return what.kind().isPresent() ? what.mark() : words.say("calibration.master", what.mark());
    }

    /** A sentence for each gauge, or master, with which what counts at a check was read past its due day. */
    public List<String> pastDue(Sheet sheet, Line line) {
        return GaugesUsed.pastDue(sheet, line).stream()
                .map(used -> words.say("calibration.past.read", named(used.what()), due(used.calibration())))
                .toList();
    }

    /** The same of a whole run, with its checks. */
    public List<String> pastDue(Sheet sheet) {
        return GaugesUsed.pastDue(sheet).stream()
                .map(used -> words.say(
                        "calibration.past.run",
                        named(used.what()),
                        due(used.calibration()),
                        List.copyOf(used.pastDueAt()),
                        used.pastDueAt().size()))
                .toList();
    }

    /** What is to be known of a gauge that is past its due day before it is read. */
    public String pastDue(GaugeOrMaster what, Calibration calibration) {
        return words.say("calibration.past.next", named(what), due(calibration));
    }

    private String due(Calibration calibration) {
        return day.apply(calibration.due().orElseThrow());
    }
}
