package org.tenthwise.model.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.Unit;
import org.tenthwise.model.words.Message;
import org.tenthwise.model.words.Refused;

/**
 * Takes a designation apart. Signs that look alike in print, and blanks round them, make no difference, nor do capitals
 * but in the class of a metric or trapezoidal thread, where they tell the nut from the screw. A decimal comma is
 * refused, as it is in every figure of a file.
 */
final class DesignationReader {

    private static final int LONGEST = 60;
    private static final String FIGURE = "(\\d{1,4}(?:\\.\\d{1,5})?|\\.\\d{1,5})";
    private static final String COUNT = "(\\d{1,4}(?:\\.\\d{1,5})?|\\.\\d{1,5}|\\d{1,2}(?: | ?- ?)\\d/\\d)";
    private static final String SIZE = "((?:#|No\\.? ?)?[\\d ./]+?(?: ?- ?\\d{1,3}/\\d{1,3})?)";
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");
    private static final Pattern TIMES = Pattern.compile("[×*]");
    private static final Pattern DASH = Pattern.compile("[‐‑–—−]");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern LEFT_HAND = anyCase("^(.*?)[- ]?(?<![A-Z])LH(?![A-Z0-9])(.*)$");
    private static final Pattern METRIC =
            anyCase("M ?" + FIGURE + "(?: ?x ?(?:Ph ?" + FIGURE + " ?P ?)?" + FIGURE + ")?[- ]+(\\w+)");
    private static final Pattern TRAPEZOIDAL =
            anyCase("Tr ?" + FIGURE + " ?x ?" + FIGURE + "(?: ?\\(? ?P ?" + FIGURE + " ?\\)?)?[- ]+(\\w+)");
    private static final Pattern INCH = anyCase(SIZE + " ?- ?(?:" + COUNT + "|" + FIGURE + "P ?- ?" + FIGURE + "L)[- ]*"
            + "(UNR?[CFS]|UNR?EF|UNR?|STUB[- ]ACME|ACME)[- ]+(\\w+)");

    private DesignationReader() {}

    static ThreadDesignation read(String text) {
        if (text.length() > LONGEST) {
            throw new Refused("model.designation-reader.thread-designation", LONGEST);
        }
        if (DECIMAL_COMMA.matcher(text).find()) {
            throw new Refused(
                    "model.designation-reader.decimal-comma",
                    text,
                    DECIMAL_COMMA.matcher(text).replaceAll("."));
        }
        String tidy = BLANKS.matcher(DASH.matcher(TIMES.matcher(text.strip()).replaceAll("x"))
                        .replaceAll("-"))
                .replaceAll(" ");
        Matcher left = LEFT_HAND.matcher(tidy);
        boolean leftHand = left.matches();
        String rest = leftHand ? left.group(1) + left.group(2) : tidy;
        Matcher metric = METRIC.matcher(rest);
        Matcher trapezoidal = TRAPEZOIDAL.matcher(rest);
        Matcher inch = INCH.matcher(rest);
        if (metric.matches()) {
            return metric(metric, text, leftHand);
        }
        if (trapezoidal.matches()) {
            return trapezoidal(trapezoidal, text, leftHand);
        }
        if (inch.matches()) {
            return inch(inch, text, leftHand);
        }
        throw new Refused("model.designation-reader.thread-designation-class", text);
    }

    private static Pattern anyCase(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    private static ThreadDesignation metric(Matcher read, String text, boolean leftHand) {
        Length diameter = millimetres(read.group(1));
        Length pitch = Optional.ofNullable(read.group(3))
                .map(DesignationReader::millimetres)
                .or(() -> ThreadSeries.coarsePitch(diameter))
                .orElseThrow(() -> new Refused("model.designation-reader.names-pitch", text, diameter));
        int starts = Optional.ofNullable(read.group(2))
                .map(lead -> starts(millimetres(lead), pitch, text))
                .orElse(1);
        return designation(
                thread(ThreadForm.METRIC, diameter, pitch, starts, text), read.group(4), Optional.empty(), leftHand);
    }

    /** Behind the diameter stands the lead, and behind it the pitch if it is not the lead. */
    private static ThreadDesignation trapezoidal(Matcher read, String text, boolean leftHand) {
        Length lead = millimetres(read.group(2));
        Length pitch = Optional.ofNullable(read.group(3))
                .map(DesignationReader::millimetres)
                .orElse(lead);
        ScrewThread thread =
                thread(ThreadForm.TRAPEZOIDAL, millimetres(read.group(1)), pitch, starts(lead, pitch, text), text);
        return designation(thread, read.group(4), Optional.empty(), leftHand);
    }

    private static ThreadDesignation inch(Matcher read, String text, boolean leftHand) {
        String form = read.group(5).toUpperCase(Locale.ROOT);
        boolean unified = form.startsWith("UN");
        Length pitch = read.group(2) != null ? pitch(read.group(2), text) : Length.of(read.group(3), Unit.INCH);
        int starts = read.group(2) != null ? 1 : starts(Length.of(read.group(4), Unit.INCH), pitch, text);
        ThreadForm threadForm =
                unified ? ThreadForm.UNIFIED : form.startsWith("STUB") ? ThreadForm.STUB_ACME : ThreadForm.ACME;
        Length diameter = InchSize.read(read.group(1).strip(), text, size -> unified && lists(threadForm, size, pitch));
        Optional<String> series = unified ? Optional.of(form.replace("UNR", "UN")) : Optional.empty();
        return designation(
                thread(threadForm, diameter, pitch, starts, text),
                read.group(6).toUpperCase(Locale.ROOT),
                series,
                leftHand);
    }

    private static boolean lists(ThreadForm form, Length diameter, Length pitch) {
        return diameter.isAbove(pitch.plus(pitch)) && ThreadSeries.lists(new ScrewThread(form, diameter, pitch, 1));
    }

    private static ScrewThread thread(ThreadForm form, Length diameter, Length pitch, int starts, String text) {
        try {
            return new ScrewThread(form, diameter, pitch, starts).nominal();
        } catch (Refused e) {
            throw new Refused(Message.of("model.designation-reader.thread-can", text, e.why()), e);
        }
    }

    private static ThreadDesignation designation(
            ScrewThread thread, String threadClass, Optional<String> series, boolean leftHand) {
        return new ThreadDesignation(
                thread, ThreadClass.of(thread.form(), threadClass), Optional.empty(), series, leftHand);
    }

    private static Length millimetres(String figure) {
        return Length.of(figure, Unit.MILLIMETRE);
    }

    /** From threads to the inch, a decimal or a whole number and a fraction. */
    private static Length pitch(String threadsToTheInch, String text) {
        return ScrewThread.pitchOf(notZero(InchSize.count(threadsToTheInch, text), text));
    }

    private static int starts(Length lead, Length pitch, String text) {
        BigDecimal starts = lead.millimetres()
                .divide(notZero(pitch.millimetres(), text), 6, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        if (starts.scale() > 0 || starts.signum() <= 0) {
            throw new Refused("model.designation-reader.lead-once", text);
        }
        return starts.intValueExact();
    }

    private static BigDecimal notZero(BigDecimal figure, String text) {
        if (figure.signum() == 0) {
            throw new Refused("model.designation-reader.pitch-zero", text);
        }
        return figure;
    }
}
