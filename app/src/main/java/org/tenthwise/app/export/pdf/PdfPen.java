package org.tenthwise.app.export.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.tenthwise.app.picture.Face;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Pen;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Shape;
import org.tenthwise.app.picture.Stroke;

/** Draws on a page of a PDF, in the print colours. A pixel of the sheet is ¾ point. */
final class PdfPen implements Pen {

    /** 72 points and 96 pixels to the inch. */
    static final float POINTS_PER_PIXEL = 0.75f;
    /** Reach of the handles of a cubic curve that stands for a quarter of a circle: 4/3 (√2 − 1). */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private final PDPageContentStream page;
    private final PdfFaces faces;
    private final float left;
    private final float top;

    /**
     * @param left points from the left edge of the page to the sheet's origin
     * @param top points from the lower edge of the page to the sheet's origin
     */
    PdfPen(PDPageContentStream page, PdfFaces faces, float left, float top) {
        this.page = page;
        this.faces = faces;
        this.left = left;
        this.top = top;
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Role role) {
        try {
            page.setStrokingColor(red(role), green(role), blue(role));
            page.setLineWidth((float) stroke.width() * POINTS_PER_PIXEL);
            page.setLineDashPattern(dash(stroke), 0);
            trace(shape);
            page.stroke();
        } catch (IOException e) {
            throw new UncheckedIOException("The picture could not be drawn into the record", e);
        }
    }

    @Override
    public void fill(Shape shape, Role role) {
        try {
            page.setNonStrokingColor(red(role), green(role), blue(role));
            trace(shape);
            page.fillEvenOdd();
        } catch (IOException e) {
            throw new UncheckedIOException("The picture could not be drawn into the record", e);
        }
    }

    @Override
    public void text(Face face, String text, Point start, double size, Role role) {
        try {
            page.setNonStrokingColor(red(role), green(role), blue(role));
            letter(face, text, start, size, RenderingMode.FILL);
        } catch (IOException e) {
            throw new UncheckedIOException("The picture could not be lettered in the record", e);
        }
    }

    @Override
    public void unseen(Face face, String text, Point start, double size) {
        try {
            letter(face, text, start, size, RenderingMode.NEITHER);
        } catch (IOException e) {
            throw new UncheckedIOException("The picture could not be lettered in the record", e);
        }
    }

    private void letter(Face face, String text, Point start, double size, RenderingMode mode) throws IOException {
        page.beginText();
        page.setRenderingMode(mode);
        page.setFont(faces.of(face), (float) size * POINTS_PER_PIXEL);
        page.newLineAtOffset(x(start), y(start));
        page.showText(text);
        page.endText();
    }

    private void trace(Shape shape) throws IOException {
        if (shape instanceof Shape.Polyline chain) {
            trace(chain);
        } else {
            trace((Shape.Circle) shape);
        }
    }

    private void trace(Shape.Polyline chain) throws IOException {
        List<Point> points = chain.points();
        page.moveTo(x(points.get(0)), y(points.get(0)));
        for (Point point : points.subList(1, points.size())) {
            page.lineTo(x(point), y(point));
        }
        if (chain.closed()) {
            page.closePath();
        }
    }

    /** In four cubic curves, a quarter turn each. */
    private void trace(Shape.Circle circle) throws IOException {
        double reach = circle.radius() * QUARTER;
        Point start = at(circle, 0);
        page.moveTo(x(start), y(start));
        for (int begin = 0; begin < 360; begin += 90) {
            Point one = along(at(circle, begin), begin, reach);
            Point end = at(circle, begin + 90);
            Point two = along(end, begin + 90, -reach);
            page.curveTo(x(one), y(one), x(two), y(two), x(end), y(end));
        }
        page.closePath();
    }

    private static Point at(Shape.Circle circle, double degrees) {
        return circle.centre().polar(circle.radius(), degrees);
    }

    /** Along the circle, clockwise, from a spot of it. */
    private static Point along(Point spot, double degrees, double reach) {
        double angle = Math.toRadians(degrees);
        return spot.plus(reach * Math.cos(angle), reach * Math.sin(angle));
    }

    private static float[] dash(Stroke stroke) {
        float[] dash = new float[stroke.dash().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = stroke.dash().get(i).floatValue() * POINTS_PER_PIXEL;
        }
        return dash;
    }

    private float x(Point point) {
        return left + (float) point.x() * POINTS_PER_PIXEL;
    }

    private float y(Point point) {
        return top - (float) point.y() * POINTS_PER_PIXEL;
    }

    private static float red(Role role) {
        return (Palette.PRINT.rgb(role) >> 16 & 0xff) / 255f;
    }

    private static float green(Role role) {
        return (Palette.PRINT.rgb(role) >> 8 & 0xff) / 255f;
    }

    private static float blue(Role role) {
        return (Palette.PRINT.rgb(role) & 0xff) / 255f;
    }
}
