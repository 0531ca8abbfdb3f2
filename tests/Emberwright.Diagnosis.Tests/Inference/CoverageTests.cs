using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using MathNet.Numerics.Random;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>Intervals and bands hold what they promise on stoves drawn from the prior.</summary>
public class CoverageTests
{
    [Fact]
    public void Ninety_percent_intervals_hold_nine_in_ten()
    {
        var random = new Xoshiro256StarStar(77);
        Parameter[] passages = [Parameter.BurnPot, Parameter.Exchanger, Parameter.AshPassages, Parameter.Vent, Parameter.Wheel];
        var (inside, all) = (0, 0);
        for (var trial = 0; trial < 120; trial++)
        {
            var layout = Layout.Of(Bench.Case, [new HashSet<Parameter>()], Bench.ColdTest.Select(o => (o.Measure, o.Place)), false);
            var truth = Bench.Draw(layout, random);
            var (file, library) = Bench.Open(new SeriesStove(), Bench.Read(new SeriesStove(), layout, truth, Bench.ColdTest, random));
            var mode = library.FitNothing();
            var builder = new CandidateBuilder(file, library);
            var candidate = builder.Build(Hypothesis.All(file.Discrete, file.Fouling, false)[0], mode);
            candidate.Weight = 1;
            var estimates = Estimates.From(file, [.. Draws.From(file, library, [candidate], Estimates.Count)]);
            foreach (var passage in passages)
            {
                var value = 1 - Math.Exp(-truth[layout.IndexOf(UnknownKind.Restriction, passage)]);
                var interval = estimates.Single(e => e.Parameter == passage).AsFound;
                all++;
                if (value >= interval.Low && value <= interval.High) inside++;
            }
        }
        // 600 intervals, not independent within a stove: ± 3 standard errors of 0.9 are 0.86 … 0.94; some play for the approximation.
        Assert.InRange((double)inside / all, 0.85, 0.96);
    }

    [Fact]
    public void Without_evidence_restrictions_are_exponential_again()
    {
        var (file, library) = Bench.Open(new SeriesStove(), []);
        var mode = library.FitNothing();
        var candidate = new CandidateBuilder(file, library).Build(Hypothesis.All(file.Discrete, file.Fouling, false)[0], mode);
        candidate.Weight = 1;
        var tau = PriorTable.InUse(Parameter.AshPassages, Bench.Case.History);
        var ash = Estimates.From(file, [.. Draws.From(file, library, [candidate], Estimates.Count)]).Single(e => e.Parameter == Parameter.AshPassages).AsFound;
        // Exp(τ): median τ·ln 2, 95 % quantile τ·ln 20. Draws of the normal stand-in are only approximately right in the tail.
        Assert.Equal(1 - Math.Exp(-tau * Math.Log(2)), ash.Median, 0.05);
        Assert.Equal(1 - Math.Exp(-tau * Math.Log(20)), ash.High, 0.10);
    }

    [Fact]
    public void Healthy_bands_hold_nine_in_ten_healthy_stoves()
    {
        var random = new Xoshiro256StarStar(19);
        var layout = Layout.Of(Bench.Case, [new HashSet<Parameter>()], Bench.ColdTest.Select(o => (o.Measure, o.Place)), serviced: true);
        var bands = new HealthyBands(new Problem(new SolveCache(new SeriesStove()), layout, Prior.Of(layout), ReadingSet.Of([]), []), "pattern");
        var (inside, all) = (0, 0);
        for (var trial = 0; trial < 300; trial++)
        {
            foreach (var reading in Bench.Read(new SeriesStove(), layout, Bench.Draw(layout, random), Bench.ColdTest, random))
            {
                all++;
                if (HealthyBands.Judge(reading.Value, bands.Of(reading.Observable)!) == Verdict.In) inside++;
            }
        }
        Assert.InRange((double)inside / all, 0.86, 0.94);
    }

    [Theory]
    [InlineData(-29, -35, -23, -12, Verdict.TooWeak)]
    [InlineData(-29, -35, -23, -40, Verdict.TooStrong)]
    [InlineData(-29, -35, -23, -25, Verdict.In)]
    [InlineData(5, 1, 9, 20, Verdict.TooStrong)]
    [InlineData(5, 1, 9, 0, Verdict.TooWeak)]
    public void A_pressure_is_too_weak_towards_nought(double expected, double low, double high, double reading, Verdict verdict) =>
        Assert.Equal(verdict, HealthyBands.Judge(reading, new Band(Bench.Pressure(Places.Firebox, Condition.FanOnly), low, expected, high, 0.9, "")));

    [Fact]
    public void A_misfit_alarm_on_one_plain_reading_is_chi_squared()
    {
        var observable = Bench.Pressure(Places.Firebox, Condition.FanOnly);
        var layout = new Layout([new Unknown(UnknownKind.Free, Parameter.Wheel, 0, 0, 0.05), new Unknown(UnknownKind.GaugeScale, null, 0, 0, 0.02)], [[new Layout.Contribution((int)Parameter.Wheel, 0, 1)]]);
        var mode = Mode.From(new Problem(new SolveCache(new SeriesStove()), layout, Prior.Of(layout), ReadingSet.Of([new ReadingEvidence("r", 0, observable, -28)]), []), [0, 0])!;
        Assert.Equal(3.84, MisfitAlarm.Simulated(mode)[380], 0.6); // χ² with one degree of freedom, 95 %
        Assert.False(MisfitAlarm.Sounds(MisfitAlarm.Share(mode)));
    }
}
