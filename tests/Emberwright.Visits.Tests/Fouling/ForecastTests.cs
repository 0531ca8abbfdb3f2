using CsCheck;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Fouling;
using Xunit;

namespace Emberwright.Visits.Tests.Fouling;

/// <summary>The forecast against arithmetic done by hand, its properties, and what each area's limit is on each pattern.</summary>
public sealed class ForecastTests
{
    private static readonly DateOnly Today = new(2026, 10, 1);
    private static readonly GrowthPrior Known = new(Parameter.AshPassages, 0.25, 1e-6, 1e-6);

    [Fact]
    public void A_known_growth_reaches_its_limit_when_arithmetic_says_so()
    {
        var area = new AreaForecast(Growth.After(Known, []), new Deposit(0, 1e-6), 0.5, "by hand", new FuelUse(1.5, 0), Today);

        Assert.Equal(2, area.TonnesTo(0.5), 1e-4);
        Assert.Equal(0, area.Passed(1.99), 1e-9);
        Assert.Equal(1, area.Passed(2.01), 1e-9);
    }

    [Fact]
    public void Without_a_season_the_belief_is_the_prior()
    {
        var growth = Growth.After(new GrowthPrior(Parameter.Vent, 0.1), []);

        Assert.Equal(0.1, growth.Quantile(0.5), 0.1 * 0.002);
        // 0.1 · e^(±1.281552 · 0.6), the normal's 90 % point.
        Assert.Equal(0.1 * Math.Exp(-1.281552 * 0.6), growth.Quantile(0.1), 0.1 * 0.005);
        Assert.Equal(0.1 * Math.Exp(1.281552 * 0.6), growth.Quantile(0.9), 0.1 * 0.02);
    }

    [Fact]
    public void Many_seasons_alike_settle_the_growth_where_they_put_it()
    {
        var season = new SeasonSeen(1, new Deposit(0.05, 0.02), new Deposit(0.45, 0.02));
        var growth = Growth.After(new GrowthPrior(Parameter.AshPassages, 0.25), [.. Enumerable.Repeat(season, 12)]);

        Assert.InRange(growth.Quantile(0.5), 0.36, 0.42);
        Assert.InRange(growth.Quantile(0.9) / growth.Quantile(0.1), 1.05, 1.4);
    }

    [Fact]
    public void Seasons_nothing_explains_leave_the_prior()
    {
        var impossible = new SeasonSeen(1, new Deposit(3, 1e-3), new Deposit(0, 1e-3));
        var prior = new GrowthPrior(Parameter.AshPassages, 0.25);

        Assert.Equal(Growth.After(prior, []).Quantile(0.5), Growth.After(prior, [impossible]).Quantile(0.5), 1e-6);
    }

    [Fact]
    public void The_chance_of_a_limit_passed_never_falls_and_a_later_risk_gives_a_later_day() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0.02, 0.3], Gen.Double[0.3, 1.5], Gen.Double[0.3, 3], Gen.Double[0, 5], Gen.Double[0, 5]).Sample((mean, sd, limit, perYear, a, b) =>
        {
            var area = new AreaForecast(Growth.After(new GrowthPrior(Parameter.AshPassages, 0.25), []), new Deposit(mean, sd), limit, "any", new FuelUse(perYear), Today);
            Assert.True(area.Passed(Math.Min(a, b)) <= area.Passed(Math.Max(a, b)) + 1e-12);
            Assert.True(area.TonnesTo(0.1) <= area.TonnesTo(0.9));
            Assert.InRange(area.Passed(a), 0, 1);
            if (area.DateTo(0.9) is { } late) Assert.True(area.DateTo(0.1) <= late);
        }, iter: 60);

    [Fact]
    public void Fuel_of_a_year_burns_in_a_year_and_dates_go_back_and_forth()
    {
        var use = new FuelUse(1.5);
        Assert.Equal(1.5, use.TonnesBetween(new DateOnly(2026, 3, 17), new DateOnly(2027, 3, 17)), 1e-9);
        Assert.Equal(0.285, use.TonnesBetween(new DateOnly(2027, 1, 1), new DateOnly(2027, 2, 1)), 1e-9);
        Assert.Equal(Today, use.DateAfter(Today, 0));
        Assert.Null(use.DateAfter(Today, 1e4));
        Gen.Double[0.01, 4].Sample(tonnes =>
        {
            var day = use.DateAfter(Today, tonnes)!.Value;
            Assert.True(use.TonnesBetween(Today, day) >= tonnes - 1e-9);
            Assert.True(use.TonnesBetween(Today, day.AddDays(-1)) < tonnes);
        }, iter: 200);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(99)]
    public void Fuel_that_cannot_be_is_refused_by_name(double tonnes) =>
        Assert.Contains("fuel per year", Assert.Throws<InputException>(() => new FuelUse(tonnes)).Message, StringComparison.Ordinal);

    [Fact]
    public void Month_shares_that_cannot_be_are_refused() =>
        Assert.Throws<InputException>(() => new FuelUse(1, monthShares: [1, 2, 3]));

    public static TheoryData<string> Patterns => [.. PatternLibrary.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_area_of_every_pattern_has_a_limit_with_a_reason(string id)
    {
        var ends = FoulingEnd.Of(new VirtualStove(PatternLibrary.Find(id)!, null, new Site(150)));

        Assert.Equal(GrowthPrior.All.Count, ends.Count);
        Assert.All(ends.Values, end =>
        {
            Assert.InRange(end.X, 0.05, 3);
            Assert.NotEmpty(end.Why);
        });
    }

    [Fact]
    public void A_switch_that_opens_sooner_brings_the_limit_nearer()
    {
        var pattern = PatternLibrary.All[0];
        var clean = new VirtualStove(pattern, null, new Site(0)).Solve(new double[Enum.GetValues<Parameter>().Length], Condition.LowBurn);
        var vacuum = -clean.Value(Measure.Pressure, pattern.Switch.SensePort);
        var near = FoulingEnd.Of(new VirtualStove(pattern with { Switch = pattern.Switch with { OpensPa = 0.95 * vacuum } }, null, new Site(0)))[Parameter.AshPassages];
        var far = FoulingEnd.Of(new VirtualStove(pattern with { Switch = pattern.Switch with { OpensPa = 0.7 * vacuum } }, null, new Site(0)))[Parameter.AshPassages];

        Assert.True(near.X < far.X);
        Assert.Contains("vacuum switch", near.Why, StringComparison.Ordinal);
    }
}
