using Emberwright.Reports.FromWiring;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>Every pattern's circuits as pictures: the open lies where it was put, by supposition or by readings (Kirchhoff's voltage law).</summary>
public class CircuitPictureTests
{
    public static TheoryData<string> Patterns => [.. PatternIds.All];

    private static WiringPart Part(WiringInput input, string id) => input.Chain.OfType<WiringPart>().Single(p => p.Id == id);

    [Theory, MemberData(nameof(Patterns))]
    public void Every_circuit_can_be_drawn_in_every_state(string pattern)
    {
        foreach (var path in LoadPath.All(WiringLibrary.For(pattern)))
            foreach (var operation in Enum.GetValues<Operation>())
            {
                var input = new CircuitPicture(path, operation).Input();
                Assert.Equal(operation != Operation.Unplugged, input.Live);
                var svg = SvgWriter.Inline(WiringPicture.Draw(input));
                Assert.All(input.Chain, item => Assert.Contains($"data-tap=\"{item.Id}\"", svg, StringComparison.Ordinal));
                Assert.Equal(input.Live, svg.Contains("One hand, rings off", StringComparison.Ordinal) || svg.Contains("beside this loop", StringComparison.Ordinal));
                Assert.DoesNotContain(input.Chain.OfType<WiringPart>(), p => p.State == PartState.Open && !p.AsItShould);
            }
    }

    [Theory, MemberData(nameof(Patterns))]
    public void A_supposed_open_in_the_feed_s_chain_is_shown_there_and_nowhere_else(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        foreach (var contact in wiring.FeedChain.Where(id => id != ComponentIds.ProofDisc))
        {
            var input = new CircuitPicture(LoadPath.To(wiring, ComponentIds.FeedMotor), Operation.Igniting)
            {
                Supposed = [new CircuitChange(contact, ComponentState.Open)],
            }.Input();
            Assert.Equal([contact], input.Chain.OfType<WiringPart>().Where(p => p.State == PartState.Open).Select(p => p.Id));
        }
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Readings_put_the_open_between_the_two_points_that_differ(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        var path = LoadPath.To(wiring, ComponentIds.FeedMotor);
        var supply = wiring.Mains.NominalV;
        var open = wiring.FeedChain[1];
        var readings = new Dictionary<(Measure, string), double>
        {
            [(Measure.Voltage, wiring[open].From)] = supply - 1,
            [(Measure.Voltage, wiring[open].To)] = 0.4,
        };
        var input = new CircuitPicture(path, Operation.Igniting) { Readings = readings }.Input();
        Assert.Equal([open], input.Chain.OfType<WiringPart>().Where(p => p.State == PartState.Open).Select(p => p.Id));
    }

    [Fact]
    public void Where_several_parts_lie_between_the_points_read_none_is_blamed()
    {
        var wiring = WiringLibrary.For(PatternIds.Damper);
        var readings = new Dictionary<(Measure, string), double> { [(Measure.Voltage, "tp1")] = 121, [(Measure.Voltage, "tp4")] = 0.3 };
        var input = new CircuitPicture(LoadPath.To(wiring, ComponentIds.FeedMotor), Operation.Igniting) { Readings = readings }.Input();
        Assert.All([ComponentIds.HighLimitDisc, ComponentIds.LidSwitch, ComponentIds.VacuumSwitch], id => Assert.Equal(PartState.Unknown, Part(input, id).State));
        Assert.Equal(PartState.Closed, Part(input, ComponentIds.Fuse).State);
    }

    [Fact]
    public void With_the_plug_out_ohms_stand_beside_the_parts_and_a_wrong_one_is_marked()
    {
        var wiring = WiringLibrary.For(PatternIds.Damper);
        var readings = new Dictionary<(Measure, string), double> { [(Measure.Resistance, ComponentIds.Igniter)] = double.PositiveInfinity };
        var input = new CircuitPicture(LoadPath.To(wiring, ComponentIds.Igniter), Operation.Unplugged) { Readings = readings }.Input();
        var igniter = Part(input, ComponentIds.Igniter);
        Assert.True(igniter.OhmsOut);
        Assert.Equal("open", igniter.ReadOhms);
        Assert.Equal("41–49 Ω", igniter.ExpectOhms); // 300 W at 120 V is 48 Ω hot, about 7 % less cold: 44.8 ± 8 %.
    }
}
