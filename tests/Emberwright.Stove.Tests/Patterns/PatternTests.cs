using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Patterns;

/// <summary>
/// What clean stoves of each family read: values a technician would put on a card (invented stoves) and the ranges of the
/// trade. Common practice, no source.
/// </summary>
public class PatternTests
{
    private static readonly double[] Nominal = new double[Enum.GetValues<Parameter>().Length];

    public static TheoryData<string> Ids() => [.. PatternLibrary.All.Select(p => p.Id)];

    private static StoveSolution Solve(string id, Condition condition) =>
        new VirtualStove(PatternLibrary.Find(id)!, null, new Site()).Solve(Nominal, condition);

    [Theory]
    [InlineData("damper-insert", -27.4, -59.8, 5.0)]
    [InlineData("thermocouple-freestanding", -29.9, -64.8, 12.5)]
    [InlineData("underfed", -114.6, -174.4, 19.9)]
    [InlineData("sealed-combustion", -40, -95, 8)]
    [InlineData("multi-fuel-agitator", -34.9, -82.2, 14.9)]
    public void Fan_only_reads_near_what_cards_say(string id, double firebox, double inlet, double collar)
    {
        var state = Solve(id, Condition.FanOnly);

        Assert.Equal(firebox, state.Value(Measure.Pressure, Places.Firebox), 0.12 * -firebox);
        Assert.Equal(inlet, state.Value(Measure.Pressure, Places.BlowerInlet), 0.06 * -inlet);
        Assert.Equal(collar, state.Value(Measure.Pressure, Places.Collar), 3.0);
    }

    [Fact]
    public void Hydronic_chamber_with_the_fan_only() =>
        Assert.Equal(-30, Solve("hydronic", Condition.FanOnly).Value(Measure.Pressure, Places.Firebox), 3.0);

    [Fact]
    public void Hydronic_gives_about_twelve_kilowatts_to_water()
    {
        var pattern = PatternLibrary.Find("hydronic")!;
        var state = Solve("hydronic", Condition.HighBurn);
        var kilowatts = (state.Value(Measure.Temperature, Places.WarmAir) - pattern.Heat.ReturnC) * pattern.Heat.StreamWPerK / 1000;

        Assert.Equal(12, kilowatts, 2.0);
    }

    [Fact]
    public void Sealed_controller_holds_its_set_point()
    {
        var stove = new VirtualStove(SealedCombustion.Pattern, null, new Site());
        var low = stove.Solve(Nominal, Condition.LowBurn);
        var choked = (double[])Nominal.Clone();
        choked[(int)Parameter.AshPassages] = Math.Log(0.75);
        var fouled = stove.Solve(choked, Condition.LowBurn);

        Assert.Equal(-14.5, low.Value(Measure.Pressure, Places.Firebox), 1e-5);
        Assert.Equal(-14.5, fouled.Value(Measure.Pressure, Places.Firebox), 1e-5);
        Assert.True(fouled.BlowerSpeedRatio > 1.05 * low.BlowerSpeedRatio);
    }

    [Fact]
    public void Sealed_controller_at_its_limit_lets_the_pressure_go()
    {
        var choked = (double[])Nominal.Clone();
        choked[(int)Parameter.Vent] = Math.Log(0.3);
        var state = new VirtualStove(SealedCombustion.Pattern, null, new Site()).Solve(choked, Condition.HighBurn);

        Assert.Equal(SealedCombustion.Pattern.Control!.MostSetting, state.BlowerSpeedRatio, 1e-9);
        Assert.True(state.Value(Measure.Pressure, Places.Firebox) > -12);
    }

    [Fact]
    public void A_sensor_that_reads_too_strong_makes_the_controller_slow_the_blower()
    {
        var shifted = (double[])Nominal.Clone();
        shifted[(int)Parameter.SensorZero] = -5;
        var stove = new VirtualStove(SealedCombustion.Pattern, null, new Site());

        Assert.Equal(-9.5, stove.Solve(shifted, Condition.LowBurn).Value(Measure.Pressure, Places.Firebox), 1e-5);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_pattern_is_complete(string id)
    {
        var pattern = PatternLibrary.Find(id)!;
        var ids = pattern.Air.Nodes.Select(n => n.Id).Concat([Emberwright.Stove.Air.Boundary.Room, Emberwright.Stove.Air.Boundary.AirSupply, Emberwright.Stove.Air.Boundary.Terminal]).ToHashSet();

        Assert.All(Enum.GetValues<FireState>(), f => Assert.Contains(f, pattern.Levels.Keys));
        Assert.All(pattern.Air.Links, l => Assert.True(ids.Contains(l.From) && ids.Contains(l.To)));
        Assert.All(pattern.Air.Links, l => Assert.NotEmpty(l.Origin.Source));
        Assert.All(pattern.Air.Links.Where(l => l.Scale is not null), l => Assert.Contains(pattern.Parameters, p => p.Parameter == l.Scale));
        Assert.Contains(pattern.Ports, p => p.Id == pattern.Switch.SensePort);
        Assert.True(pattern.Switch.OpensPa < pattern.Switch.ClosesPa);
        Assert.Equal(pattern.Parameters.Count, pattern.Parameters.Select(p => p.Parameter).Distinct().Count());
    }

    [Theory]
    [InlineData("thermocouple-proved top-feed freestanding stove", "thermocouple-freestanding")]
    [InlineData("Corn stove", "multi-fuel-agitator")]
    [InlineData("underfed stove with swing-down exchanger panel and exhaust probe", "underfed")]
    [InlineData("hydronic stove", "hydronic")]
    [InlineData("sealed-combustion stove with pressure sensor and modulating blower", "sealed-combustion")]
    [InlineData("damper-regulated top-feed insert proved by an exhaust temperature disc", "damper-insert")]
    [InlineData("multi-fuel stove with agitator", "multi-fuel-agitator")]
    public void Words_find_the_pattern(string words, string id) => Assert.Equal(id, PatternLibrary.Find(words)?.Id);

    [Fact]
    public void Unknown_words_find_nothing() => Assert.Null(PatternLibrary.Find("cast iron kettle"));
}
