package org.tenthwise.app.sums.handbook;

import java.util.List;
import org.tenthwise.app.sums.Sums;
import org.tenthwise.app.sums.cutting.CutterWearSum;
import org.tenthwise.app.sums.cutting.DrillPointSum;
import org.tenthwise.app.sums.cutting.DrillSetSum;
import org.tenthwise.app.sums.cutting.HalfWaySum;
import org.tenthwise.app.sums.cutting.NextCutSum;
import org.tenthwise.app.sums.cutting.PecksSum;
import org.tenthwise.app.sums.cutting.WearAimSum;
import org.tenthwise.app.sums.decision.GuardBandSum;
import org.tenthwise.app.sums.decision.JudgeSum;
import org.tenthwise.app.sums.decision.ResolutionSum;
import org.tenthwise.app.sums.decision.RiskSum;
import org.tenthwise.app.sums.decision.RoundingMethodSum;
import org.tenthwise.app.sums.decision.UncertaintySum;
import org.tenthwise.app.sums.fit.FitSum;
import org.tenthwise.app.sums.fit.GeneralToleranceSum;
import org.tenthwise.app.sums.fit.InchFitSum;
import org.tenthwise.app.sums.fit.LimitsSum;
import org.tenthwise.app.sums.fit.StandardToleranceSum;
import org.tenthwise.app.sums.gauge.FromMasterSum;
import org.tenthwise.app.sums.gauge.LeverSum;
import org.tenthwise.app.sums.gauge.LobesSum;
import org.tenthwise.app.sums.gauge.OffCentreSum;
import org.tenthwise.app.sums.gauge.RockingSum;
import org.tenthwise.app.sums.gauge.RunOutByAngleSum;
import org.tenthwise.app.sums.gauge.ZeroDriftSum;
import org.tenthwise.app.sums.gear.ChordalSum;
import org.tenthwise.app.sums.gear.OverPinsSum;
import org.tenthwise.app.sums.gear.SpanSum;
import org.tenthwise.app.sums.profile.AcrossCornersSum;
import org.tenthwise.app.sums.profile.DovetailSum;
import org.tenthwise.app.sums.profile.KeyseatSum;
import org.tenthwise.app.sums.profile.RadiusSum;
import org.tenthwise.app.sums.statistics.CapabilitySum;
import org.tenthwise.app.sums.statistics.ChartConstantsSum;
import org.tenthwise.app.sums.statistics.GaugeStudySum;
import org.tenthwise.app.sums.statistics.IndividualsSum;
import org.tenthwise.app.sums.statistics.OutlierSum;
import org.tenthwise.app.sums.statistics.SummarySum;
import org.tenthwise.app.sums.statistics.ToleranceIntervalSum;
import org.tenthwise.app.sums.statistics.TrendSum;
import org.tenthwise.app.sums.statistics.TypeOneSum;
import org.tenthwise.app.sums.statistics.ZeroRejectsSum;
import org.tenthwise.app.sums.temperature.AtTwentySum;
import org.tenthwise.app.sums.temperature.ExpansionSum;
import org.tenthwise.app.sums.temperature.TemperatureMattersSum;
import org.tenthwise.app.sums.thread.OneWireSum;
import org.tenthwise.app.sums.thread.OverWiresSum;
import org.tenthwise.app.sums.thread.ThreadLimitsSum;
import org.tenthwise.app.sums.thread.WireConstantsSum;
import org.tenthwise.app.sums.thread.WireSensitivitySum;

/** All sums of the program. */
public final class Handbook {

    private Handbook() {}

    public static Sums sums() {
        return new Sums(List.of(
                new ThreadLimitsSum(),
                new OverWiresSum(),
                new OneWireSum(),
                new WireSensitivitySum(),
                new WireConstantsSum(),
                new LimitsSum(),
                new FitSum(),
                new InchFitSum(),
                new StandardToleranceSum(),
                new GeneralToleranceSum(),
                new FromMasterSum(),
                new ZeroDriftSum(),
                new RunOutByAngleSum(),
                new LeverSum(),
                new LobesSum(),
                new RockingSum(),
                new OffCentreSum(),
                new AtTwentySum(),
                new TemperatureMattersSum(),
                new ExpansionSum(),
                new RadiusSum(),
                new DovetailSum(),
                new KeyseatSum(),
                new AcrossCornersSum(),
                new OverPinsSum(),
                new SpanSum(),
                new ChordalSum(),
                new JudgeSum(),
                new RiskSum(),
                new UncertaintySum(),
                new GuardBandSum(),
                new RoundingMethodSum(),
                new ResolutionSum(),
                new NextCutSum(),
                new HalfWaySum(),
                new WearAimSum(),
                new CutterWearSum(),
                new DrillSetSum(),
                new DrillPointSum(),
                new PecksSum(),
                new SummarySum(),
                new IndividualsSum(),
                new CapabilitySum(),
                new TrendSum(),
                new GaugeStudySum(),
                new OutlierSum(),
                new ZeroRejectsSum(),
                new ToleranceIntervalSum(),
                new ChartConstantsSum(),
                new TypeOneSum()));
    }
}
