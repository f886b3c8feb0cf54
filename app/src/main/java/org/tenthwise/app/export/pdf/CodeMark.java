package org.tenthwise.app.export.pdf;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;
import org.tenthwise.app.picture.Box;
import org.tenthwise.app.picture.Drawing;
import org.tenthwise.app.picture.Role;

/** A text as squares that any camera reads (ISO/IEC 18004), with room for a seventh of them to be soiled. */
final class CodeMark {

    /** Light squares that must stand about it. */
    private static final int QUIET = 4;
    /** So much does a square reach under its neighbours, that no screen shows a light line between two dark ones. */
    private static final double OVER = 0.08;

    private final BitMatrix squares;

    /** @throws IllegalArgumentException if the text is longer than such a code holds, which is 2331 bytes */
    CodeMark(String text) {
        try {
            this.squares = new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M,
                                    EncodeHintType.CHARACTER_SET,
                                    "UTF-8",
                                    EncodeHintType.MARGIN,
                                    0));
        } catch (WriterException e) {
            throw new IllegalArgumentException("No code holds " + text.length() + " letters", e);
        }
    }

    /** How much room there must be about it where it is {@code side} wide. */
    double quiet(double side) {
        return QUIET * side / squares.getWidth();
    }

    /** Fills a room as wide as high. */
    void draw(Drawing drawing, Box room) {
        double side = room.width() / squares.getWidth();
        for (int y = 0; y < squares.getHeight(); y++) {
            int x = 0;
            while (x < squares.getWidth()) {
                int from = x;
                while (x < squares.getWidth() && squares.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    drawing.area(square(room, side, from, x, y).corners(), Role.INK);
                }
                x++;
            }
        }
    }

    /** The dark squares of a row from one to before another. */
    private Box square(Box room, double side, int from, int to, int y) {
        boolean last = y == squares.getHeight() - 1;
        return new Box(
                room.left() + from * side,
                room.top() + y * side,
                room.left() + to * side,
                room.top() + (y + 1 + (last ? 0 : OVER)) * side);
    }
}
