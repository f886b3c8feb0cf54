package org.tenthwise.app.firstarticle;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tenthwise.model.firstarticle.FirstArticle;
import org.tenthwise.model.firstarticle.FoundInRun;
import org.tenthwise.model.gauge.Calibration;
import org.tenthwise.model.gauge.Gauge;
import org.tenthwise.model.gauge.Setting;
import org.tenthwise.model.record.AccountLine;
import org.tenthwise.model.record.GaugesUsed;
import org.tenthwise.model.record.PassStory;
import org.tenthwise.model.record.Sheet;
import org.tenthwise.model.record.Taken;
import org.tenthwise.model.run.Document;
import org.tenthwise.model.run.Entry;

/** What stands behind a result: gauges, papers, people and times of all that counts, and of nothing struck out. */
final class Behind {

    private final Optional<AccountLine.Checked> checked;
    private final Optional<PassStory> story;
    private final Sheet sheet;

    Behind(FirstArticle article, FoundInRun result) {
        this.sheet = article.runs().get(result.column());
        this.checked = result.checked();
        this.story = checked.flatMap(
                of -> PassStory.of(sheet.run(), of.line()).stream().reduce((earlier, later) -> later));
    }

    /** Marks of the gauges it was read or tried with. */
    String gauges() {
        return joined(Stream.concat(
                        measuredWith(),
                        story.stream()
                                .flatMap(of -> of.answers().stream())
                                .filter(Taken::counts)
                                .flatMap(taken -> taken.setting().stream()))
                .map(Setting::gauge)
                .map(Gauge::id));
    }

    private Stream<Setting> measuredWith() {
        return checked.stream()
                .flatMap(of -> of.measured().stream())
                .flatMap(measured -> measured.reading().setting().stream());
    }

    /** Certificates of the gauges and of what they were set on, each behind its mark; those that are known. */
    String certificates() {
        return ofGauges(calibration -> calibration.certificate());
    }

    /** Until when these are calibrated. */
    String due() {
        return ofGauges(
                calibration -> calibration.due().map(LocalDate::toString).orElse(""));
    }

    /** Those it was read with past their due day. */
    List<GaugesUsed.Used> pastDue() {
        return checked.stream()
                .flatMap(of -> GaugesUsed.behind(sheet, of.line()).stream())
                .filter(used -> used.pastDue().isPresent())
                .toList();
    }

    private String ofGauges(Function<Calibration, String> said) {
        return checked.stream()
                .flatMap(of -> GaugesUsed.behind(sheet, of.line()).stream())
                .filter(used -> !said.apply(used.calibration()).isEmpty())
                .map(used -> used.what().mark() + ": " + said.apply(used.calibration()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** Number of the paper that proves it. */
    String document() {
        return joined(story.stream()
                .flatMap(of -> of.documents().stream())
                .filter(Taken::counts)
                .map(taken -> taken.what().document())
                .map(Document::number)
                .filter(number -> !number.isEmpty()));
    }

    /** Who read, answered or entered it. */
    String people() {
        return joined(entries().stream().map(Entry::by));
    }

    /** When the last of it was entered, to the second; empty where nothing was. */
    String last() {
        return entries().stream()
                .map(Entry::at)
                .max(Comparator.comparing(OffsetDateTime::toInstant))
                .map(at -> at.truncatedTo(ChronoUnit.SECONDS).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME))
                .orElse("");
    }

    /** Of what counts; readings are those of the instances it tells of. */
    private List<Entry> entries() {
        return Stream.concat(
                        checked.stream().flatMap(of -> of.measured().stream()).map(measured -> measured.reading()
                                .entry()),
                        story.stream()
                                .flatMap(of -> Stream.concat(of.answers().stream(), of.documents().stream()))
                                .filter(Taken::counts)
                                .map(Taken::entry))
                .toList();
    }

    private static String joined(Stream<String> texts) {
        return texts.distinct().collect(Collectors.joining(" "));
    }
}
