package org.tenthwise.app.ui.picture;

import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import org.tenthwise.app.drawing.PageImage;
import org.tenthwise.app.drawing.PagePart;
import org.tenthwise.app.picture.Picture;

/**
 * Shows a page of a drawing, or a part of it, as large as there is room for, with a picture over it. Paper stays paper:
 * by night it is as white as by day.
 */
public final class PagePane extends Region {

    /** What is done at a spot of the page. */
    @FunctionalInterface
    public interface Tapped {

        /**
         * @param x share of the page's width from its left edge, 0 to 1
         * @param y share of the page's height from its upper edge, 0 to 1
         */
        void at(double x, double y);
    }

    private final ImageView paper = new ImageView();
    private final PictureView over;
    private Optional<PageImage> page = Optional.empty();
    private PagePart part = PagePart.WHOLE;

    /** @param over an empty view */
    public PagePane(PictureView over) {
        this.over = over;
        over.setMouseTransparent(true);
        paper.setSmooth(true);
        paper.setMouseTransparent(true);
        getChildren().addAll(paper, over);
        setMinSize(0, 0);
    }

    /** The second of two taps at one spot is none. */
    public void onTap(Tapped tapped) {
        setOnMouseClicked(event -> {
            double across = (event.getX() - paper.getLayoutX()) / Math.max(1, paper.getFitWidth());
            double down = (event.getY() - paper.getLayoutY()) / Math.max(1, paper.getFitHeight());
            boolean isOnPage = across >= 0 && across <= 1 && down >= 0 && down <= 1;
            if (page.isPresent() && isOnPage && event.getClickCount() == 1) {
                tapped.at(part.pageX(across), part.pageY(down));
            }
        });
    }

    /** @param marks laid out over what is seen of the page */
    public void show(PageImage image, PagePart seen, Picture marks) {
        if (!page.equals(Optional.of(image))) {
            paper.setImage(of(image));
        }
        page = Optional.of(image);
        part = seen;
        paper.setViewport(new Rectangle2D(
                seen.left() * image.width(),
                seen.top() * image.height(),
                seen.share() * image.width(),
                seen.share() * image.height()));
        over.show(marks);
        requestLayout();
    }

    public void clear() {
        page = Optional.empty();
        paper.setImage(new WritableImage(1, 1));
        over.clear();
    }

    private static WritableImage of(PageImage page) {
        WritableImage image = new WritableImage(page.width(), page.height());
        image.getPixelWriter()
                .setPixels(
                        0,
                        0,
                        page.width(),
                        page.height(),
                        PixelFormat.getIntArgbInstance(),
                        page.pixels(),
                        0,
                        page.width());
        return image;
    }

    @Override
    protected void layoutChildren() {
        page.ifPresent(image -> {
            double scale = Math.min(getWidth() / image.width(), getHeight() / image.height());
            double width = image.width() * scale;
            double height = image.height() * scale;
            paper.setFitWidth(width);
            paper.setFitHeight(height);
            paper.setLayoutX((getWidth() - width) / 2);
            paper.setLayoutY((getHeight() - height) / 2);
            over.resizeRelocate(paper.getLayoutX(), paper.getLayoutY(), width, height);
        });
    }
}
