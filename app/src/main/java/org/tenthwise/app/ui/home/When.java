package org.tenthwise.app.ui.home;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.tenthwise.model.words.Words;

/** A moment as people say it: the hour today, yesterday, the day of the week within a week, otherwise the date. */
record When(OffsetDateTime now, Words words) {

    private static final int WEEK = 7;

    String of(OffsetDateTime moment) {
        OffsetDateTime here = moment.withOffsetSameInstant(now.getOffset());
        LocalDate day = here.toLocalDate();
        long ago = ChronoUnit.DAYS.between(day, now.toLocalDate());
        if (ago == 0) {
            return formatted(here, "home.when.hour");
        }
        if (ago == 1) {
            return words.say("home.when.yesterday");
        }
        return formatted(here, ago > 1 && ago < WEEK ? "home.when.weekday" : "home.when.date");
    }

    String today() {
        return formatted(now, "home.when.today");
    }

    private String formatted(OffsetDateTime moment, String pattern) {
        return moment.format(DateTimeFormatter.ofPattern(words.say(pattern), Locale.ENGLISH));
    }
}
