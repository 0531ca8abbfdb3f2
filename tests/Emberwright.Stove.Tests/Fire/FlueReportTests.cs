using CsCheck;
using Emberwright.Stove.Fire;
using Xunit;

namespace Emberwright.Stove.Tests.Fire;

public class FlueReportTests
{
    private static readonly FlueOptions Typical = new()
    {
        OxygenPercent = 11.5,
        CarbonDioxidePercent = 9.2,
        CarbonMonoxidePpm = 180,
        FlueC = 175,
        FuelKgPerHour = 1.5,
    };

    private static readonly Gen<FlueOptions> Any =
        from oxygen in Gen.Double[4, 19]
        from co in Gen.Double[0, 3000]
        from flue in Gen.Double[60, 320]
        from room in Gen.Double[5, 30]
        from pressure in Gen.Double[65_000, 104_000]
        from humidity in Gen.Double[0, 90]
        from wet in Gen.Bool
        from rate in Gen.Double[0.4, 3]
        select new FlueOptions
        {
            OxygenPercent = wet ? oxygen * 0.85 : oxygen,
            CarbonMonoxidePpm = co,
            Basis = wet ? Basis.Wet : Basis.Dry,
            FlueC = flue,
            RoomC = room,
            PressurePa = pressure,
            HumidityPercent = humidity,
            FuelKgPerHour = rate,
        };

    [Fact]
    public void Losses_and_efficiency_make_up_the_whole() => Any.Sample(options =>
    {
        var report = FlueReport.Compute(options);

        Assert.Equal(100, report["loss-sensible"].Value + report["loss-unburnt"].Value + report["efficiency"].Value, 1e-9);
        Assert.Equal(100, report["loss-sensible-indirect"].Value + report["loss-unburnt-indirect"].Value + report["efficiency-indirect"].Value, 1e-9);
    });

    [Fact]
    public void Both_methods_agree_within_a_point_where_stoves_run() => Any.Where(o => o.FlueC < 250).Sample(options =>
    {
        // In dry air: the vapour of humid air is a loss the indirect method leaves out.
        var report = FlueReport.Compute(options with { HumidityPercent = 0 });

        Assert.Equal(report["efficiency"].Value, report["efficiency-indirect"].Value, 0.2 + 0.02 * report["loss-sensible"].Value);
    });

    [Fact]
    public void The_reading_comes_back_from_the_balance() => Any.Sample(options =>
    {
        var report = FlueReport.Compute(options);

        var id = options.Basis == Basis.Dry ? "oxygen-dry" : "oxygen-wet";
        Assert.Equal(options.OxygenPercent!.Value, report[id].Value, 1e-9);
        var ratio = report["oxygen-wet"].Value / report["oxygen-dry"].Value;
        var co = options.Basis == Basis.Dry ? report["carbon-monoxide-dry"].Value : report["carbon-monoxide-dry"].Value * ratio;
        Assert.Equal(options.CarbonMonoxidePpm!.Value, co, 1e-6);
        Assert.Equal(100 * (1 - ratio), report["water-wet"].Value, 1e-9);
    });

    [Fact]
    public void Wet_for_dry_is_another_answer()
    {
        var dry = FlueReport.Compute(Typical with { CarbonDioxidePercent = null });
        var wet = FlueReport.Compute(Typical with { CarbonDioxidePercent = null, Basis = Basis.Wet });

        Assert.True(wet["air-ratio"].Value > dry["air-ratio"].Value + 0.1);
        Assert.True(wet["carbon-monoxide-13"].Value > dry["carbon-monoxide-13"].Value + 5);
        Assert.True(wet["efficiency"].Value < dry["efficiency"].Value);
    }

    [Fact]
    public void Oxygen_and_carbon_dioxide_of_one_gas_give_one_air_ratio()
    {
        var byOxygen = FlueReport.Compute(Typical with { CarbonDioxidePercent = null });
        var byCarbonDioxide = FlueReport.Compute(Typical with { OxygenPercent = null, CarbonDioxidePercent = byOxygen["carbon-dioxide-dry"].Value });

        Assert.Equal(byOxygen["air-ratio"].Value, byCarbonDioxide["air-ratio"].Value, 1e-6);
    }

    [Fact]
    public void Every_figure_opens_down_to_given_ones() => Any.Sample(options =>
    {
        var report = FlueReport.Compute(options);
        Assert.Equal(report.Figures.Count, report.Figures.Select(f => f.Id).Distinct().Count());
        foreach (var figure in report.Figures)
        {
            Assert.NotEqual("", figure.Source);
            Assert.Equal(figure.Equation.Length == 0, figure.Inputs.Count == 0);
            Assert.All(report.Open(figure.Id), opened => Assert.NotNull(report.Find(opened.Id)));
            Assert.Contains(report.Open(figure.Id), opened => opened.Inputs.Count == 0);
        }
    }, iter: 20);

