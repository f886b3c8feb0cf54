package org.tenthwise.app.picture;

import java.util.stream.Stream;

/**
 * The signs a requirement, a note or a name can hold: ISO 1101:2017, tables 1 to 3; ISO 129-1:2018, 7.4; ASME
 * Y14.5-2018, section 6; those that are written for one of them, and some that stand for nothing.
 */
public final class DrawingSigns {

    private static final String WITH_A_MEANING =
            "\u2300\u2205\u25a1\u25a2\u2334\u2335\u21a7\u2332\u2333\u2331\u2316\u2295"
                    + "\u25ce\u232f\u23e4\u23e5\u25b1\u25cb\u25ef\u232d\u2312\u2313\u232e\u2225"
                    + "\u27c2\u22a5\u2220\u2197\u2330\u21d7\u2194\u24c2\u24c1\u24c5\u24bb\u24ba"
                    + "\u24c7\u24c8\u24c9\u24ca\u24b6\u24cf\u2460\u2473";

    private static final String OTHERS =
            "\u2193\u233e\u2322\u2afd\u299f\u23ca\u2314\u25b3\u25bd\u27e8\u27e9\u2610" + "\u25fb\u24d0";

    private DrawingSigns() {}

    /** Each as a text of its own. */
    public static Stream<String> all() {
        return (WITH_A_MEANING + OTHERS).codePoints().mapToObj(Character::toString);
    }
}
