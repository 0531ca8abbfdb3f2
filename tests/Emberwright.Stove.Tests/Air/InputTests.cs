using Xunit;
using static Emberwright.Stove.Tests.Air.Stoves;

namespace Emberwright.Stove.Tests.Air;

/// <summary>What makes no sense is refused with field, value, range and remedy.</summary>
public class InputTests
{
    public static TheoryData<string, Site> Senseless() => new()
    {
        { "altitude", new Site(AltitudeM: 6000) },
        { "altitude", new Site(AltitudeM: double.NaN) },
        { "outdoor temperature", new Site(OutdoorC: 80) },
        { "room temperature", new Site(RoomC: double.PositiveInfinity) },
        { "wind", new Site(WindMPerS: -1) },
        { "house pressure", new Site(HousePa: 500) },
        { "supply voltage", new Site(SupplyV: 230) },
        { "vent diameter", new Site(Vent: new VentRun(-76, 1, 3)) },
        { "vent vertical length", new Site(Vent: new VentRun(76, 1, double.NaN)) },
        { "tees", new Site(Vent: new VentRun(76, 1, 3, Tees: -1)) },
        { "vent terminal", new Site(Vent: new VentRun(76, 1, 3, Terminal: "weathercock")) },
        { "vent lining", new Site(Vent: new VentRun(76, 1, 3, Lining: "paper")) },
    };

    [Theory]
    [MemberData(nameof(Senseless))]
    public void A_senseless_site_is_refused_by_name(string field, Site site)
    {
        var refused = Assert.Throws<InputException>(() => Insert(site));

        Assert.Equal(field, refused.Field);
        Assert.NotEmpty(refused.Remedy);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(100)]
    public void A_senseless_parameter_is_refused_by_name(double value) =>
        Assert.Equal("Intake", Assert.Throws<InputException>(() => Insert().Solve(Condition.FanOnly, (Parameter.Intake, value))).Field);

    [Fact]
    public void A_warm_start_never_changes_the_answer()
    {
        var stove = Insert();
        var start = stove.Solve(Condition.HighBurn, (Parameter.AshPassages, -1.5), (Parameter.Wind, 30));
        var warm = stove.Solve(Values((Parameter.Vent, -0.4)), Condition.HighBurn, start);
        var cold = stove.Solve(Values((Parameter.Vent, -0.4)), Condition.HighBurn);

        Assert.Equal(cold.Pa(Places.Firebox), warm.Pa(Places.Firebox), 1e-6);
        Assert.Equal(cold.ExhaustC(), warm.ExhaustC(), 1e-5);
    }

    [Fact]
    public void The_same_input_gives_the_same_output() =>
        Assert.Equal(Insert().Solve(Condition.HighBurn).ExhaustC(), Insert().Solve(Condition.HighBurn).ExhaustC());
}
