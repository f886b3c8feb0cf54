package org.tenthwise.app.ui.picture;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import org.tenthwise.app.picture.Face;
import org.tenthwise.app.picture.Palette;
import org.tenthwise.app.picture.Pen;
import org.tenthwise.app.picture.Point;
import org.tenthwise.app.picture.Role;
import org.tenthwise.app.picture.Shape;
import org.tenthwise.app.picture.Stroke;

/**
 * Draws on a canvas. Upright and level lines are moved on to the pixels of the screen, so that thin ones stay sharp.
 */
public final class CanvasPen implements Pen {

    private final GraphicsContext canvas;
    private final Palette palette;
    private final ScreenFaces faces;
    private final double pixelsPerUnit;

    /** @param pixelsPerUnit device pixels to one pixel of the sheet */
    public CanvasPen(GraphicsContext canvas, Palette palette, ScreenFaces faces, double pixelsPerUnit) {
        this.canvas = canvas;
        this.palette = palette;
        this.faces = faces;
        this.pixelsPerUnit = pixelsPerUnit;
        canvas.setLineCap(StrokeLineCap.BUTT);
        canvas.setLineJoin(StrokeLineJoin.MITER);
        canvas.setFillRule(FillRule.EVEN_ODD);
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Role role) {
        canvas.setStroke(colour(role));
        canvas.setLineWidth(stroke.width());
        canvas.setLineDashes(
                stroke.dash().stream().mapToDouble(Double::doubleValue).toArray());
        if (shape instanceof Shape.Polyline chain) {
            chain(chain, stroke.width());
        } else if (shape instanceof Shape.Circle circle) {
            double across = 2 * circle.radius();
            canvas.strokeOval(
                    circle.centre().x() - circle.radius(), circle.centre().y() - circle.radius(), across, across);
        }
    }

    private void chain(Shape.Polyline chain, double width) {
        long device = Math.max(1, Math.round(width * pixelsPerUnit));
        List<Point> points = chain.points();
        boolean straight = level(points, chain.closed());
        if (straight) {
            canvas.setLineWidth(device / pixelsPerUnit);
        }
        trace(points, chain.closed(), device);
        canvas.stroke();
    }

    private static boolean level(List<Point> points, boolean closed) {
        for (int i = closed ? 0 : 1; i < points.size(); i++) {
            if (!upright(neighbour(points, i, -1), points.get(i)) && !level(neighbour(points, i, -1), points.get(i))) {
                return false;
            }
        }
        return true;
    }

    private void trace(List<Point> points, boolean closed, long device) {
        canvas.beginPath();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            boolean hasBefore = closed || i > 0;
            boolean hasAfter = closed || i < points.size() - 1;
            Point before = neighbour(points, i, -1);
            Point after = neighbour(points, i, 1);
            boolean moveX = hasBefore && upright(before, point) || hasAfter && upright(point, after);
            boolean moveY = hasBefore && level(before, point) || hasAfter && level(point, after);
            double x = moveX ? snapped(point.x(), device) : point.x();
            double y = moveY ? snapped(point.y(), device) : point.y();
            if (i == 0) {
                canvas.moveTo(x, y);
            } else {
                canvas.lineTo(x, y);
            }
        }
        if (closed) {
            canvas.closePath();
        }
    }

    private static Point neighbour(List<Point> points, int index, int step) {
        return points.get(Math.floorMod(index + step, points.size()));
    }

    private static boolean upright(Point a, Point b) {
        return Math.abs(a.x() - b.x()) < 0.01;
    }

    private static boolean level(Point a, Point b) {
        return Math.abs(a.y() - b.y()) < 0.01;
    }

    /** The middle of a line {@code device} pixels wide, put where its edges fall between pixels. */
    private double snapped(double at, long device) {
        double half = device % 2 == 0 ? 0 : 0.5;
        return (Math.round(at * pixelsPerUnit - half) + half) / pixelsPerUnit;
    }

    @Override
    public void fill(Shape shape, Role role) {
        canvas.setFill(colour(role));
        if (shape instanceof Shape.Polyline chain) {
            canvas.fillPolygon(
                    chain.points().stream().mapToDouble(Point::x).toArray(),
                    chain.points().stream().mapToDouble(Point::y).toArray(),
                    chain.points().size());
        } else if (shape instanceof Shape.Circle circle) {
            double across = 2 * circle.radius();
            canvas.fillOval(
                    circle.centre().x() - circle.radius(), circle.centre().y() - circle.radius(), across, across);
        }
    }

    @Override
    public void text(Face face, String text, Point start, double size, Role role) {
        canvas.setFill(colour(role));
        canvas.setFont(faces.of(face, size));
        canvas.fillText(text, start.x(), start.y());
    }

    private Color colour(Role role) {
        int rgb = palette.rgb(role);
        return Color.rgb(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }
}
