package org.tenthwise.model.worked;

import java.util.List;
import java.util.Optional;
import org.tenthwise.model.compute.taper.TaperByBalls;
import org.tenthwise.model.quantity.Length;
import org.tenthwise.model.quantity.QuantityKind;
import org.tenthwise.model.quantity.Written;

/**
 * The included angle of an inside taper, by how deep a small and a large ball lie in it. The mouth it comes to is told
 * beside it.
 *
 * @param smallBall its diameter, by its certificate
 * @param largeBall the same
 */
public record BallsInTaper(Written smallBall, Written largeBall) implements WorkedBy {

    @Override
    public WorkedWay way() {
        return WorkedWay.BALLS;
    }

    @Override
    public List<WorkedReading> readings() {
        return List.of(WorkedReading.SMALL_DEPTH, WorkedReading.LARGE_DEPTH);
    }

    @Override
    public List<Given> given() {
        return List.of(Given.of(KnownSize.SMALL_BALL, smallBall), Given.of(KnownSize.LARGE_BALL, largeBall));
    }

    @Override
    public QuantityKind gives() {
        return QuantityKind.ANGLE;
    }

    @Override
    public Length of(List<Length> readings) {
        return WorkedBy.angle(in(readings).taper().included());
    }

    @Override
    public Optional<Length> beside(List<Length> readings) {
        return Optional.of(in(readings).mouth());
    }

    private TaperByBalls in(List<Length> readings) {
        return new TaperByBalls(largeBall.length(), smallBall.length(), readings.get(1), readings.get(0));
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.ballsInTaper(this);
    }
}
