using Emberwright.Reports.FromWiring;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>What one reading on the wiring means (Kirchhoff's voltage law; the rest common practice, no source).</summary>
public class PlaceReadingTests
{
    private static readonly Dictionary<(Measure, string), double> Nothing = [];

    private static PlaceReading At(string pattern, string load, Operation operation, string place) =>
        new(LoadPath.To(WiringLibrary.For(pattern), load), operation, place);

    [Theory]
    [InlineData("tp1", 120, "As it should be.")]
    [InlineData("tp5", 45, "ghost")]
    [InlineData("tp5", 180, "knob")]
    [InlineData("tp5", 0.3, "read further up")]
    [InlineData("vacuum-switch", 0.1, "As it should be.")]
    [InlineData("vacuum-switch", 119, "Open: vacuum switch.")]
    [InlineData("feed-motor", 119, "itself at fault")]
    [InlineData("feed-motor", 0.2, "above it is open")]
    public void Volts_while_the_board_calls(string place, double volts, string says) =>
        Assert.Contains(says, At(PatternIds.Damper, ComponentIds.FeedMotor, Operation.Igniting, place).Meaning(volts, Nothing), StringComparison.Ordinal);

    [Fact]
    public void A_contact_the_board_goes_round_is_not_blamed()
    {
        var read = new Dictionary<(Measure, string), double> { [(Measure.Voltage, "tp3")] = 119 };
        Assert.Equal("Open: vacuum switch.", At(PatternIds.Damper, ComponentIds.FeedMotor, Operation.Igniting, "tp5").Meaning(0.2, read));
        Assert.Equal("One of these is open: vacuum switch, proof-of-fire disc. Read at the points between.",
            At(PatternIds.Damper, ComponentIds.FeedMotor, Operation.High, "tp5").Meaning(0.2, read));
    }

    [Theory]
    [InlineData(46, "As it should be.")]
    [InlineData(double.PositiveInfinity, "Open: the igniter or its lead.")]
    [InlineData(20, "Lower")]
    [InlineData(80, "Higher")]
    public void Ohms_of_a_part_alone(double ohm, string says) =>
        Assert.StartsWith(says, At(PatternIds.Damper, ComponentIds.Igniter, Operation.Unplugged, ComponentIds.Igniter).Meaning(ohm, Nothing), StringComparison.Ordinal);

    [Fact]
    public void A_point_is_not_read_in_ohms_and_the_reference_not_at_all()
    {
        Assert.Null(At(PatternIds.Damper, ComponentIds.FeedMotor, Operation.Unplugged, "tp2").Measure);
        Assert.Null(At(PatternIds.Damper, ComponentIds.FeedMotor, Operation.Igniting, Points.Neutral).Measure);
    }

    [Theory] // 8 to 24 mV with fire; cold-junction subtracted; negative means reversed
    [InlineData(0.015, "Enough")]
    [InlineData(0.004, "Too little")]
    [InlineData(0.0002, "Nothing")]
    [InlineData(-0.012, "Below nought")]
    public void Millivolts_of_a_thermocouple(double volts, string says)
    {
        var at = At(PatternIds.Thermocouple, ComponentIds.Thermocouple, Operation.High, ComponentIds.Thermocouple);
        Assert.StartsWith(says, at.Meaning(volts, Nothing), StringComparison.Ordinal);
        Assert.Equal(Units.Millivolt, at.Unit);
    }

    [Fact]
    public void The_thermocouples_loop_is_drawn_in_millivolts()
    {
        var path = LoadPath.To(WiringLibrary.For(PatternIds.Thermocouple), ComponentIds.Thermocouple);
        var read = new Dictionary<(Measure, string), double> { [(Measure.Voltage, ComponentIds.Thermocouple)] = 0.0042 };
        var input = new CircuitPicture(path, Operation.High) { Readings = read }.Input();
        Assert.Equal("mV", input.Unit);
        var point = input.Chain.OfType<WiringPoint>().First();
        Assert.Equal(16.5, point.ExpectV!.Value, 0.2); // the pattern's usual voltage on high
        Assert.Equal(4.2, point.ReadV!.Value, 1e-6);
        Assert.Contains("mV", WiringPicture.Draw(input).Description, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(PatternIds.Damper), InlineData(PatternIds.Sealed), InlineData(PatternIds.Hydronic), InlineData(PatternIds.MultiFuel), InlineData(PatternIds.Underfed), InlineData(PatternIds.Thermocouple)]
    public void Everywhere_the_sound_reading_means_that_all_is_well(string pattern)
    {
        foreach (var path in LoadPath.All(WiringLibrary.For(pattern)))
            foreach (var operation in new[] { Operation.Igniting, Operation.High, Operation.Unplugged })
                foreach (var place in path.Points.Concat(path.Parts.Select(p => p.Id)))
                {
                    var at = new PlaceReading(path, operation, place);
                    Assert.NotEmpty(at.Name);
                    Assert.NotEmpty(at.Caution);
                    if (at.Expected is not { } expected || path.Load is Thermocouple) continue;
                    var says = at.Meaning(expected, Nothing);
                    Assert.True(says.Contains("as it should be", StringComparison.OrdinalIgnoreCase) || says.Contains("has its voltage", StringComparison.Ordinal), $"{path.Load.Id}, {operation}, {place}: {says}");
                }
    }
}
