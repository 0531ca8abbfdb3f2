using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Patterns;

/// <summary>A card's healthy values move the nominal stove onto themselves, and no further than needed.</summary>
public class CardFitTests
{
    private static readonly StoveCard Card = new()
    {
        Pattern = DamperInsert.Id,
        Healthy =
        [
            new(new(Measure.Pressure, Places.Firebox, Condition.FanOnly), -35),
            new(new(Measure.Pressure, Places.BlowerInlet, Condition.FanOnly), -66),
            new(new(Measure.Pressure, Places.Collar, Condition.FanOnly), 5),
            new(new(Measure.Oxygen, Places.Flue, Condition.HighBurn), 10.5),
            new(new(Measure.Temperature, Places.Collar, Condition.HighBurn), 180),
        ],
    };

    [Fact]
    public void The_nominal_stove_reads_what_the_card_says()
    {
        var stove = new VirtualStove(DamperInsert.Pattern, Card, new Site());
        foreach (var value in Card.Healthy)
        {
            var (measure, place, condition) = value.Observable;
            var tolerance = measure == Measure.Temperature ? 1 : 0.3;
            Assert.Equal(value.Value, stove.Solve(new double[Count], condition).Value(measure, place), tolerance);
        }
    }

    [Fact]
    public void At_another_site_the_stove_is_the_same_and_the_readings_are_not()
    {
        var stove = new VirtualStove(DamperInsert.Pattern, Card, new Site(AltitudeM: 2500));
        var reading = stove.Solve(new double[Count], Condition.FanOnly).Value(Measure.Pressure, Places.Firebox);

        Assert.InRange(reading, -33, -20);
    }

    [Fact]
    public void A_card_that_agrees_with_the_pattern_changes_nothing()
    {
        var nominal = new VirtualStove(DamperInsert.Pattern, null, new Site()).Solve(new double[Count], Condition.FanOnly);
        var card = new StoveCard
        {
            Pattern = DamperInsert.Id,
            Healthy = [new(new(Measure.Pressure, Places.Firebox, Condition.FanOnly), nominal.Value(Measure.Pressure, Places.Firebox))],
        };

        Assert.All(new VirtualStove(DamperInsert.Pattern, card, new Site()).CardFit!.Offsets, o => Assert.Equal(0, o, 1e-9));
    }

    [Fact]
    public void Every_input_states_its_origin()
    {
        var site = new Site(AltitudeM: 250, OutdoorC: -2);
        var inputs = new VirtualStove(DamperInsert.Pattern, Card with { SwitchClosesPa = 13 }, site).Inputs;
        OriginKind Of(string name) => inputs.Single(i => i.Name == name).Origin.Kind;

        Assert.All(inputs, i => Assert.NotEmpty(i.Origin.Source));
        Assert.Equal(OriginKind.Measured, Of("outdoor air"));
        Assert.Equal(OriginKind.Pattern, Of("room air"));
        Assert.Equal(OriginKind.Card, Of("vacuum switch closes"));
        Assert.Equal(OriginKind.Pattern, Of("vacuum switch opens"));
        Assert.Equal(OriginKind.Derived, Of("AshPassages against the pattern"));
    }

    [Fact]
    public void A_card_of_another_pattern_is_refused() =>
        Assert.Equal("card", Assert.Throws<InputException>(() =>
            new VirtualStove(DamperInsert.Pattern, new StoveCard { Pattern = "hydronic" }, new Site())).Field);

    private static readonly int Count = Enum.GetValues<Parameter>().Length;
}