    /// <summary>Moving one reading, all else the same, moves only figures that open down to it.</summary>
    [Fact]
    public void Figures_name_all_they_depend_on()
    {
        var start = FlueReport.Compute(Typical);
        (string Id, FlueOptions Moved)[] moves =
        [
            ("oxygen", Typical with { OxygenPercent = 12 }),
            ("carbon-dioxide", Typical with { CarbonDioxidePercent = 9 }),
            ("carbon-monoxide", Typical with { CarbonMonoxidePpm = 900 }),
            ("flue-temperature", Typical with { FlueC = 190 }),
            ("room-temperature", Typical with { RoomC = 15, HumidityPercent = 40 * Saturation.PressurePa(293.15) / Saturation.PressurePa(288.15) }),
            ("fuel-rate", Typical with { FuelKgPerHour = 2 }),
            ("fuel-moisture", Typical with { Fuel = Typical.Fuel.WithMoisture(0.1) }),
        ];
        foreach (var (id, moved) in moves)
        {
            var after = FlueReport.Compute(moved);
            foreach (var figure in start.Figures)
            {
                var changed = Math.Abs(after[figure.Id].Value - figure.Value) > 1e-9 * Math.Abs(figure.Value);
                if (changed && !(id == "room-temperature" && figure.Id == "humidity"))
                    Assert.True(start.Open(figure.Id).Any(f => f.Id == id), $"{figure.Id} moved with {id} but does not name it");
            }
        }
    }

    /// <summary>Oracle: 4000 draws from normal readings. First order holds within 6 % of the uncertainty here.</summary>
    [Fact]
    public void Uncertainty_agrees_with_drawing_at_random()
    {
        var u = Typical.Uncertainty;
        var random = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var gross = HeatingValue.Of(Typical.Fuel);
        string[] ids = ["air-ratio", "efficiency", "efficiency-indirect", "carbon-monoxide-13", "dew-point", "heat-output"];
        var sum = new double[ids.Length];
        var square = new double[ids.Length];
        const int draws = 4_000;
        for (var n = 0; n < draws; n++)
        {
            var drawn = FlueFiguresOf(Typical with
            {
                OxygenPercent = Typical.OxygenPercent + u.OxygenPercent * Normal(),
                CarbonDioxidePercent = Typical.CarbonDioxidePercent + u.CarbonDioxidePercent * Normal(),
                CarbonMonoxidePpm = Typical.CarbonMonoxidePpm + Math.Sqrt(81 + 100) * Normal(),
                FlueC = Typical.FlueC + u.FlueK * Normal(),
                RoomC = Typical.RoomC + u.RoomK * Normal(),
                HumidityPercent = Math.Max(0, Typical.HumidityPercent + u.HumidityPercent * Normal()),
                Fuel = Typical.Fuel.WithMoisture(Math.Max(0, Typical.Fuel.Moisture + u.Moisture * Normal())).WithGross(gross.GrossDryJPerKg * (1 + gross.RelativeUncertainty * Normal())),
                FuelKgPerHour = Typical.FuelKgPerHour * (1 + u.FuelRelative * Normal()),
            }, ids);
            for (var i = 0; i < ids.Length; i++)
            {
                sum[i] += drawn[i];
                square[i] += drawn[i] * drawn[i];
            }
        }

        var report = FlueReport.Compute(Typical);
        for (var i = 0; i < ids.Length; i++)
        {
            var spread = Math.Sqrt(square[i] / draws - Math.Pow(sum[i] / draws, 2));
            Assert.Equal(spread, report[ids[i]].StandardUncertainty, 0.06 * spread);
        }
    }

