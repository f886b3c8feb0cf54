package org.tenthwise.app.sums.written;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tenthwise.app.sums.SumValue;
import org.tenthwise.model.words.Message;

/**
 * One JSON object (RFC 8259) in one text, gone through key by key. A number is handed on as its digits stand; it is
 * never a binary fraction in between. Refused are keys that stand twice, nesting nobody means, halves of a character
 * and anything behind the object.
 */
public final class WrittenObject {

    /** Part, person and repeat are three; nothing a sum takes goes deeper than four. */
    private static final int MOST_NESTING = 8;

    private static final int NEAR = 24;
    private static final int NAMED = 60;
    /** A figure or a word without quotes, behind its key if it has one. */
    private static final Pattern BARE =
            Pattern.compile("(?:\"(?:[^\"\\\\]|\\\\.){0,200}\"\\s*:\\s*)?([\\p{L}\\d_./+-]+)");

    private static final Pattern VALUE = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?|true|false|null");
    private static final JsonFactory JSON = new JsonFactoryBuilder()
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_NESTING + 1)
                    .build())
            .build();

    private final String text;
    private final JsonParser parser;
    private final Set<String> seen = new HashSet<>();
    private Optional<String> last = Optional.empty();

    /** @throws NotJson if {@code text} does not begin an object */
    public WrittenObject(String text) throws NotJson {
        this.text = text;
        try {
            this.parser = JSON.createParser(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (next() != JsonToken.START_OBJECT) {
            throw text.isBlank() ? new NotJson("json.blank") : new NotJson("json.no-object", near(0));
        }
    }

    /** The whole of it. */
    public static Map<String, SumValue> read(String text) throws NotJson {
        WrittenObject object = new WrittenObject(text);
        Map<String, SumValue> values = new LinkedHashMap<>();
        for (Optional<String> key = object.nextKey(); key.isPresent(); key = object.nextKey()) {
            values.put(key.get(), object.value());
        }
        return values;
    }

    /** The next key, with its value now to be read; absent behind the last, when the text is at its end too. */
    public Optional<String> nextKey() throws NotJson {
        if (next() == JsonToken.END_OBJECT) {
            if (next() != null) {
                throw new NotJson("json.behind", near(offset()));
            }
            last = Optional.empty();
            return last;
        }
        last = Optional.of(key(seen));
        next();
        return last;
    }

    /** Whether the value under the key in hand is written as a number. */
    public boolean isNumber() {
        return parser.currentToken().isNumeric();
    }

    /** The value under the key in hand. */
    public SumValue value() throws NotJson {
        return value(1);
    }

    private SumValue value(int depth) throws NotJson {
        JsonToken token = parser.currentToken();
        if (token.isStructStart() && depth >= MOST_NESTING) {
            throw new NotJson("json.nested", named(last), MOST_NESTING);
        }
        return switch (token) {
            case START_ARRAY -> many(depth);
            case START_OBJECT -> table(depth);
            case VALUE_STRING, VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new SumValue.Text(characters());
            default -> new SumValue.Neither(characters());
        };
    }

    private SumValue many(int depth) throws NotJson {
        List<SumValue> values = new ArrayList<>();
        while (next() != JsonToken.END_ARRAY) {
            values.add(value(depth + 1));
        }
        return new SumValue.Many(values);
    }

    private SumValue table(int depth) throws NotJson {
        Map<String, SumValue> values = new LinkedHashMap<>();
        Set<String> within = new HashSet<>();
        while (next() != JsonToken.END_OBJECT) {
            String key = key(within);
            next();
            values.put(key, value(depth + 1));
        }
        return new SumValue.Fields(values);
    }

    private String key(Set<String> before) throws NotJson {
        String key = characters();
        if (!before.add(key)) {
            throw new NotJson("json.twice", shortened(key));
        }
        return key;
    }

    private String characters() throws NotJson {
        try {
            String characters = parser.getText();
            if (hasHalf(characters)) {
                throw new NotJson("json.half", named(last));
            }
            return characters;
        } catch (JsonProcessingException e) {
            throw notJson(e, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean hasHalf(String characters) {
        for (int i = 0; i < characters.length(); i++) {
            if (Character.isSurrogate(characters.charAt(i))) {
                if (i + 1 == characters.length()
                        || !Character.isSurrogatePair(characters.charAt(i), characters.charAt(i + 1))) {
                    return true;
                }
                i++;
            }
        }
        return false;
    }

    private JsonToken next() throws NotJson {
        try {
            return parser.nextToken();
        } catch (JsonProcessingException e) {
            throw notJson(e, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private NotJson notJson(JsonProcessingException e, boolean inAText) {
        Matcher bare = BARE.matcher(text).region(offset(), text.length());
        boolean isBare = !inAText && !parser.getParsingContext().inRoot() && bare.lookingAt();
        if (e instanceof StreamConstraintsException) {
            boolean isTheValue = isBare && bare.group(1).length() > NAMED;
            return new NotJson("json.too-long", named(isTheValue ? keyInHand() : Optional.empty()));
        }
        boolean isNoValue = isBare
                && !(e instanceof JsonEOFException)
                && !VALUE.matcher(bare.group(1)).matches();
        int at = (int) Math.min(
                text.length(),
                Math.max(0, isNoValue ? bare.start(1) : e.getLocation().getCharOffset()));
        Message where = e instanceof JsonEOFException
                ? Message.of("json.ends")
                : Message.of("json.wrong-at", Math.min(at + 1, text.length()), near(at - NEAR / 2));
        boolean under = inAText
                || isNoValue
                || parser.currentToken() == JsonToken.FIELD_NAME
                || parser.getParsingContext().inArray();
        Message placed = keyInHand()
                .map(name -> Message.of(under ? "json.under" : "json.behind-key", where, shortened(name)))
                .orElse(where);
        return new NotJson("json.not-json", isNoValue ? Message.of("json.no-value", placed) : placed);
    }

    /** The key whose value is being read; the parser may be further on than what was handed out. */
    private Optional<String> keyInHand() {
        for (JsonStreamContext here = parser.getParsingContext(); here != null; here = here.getParent()) {
            if (here.getCurrentName() != null) {
                return Optional.of(here.getCurrentName());
            }
        }
        return last;
    }

    private int offset() {
        return (int) Math.max(0, parser.currentTokenLocation().getCharOffset());
    }

    /** A few characters of the text from {@code at}, fit to stand in a sentence. */
    private String near(int at) {
        int from = Math.max(0, Math.min(at, text.length()));
        String rest = text.substring(from, Math.min(text.length(), from + NEAR))
                .strip()
                .replaceAll("[\\p{Cntrl}\\p{Cs}]", "\uFFFD");
        return "\"" + (from > 0 ? "…" : "") + rest + (from + NEAR < text.length() ? "…" : "") + "\"";
    }

    private static Message named(Optional<String> key) {
        return key.map(name -> Message.of("as-said", shortened(name))).orElse(Message.of("json.a-key"));
    }

    private static String shortened(String key) {
        String whole = key.replaceAll("[\\p{Cntrl}\\p{Cs}]", "\uFFFD");
        return whole.length() > NAMED ? whole.substring(0, NAMED) + "…" : whole;
    }
}
