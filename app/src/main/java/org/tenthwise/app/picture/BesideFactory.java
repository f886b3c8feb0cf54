package org.tenthwise.app.picture;

import java.math.BigDecimal;
import java.util.Optional;
import org.tenthwise.model.plan.CheckOfSize;
import org.tenthwise.model.plan.Combine;
import org.tenthwise.model.plan.Contact;
import org.tenthwise.model.plan.Feature;
import org.tenthwise.model.plan.Mark;
import org.tenthwise.model.plan.Outline;
import org.tenthwise.model.quantity.Length;

/**
 * What stands beside the strip of a size: the feature as the outline has it, where the outline has one that is as large
 * as the limits say; otherwise the part with the spot, or a drawing that says nothing of the part.
 */
final class BesideFactory {

    /** A size that is further off what the outline has is of something else. */
    private static final BigDecimal NEAR = new BigDecimal("0.05");

    private static final Box SHEET = new Box(0, 0, 1000, 1000);

    private final CheckOfSize check;

    BesideFactory(CheckOfSize check) {
        this.check = check;
    }

    SizePicture.Beside of(Optional<Outline> outline, Optional<Mark> mark) {
        return outline.flatMap(part -> mark.map(spot -> on(part, spot))).orElseGet(this::neutral);
    }

    private SizePicture.Beside neutral() {
        if (check.contact() instanceof Contact.DrilledHole hole) {
            return new SizePicture.Beside.Drilled(hole.pointAngle());
        }
        return check.feature().form() == Feature.Form.LENGTH ? SizePicture.Beside.NOTHING : SizePicture.Beside.CUT_OPEN;
    }

    private SizePicture.Beside on(Outline part, Mark mark) {
        Feature feature = check.feature();
        return switch (feature.form()) {
            case TURNED -> turned(part, mark, feature.isInside());
            case FACES -> feature.isInside() ? width(part, mark) : SizePicture.Beside.CUT_OPEN;
            case LENGTH -> length(part, mark, feature.isInside());
            case HOLE, CHAMFER, RADIUS -> SizePicture.Beside.CUT_OPEN;
        };
    }

    /** The size wanted; absent where the limits are not those of a size. */
    private Optional<Length> size() {
        return check.combine() == Combine.RANGE
                ? Optional.empty()
                : Optional.of(check.limits().middle());
    }

    private boolean isNear(Length found) {
        return size().filter(size -> !size.minus(found).abs().isAbove(found.times(NEAR)))
                .isPresent();
    }

    private SizePicture.Beside turned(Outline part, Mark mark, boolean isBore) {
        return size().flatMap(size -> TurnedStretch.of(mark, part, isBore, size))
                .<SizePicture.Beside>map(SizePicture.Beside.Turned::new)
                .orElse(SizePicture.Beside.CUT_OPEN);
    }

    private static Optional<Outline.Pocket> pocket(Outline part, Mark mark) {
        OutlineFeature feature = OutlineFeature.at(mark, part, new HalfSection(part, SHEET));
        return feature.side() != OutlineFeature.Side.BELOW
                ? Optional.empty()
                : part.pockets().stream()
                        .filter(pocket ->
                                !mark.at().isBelow(pocket.from()) && !mark.at().isAbove(pocket.to()))
                        .findFirst();
    }

    private SizePicture.Beside width(Outline part, Mark mark) {
        return pocket(part, mark)
                .flatMap(pocket -> {
                    Length along = pocket.to().minus(pocket.from());
                    return isNear(pocket.width()) || isNear(along)
                            ? Optional.<SizePicture.Beside>of(
                                    new SizePicture.Beside.InPocket(part, pocket, isNear(pocket.width())))
                            : Optional.empty();
                })
                .orElse(SizePicture.Beside.CUT_OPEN);
    }

    /** @param inside whether it can go down to a floor: a length that nobody calls a depth is never drawn as one */
    private SizePicture.Beside length(Outline part, Mark mark, boolean inside) {
        boolean floor = inside && OutlineFeature.isFloor(mark, part);
        Optional<Outline.Pocket> pocket = pocket(part, mark).filter(found -> floor);
        Optional<Outline.ThreadedLength> thread = part.threads().stream()
                .filter(found -> !mark.at().isBelow(found.from()) && !mark.at().isAbove(found.to()))
                .filter(found -> inside && isNear(found.depth()))
                .findFirst();
        if (thread.isPresent()) {
            return new SizePicture.Beside.ThreadDepth(thread.orElseThrow());
        }
        if (pocket.isPresent()) {
            return new SizePicture.Beside.PocketFloor(part, pocket.orElseThrow());
        }
        Optional<BigDecimal> point =
                check.contact() instanceof Contact.DrilledHole hole ? Optional.of(hole.pointAngle()) : Optional.empty();
        return size().flatMap(size -> OutlineSpan.of(mark, part, size))
                .<SizePicture.Beside>map(
                        span -> new SizePicture.Beside.Along(part, mark, span, floor || point.isPresent(), point))
                .orElseGet(() -> new SizePicture.Beside.Part(OutlinePicture.small(part, Optional.of(mark), ""), floor));
    }
}