    [Theory]
    [InlineData(null, null, 180.0, "oxygen")]
    [InlineData(20.5, null, 180.0, "oxygen")]
    [InlineData(-1.0, null, 180.0, "oxygen")]
    [InlineData(null, 25.0, 180.0, "carbon dioxide")]
    [InlineData(null, 20.9, 180.0, "carbon dioxide")]
    [InlineData(11.0, null, double.NaN, "flue temperature")]
    [InlineData(11.0, null, 900.0, "flue temperature")]
    public void Nonsense_is_refused_with_field_range_and_remedy(double? oxygen, double? carbonDioxide, double flueC, string field)
    {
        var refused = Assert.Throws<InputException>(() =>
            FlueReport.Compute(new FlueOptions { OxygenPercent = oxygen, CarbonDioxidePercent = carbonDioxide, FlueC = flueC }));

        Assert.Equal(field, refused.Field);
        Assert.EndsWith(".", refused.Remedy, StringComparison.Ordinal);
        Assert.Contains(refused.Remedy, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Less_oxygen_than_the_carbon_monoxide_would_take_is_a_starved_fire() =>
        Assert.Contains("lacks air", Assert.Throws<InputException>(() =>
            FlueReport.Compute(new FlueOptions { OxygenPercent = 0.2, CarbonMonoxidePpm = 20_000, FlueC = 200 })).Message, StringComparison.Ordinal);

    [Fact]
    public void Notes_tell_what_stands_out()
    {
        Assert.Empty(FlueReport.Compute(Typical).Notes);
        Assert.Contains(FlueReport.Compute(Typical with { FlueC = 290 }).Notes, n => n.Contains("260", StringComparison.Ordinal));
        Assert.Contains(FlueReport.Compute(Typical with { CarbonMonoxidePpm = 3000 }).Notes, n => n.Contains("room", StringComparison.Ordinal));
        Assert.Contains(FlueReport.Compute(Typical with { CarbonDioxidePercent = 6 }).Notes, n => n.Contains("disagree", StringComparison.Ordinal));
        Assert.Contains(FlueReport.Compute(Typical with { FlueC = 30 }).Notes, n => n.Contains("wet here", StringComparison.Ordinal));
        Assert.Contains(FlueReport.Compute(Typical with { OxygenPercent = 19.5, CarbonDioxidePercent = null }).Notes, n => n.Contains("fresh air", StringComparison.Ordinal));
    }

    [Fact]
    public void Hotter_flue_loses_more() => Gen.Select(Any, Gen.Double[1, 50]).Sample((options, hotter) =>
    {
        var warm = FlueReport.Compute(options);
        var hot = FlueReport.Compute(options with { FlueC = options.FlueC + hotter });

        Assert.True(hot["efficiency"].Value < warm["efficiency"].Value);
        Assert.True(hot["efficiency-indirect"].Value < warm["efficiency-indirect"].Value);
        Assert.True(hot["flue-density"].Value < warm["flue-density"].Value);
    });

    /// <summary>The same gas read by a wet and by a dry instrument gives the same stove.</summary>
    [Fact]
    public void Wet_and_dry_readings_of_one_gas_agree() => Any.Where(o => o.Basis == Basis.Dry).Sample(options =>
    {
        var balance = FlueReport.Compute(options);
        var dry = FlueReport.Compute(options with { CarbonDioxidePercent = balance["carbon-dioxide-dry"].Value });
        var wet = FlueReport.Compute(options with
        {
            Basis = Basis.Wet,
            OxygenPercent = balance["oxygen-wet"].Value,
            CarbonDioxidePercent = balance["carbon-dioxide-wet"].Value,
            CarbonMonoxidePpm = options.CarbonMonoxidePpm * balance["oxygen-wet"].Value / balance["oxygen-dry"].Value,
        });

        foreach (var figure in dry.Figures)
            if (figure.Id is not ("oxygen" or "carbon-dioxide" or "carbon-monoxide"))
                Assert.Equal(figure.Value, wet[figure.Id].Value, 1e-6 * (1 + Math.Abs(figure.Value)));
    });

    /// <summary>By hand from the report's own parts: definitions only.</summary>
    [Fact]
    public void Flows_follow_from_their_parts()
    {
        var report = FlueReport.Compute(Typical);

        Assert.Equal(1.5 / 3.6 * report["net-heat"].Value, report["heat-input"].Value, 1e-9);
        Assert.Equal(report["heat-input"].Value * report["efficiency"].Value / 100, report["heat-output"].Value, 1e-9);
        Assert.Equal(1.5 * report["flue-per-fuel"].Value / report["flue-density"].Value, report["flue-volume"].Value, 1e-9);
        Assert.Equal(1500 * 0.004 * 0.93, report["ash-rate"].Value, 1e-9);
        Assert.Equal(report["efficiency"].Value * report["net-heat"].Value / (0.93 * report["gross-heat"].Value), report["efficiency-gross"].Value, 1e-9);
        Assert.True(report["efficiency-gross"].Value < report["efficiency"].Value);
        Assert.Equal(13.5, report["flue-per-fuel"].Value, 0.2);
    }

    /// <summary>A reading at the end of its range can move one way only; its whole step counts.</summary>
    [Fact]
    public void At_the_end_of_a_range_the_other_side_counts_whole()
    {
        var report = FlueReport.Compute(Typical with { HumidityPercent = 0, CarbonMonoxidePpm = 0 });

        Assert.Equal(10, report["humidity"].StandardUncertainty, 1e-9);
        Assert.Equal(10, report["carbon-monoxide"].StandardUncertainty, 1e-9);
        Assert.Equal(0.15, report["oxygen"].StandardUncertainty, 1e-9);
    }

    [Theory]
    [InlineData(7.9, "low")]
    [InlineData(17.1, "high")]
    public void Oxygen_beyond_common_practice_is_noted(double oxygen, string word) =>
        Assert.Contains(FlueReport.Compute(Typical with { OxygenPercent = oxygen, CarbonDioxidePercent = null }).Notes, n => n.Contains(word, StringComparison.Ordinal));

    [Fact]
    public void Flue_gas_close_above_its_dew_point_is_noted() =>
        Assert.Contains(FlueReport.Compute(Typical with { FlueC = 52 }).Notes, n => n.Contains("on the way out", StringComparison.Ordinal));

    private static double[] FlueFiguresOf(FlueOptions options, string[] ids)
    {
        // Without its own uncertainty the report is one evaluation per figure set.
        var figures = FlueReport.Compute(options with { Uncertainty = new(0, 0, 0, 0, 0, 0, 0, 0, 0) });
        return [.. ids.Select(id => figures[id].Value)];
    }
}
