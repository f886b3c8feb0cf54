package org.tenthwise.app.text;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import org.tenthwise.model.words.LocaleCustoms;
import org.tenthwise.model.words.Words;

/** Dates and hours as people write them where the words are spoken; hours from 0 to 24 everywhere. */
public record Dates(Words words) {

    public String hour(TemporalAccessor moment) {
        return of("Hm", moment);
    }

    public String weekday(TemporalAccessor moment) {
        return of("EEEE", moment);
    }

    public String day(TemporalAccessor moment) {
        return of("yMMMd", moment);
    }

    public String dayAndHour(TemporalAccessor moment) {
        return of("yMMMdHm", moment);
    }

    /** With what the clock was ahead of UTC. */
    public String moment(OffsetDateTime moment) {
        return dayAndHour(moment) + moment.format(DateTimeFormatter.ofPattern(" xxx"));
    }

    /** As the clock stood where it was: the hour alone on the day of {@code now}, otherwise the day with it. */
    public String lately(OffsetDateTime moment, OffsetDateTime now) {
        boolean today =
                now.withOffsetSameInstant(moment.getOffset()).toLocalDate().equals(moment.toLocalDate());
        return today ? hour(moment) : dayAndHour(moment);
    }

    private String of(String parts, TemporalAccessor moment) {
        return DateTimeFormatter.ofPattern(new LocaleCustoms(words.locale()).datePattern(parts), words.locale())
                .format(moment);
    }
}
