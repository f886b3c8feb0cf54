package org.tenthwise.app.export.pdf;

import java.util.List;
import java.util.stream.DoubleStream;
import org.tenthwise.app.firstarticle.PartForm;
import org.tenthwise.app.picture.Role;
import org.tenthwise.model.words.Words;

/** Fields of a form beside each other, each in a box with its number and name over what stands in it. */
final class FormGrid {

    private static final double PADDING = 5;

    private final FormSheet sheet;
    private final Words words;

    FormGrid(FormSheet sheet, Words words) {
        this.sheet = sheet;
        this.words = words;
    }

    /** A row of boxes of one width, as high as the fullest needs. */
    void row(List<PartForm.Filled> fields) {
        double width = sheet.across() / fields.size();
        double room = width - 2 * PADDING;
        List<List<String>> names = fields.stream()
                .map(filled -> sheet.wrapping().lines(filled.field().head(words), Style.SMALL, room))
                .toList();
        List<List<String>> values = fields.stream()
                .map(filled -> sheet.wrapping().lines(words.readable(filled.value()), Style.STRONG, room))
                .toList();
        double named = most(names) * Style.SMALL.leading();
        double height = 2 * PADDING + named + Math.max(1, most(values)) * Style.STRONG.leading();
        sheet.need(height);
        double top = sheet.y();
        for (int i = 0; i < fields.size(); i++) {
            double left = FormSheet.MARGIN + i * width;
            write(names.get(i), Style.SMALL, left + PADDING, top + PADDING);
            write(values.get(i), Style.STRONG, left + PADDING, top + PADDING + named);
        }
        frame(top, height, width, fields.size());
        sheet.down(height);
    }

    private static int most(List<List<String>> texts) {
        return texts.stream().mapToInt(List::size).max().orElse(0);
    }

    private void write(List<String> lines, Style style, double left, double top) {
        double at = top;
        for (String line : lines) {
            sheet.write(line, style, left, at);
            at += style.leading();
        }
    }

    private void frame(double top, double height, double width, int boxes) {
        double right = sheet.right();
        sheet.page().add(drawing -> {
            DoubleStream.of(top, top + height)
                    .forEach(at -> drawing.across(at, FormSheet.MARGIN, right, Strokes.THIN, Role.INK));
            for (int i = 0; i <= boxes; i++) {
                drawing.down(FormSheet.MARGIN + i * width, top, top + height, Strokes.THIN, Role.INK);
            }
        });
    }
}
