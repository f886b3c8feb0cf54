package org.tenthwise.app.ui.home;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import org.tenthwise.app.text.Dates;
import org.tenthwise.model.words.Words;

/** A moment as people say it: the hour today, yesterday, the day of the week within a week, otherwise the date. */
record When(OffsetDateTime now, Words words) {

    private static final int WEEK = 7;

    String of(OffsetDateTime moment) {
        OffsetDateTime here = moment.withOffsetSameInstant(now.getOffset());
        LocalDate day = here.toLocalDate();
        long ago = ChronoUnit.DAYS.between(day, now.toLocalDate());
        if (ago == 0) {
            return new Dates(words).hour(here);
        }
        if (ago == 1) {
            return words.say("home.when.yesterday");
        }
        return ago > 1 && ago < WEEK ? new Dates(words).weekday(here) : new Dates(words).day(here);
    }

    String today() {
        return new Dates(words).dayAndHour(now);
    }
}
